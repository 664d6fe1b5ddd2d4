using HortiCalc.Climate;
using HortiCalc.Display;
using HortiCalc.Evidence;
using HortiCalc.Units;

namespace HortiCalc.Season;

/// <summary>The daily record that a plan rests on: its source, its span and its gaps.</summary>
public sealed record WeatherRecord
{
    /// <summary>Describes a daily record.</summary>
    /// <param name="source">Where it comes from.</param>
    /// <param name="start">The first day.</param>
    /// <param name="end">The last day.</param>
    /// <param name="missingDays">How many days in between are missing.</param>
    /// <exception cref="ArgumentOutOfRangeException">The last day is before the first, or the missing days are fewer than 0.</exception>
    public WeatherRecord(Source source, DateOnly start, DateOnly end, int missingDays)
    {
        Source = Guard.NotNull(source);
        Start = start;
        End = end >= start
            ? end
            : throw new ArgumentOutOfRangeException(nameof(end), $"end was {end:yyyy-MM-dd}; allowed: from {start:yyyy-MM-dd} on.");
        MissingDays = Guard.AtLeast(missingDays, 0);
    }

    /// <summary>Where it comes from.</summary>
    public Source Source { get; }

    /// <summary>The first day.</summary>
    public DateOnly Start { get; }

    /// <summary>The last day.</summary>
    public DateOnly End { get; }

    /// <summary>How many days in between are missing.</summary>
    public int MissingDays { get; }

    /// <summary>The span and the gaps.</summary>
    /// <returns>One line of text.</returns>
    public override string ToString() => ToString(TextStyle.Default);

    internal static WeatherRecord Of(DailyTemperatures days, Source source) => new(source, days.Start, days.End, days.MissingCount);

    internal string ToString(TextStyle style) =>
        $"daily weather from {QuantityText.Of(Start, style)} to {QuantityText.Of(End, style)}, "
        + (MissingDays == 1 ? "1 day missing" : $"{QuantityText.Of(MissingDays, style)} days missing");
}
