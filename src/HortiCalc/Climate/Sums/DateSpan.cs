using System.Text.Json.Serialization;

namespace HortiCalc.Climate;

/// <summary>A run of days from one date to another, both included.</summary>
/// <remarks>Immutable; equal when both dates are. The default value is the first day of the calendar.</remarks>
/// <example><code>
/// DateSpan summer = new(new DateOnly(2027, 5, 10), new DateOnly(2027, 9, 20));
/// </code></example>
public readonly record struct DateSpan
{
    /// <summary>Makes a run of days.</summary>
    /// <param name="from">The first day.</param>
    /// <param name="to">The last day, not before the first.</param>
    /// <exception cref="ArgumentOutOfRangeException">The last day is before the first.</exception>
    [JsonConstructor]
    public DateSpan(DateOnly from, DateOnly to)
    {
        if (to < from)
        {
            throw new ArgumentOutOfRangeException(
                nameof(to), $"to was {AirTemperature.Text(to)}; allowed: not before from, {AirTemperature.Text(from)}.");
        }

        From = from;
        To = to;
    }

    /// <summary>The first day.</summary>
    public DateOnly From { get; }

    /// <summary>The last day.</summary>
    public DateOnly To { get; }

    /// <summary>How many days there are, both ends included.</summary>
    internal int Count => To.DayNumber - From.DayNumber + 1;

    /// <summary>The two dates.</summary>
    /// <returns>For instance <c>2027-05-10 to 2027-09-20</c>.</returns>
    public override string ToString() => $"{AirTemperature.Text(From)} to {AirTemperature.Text(To)}";
}
