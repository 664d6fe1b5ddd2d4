using System.Globalization;
using HortiCalc.Display;
using HortiCalc.Evidence;
using HortiCalc.Units;

namespace HortiCalc.Climate;

/// <summary>What each hour of a run adds to a count of cold or warmth, and the running sum.</summary>
/// <remarks>
/// Immutable; equal when the hours, what they add and how they were counted are the same. It carries the method that counted, and
/// the cautions that apply. What is counted has no dimension: chill hours, units or portions, or growing degree hours, as <see
/// cref="Unit"/> says.
/// </remarks>
[TypeFormatterSource(typeof(DisplayFormatters))]
public sealed record HourlyAccumulation : IFormattable, IDisplayable
{
    /// <summary>The rounding of a long sum must not move a time by an hour.</summary>
    private const double Rounding = 1e-9;

    // NaN marks an hour that adds nothing because it is missing.
    private readonly double[] hourly;
    private readonly double[] sums;
    private ValueList<DateTime>? missing;

    internal HourlyAccumulation(DateTime start, Method method, AccumulationUnit unit, double[] hourly)
    {
        Start = start;
        Method = method;
        Unit = unit;
        this.hourly = hourly;
        sums = new double[hourly.Length];
        double sum = 0;
        for (int hour = 0; hour < hourly.Length; hour++)
        {
            bool isMissing = double.IsNaN(hourly[hour]);
            MissingCount += isMissing ? 1 : 0;
            sum += isMissing ? 0 : hourly[hour];
            sums[hour] = sum;
        }

        Cautions = ValueList<Caution>.Of(MissingCount > 0 ? [ChillEvidence.OwnModel, ChillEvidence.LeftOut] : [ChillEvidence.OwnModel]);
    }

    /// <summary>The first hour counted.</summary>
    public DateTime Start { get; }

    /// <summary>The last hour counted.</summary>
    public DateTime End => Start.AddHours(Count - 1);

    /// <summary>How many hours there are from the first to the last, missing ones included.</summary>
    public int Count => hourly.Length;

    /// <summary>The method that counted.</summary>
    public Method Method { get; }

    /// <summary>What is counted.</summary>
    public AccumulationUnit Unit { get; }

    /// <summary>How many of the hours are missing. They add nothing.</summary>
    public int MissingCount { get; }

    /// <summary>The missing hours, in order.</summary>
    public IReadOnlyList<DateTime> Missing => missing ??= HourRange.Missing(Start, hourly, MissingCount);

    /// <summary>What to take care of.</summary>
    public IReadOnlyList<Caution> Cautions { get; }

    /// <summary>The sum over all hours.</summary>
    public double Total => sums[^1];

    /// <summary>
    /// The hour after which the running sum is lowest, the last one where it is so more than once: where a count of Utah units begins.
    /// </summary>
    /// <remarks>Count again from the hour after it; count from the end of summer, so that the fall of the sum is in the record.</remarks>
    public DateTime LowestSumAt
    {
        get
        {
            int lowest = 0;
            for (int hour = 1; hour < sums.Length; hour++)
                lowest = sums[hour] <= sums[lowest] ? hour : lowest;
            return Start.AddHours(lowest);
        }
    }

    internal ReadOnlySpan<double> Hourly => hourly;

    /// <summary>What one hour adds.</summary>
    /// <param name="hour">An hour of the series.</param>
    /// <returns>What it adds, or <see langword="null"/> where it is missing.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The hour is not a full one, is before the first or after the last.</exception>
    public double? this[DateTime hour]
    {
        get
        {
            double value = hourly[HourRange.IndexOf(hour, Start, End, nameof(hour))];
            return double.IsNaN(value) ? null : value;
        }
    }

    /// <summary>The sum from the first hour counted to the end of an hour.</summary>
    /// <param name="hour">An hour of the series.</param>
    /// <returns>The sum; Utah units can be below zero.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The hour is not a full one, is before the first or after the last.</exception>
    public double SumAt(DateTime hour) => sums[HourRange.IndexOf(hour, Start, End, nameof(hour))];

    /// <summary>The first hour at whose end the sum has reached a requirement.</summary>
    /// <param name="requirement">The sum to reach; not negative.</param>
    /// <returns>The hour; <see langword="null"/> where it is not reached by the last.</returns>
    /// <remarks>
    /// The sum may fall short by a billionth, so that rounding moves no hour. Where hours are missing the time may be too late.
    /// </remarks>
    /// <exception cref="ArgumentOutOfRangeException">The requirement is negative, infinite or not a number.</exception>
    public DateTime? Reached(double requirement)
    {
        double required = Guard.NotNegative(requirement, UnitWords) - Rounding;
        int hour = Array.FindIndex(sums, sum => sum >= required);
        return hour < 0 ? null : Start.AddHours(hour);
    }

    /// <summary>Whether another series has the same hours, counted in the same way, adding the same.</summary>
    /// <param name="other">Another series.</param>
    /// <returns><see langword="true"/> where both are the same.</returns>
    public bool Equals(HourlyAccumulation? other) => other is not null
        && (Start, Method, Unit) == (other.Start, other.Method, other.Unit) && Hourly.SequenceEqual(other.Hourly);

    /// <inheritdoc/>
    public override int GetHashCode() => HashCode.Combine(Start, Count, Method, Unit, Total);

    /// <summary>The series in invariant culture.</summary>
    /// <returns>One line: total, first and last hour, missing hours, method, source, number of cautions.</returns>
    public override string ToString() => ToString(TextStyle.Default);

    /// <summary>The series as one line of text.</summary>
    /// <param name="format"><c>M</c>, <c>U</c> or nothing: there is no unit to choose.</param>
    /// <param name="formatProvider">The culture, or <see langword="null"/> for the invariant one.</param>
    /// <returns>One line: total, first and last hour, missing hours, method, source, number of cautions.</returns>
    /// <exception cref="FormatException">The format is another one.</exception>
    public string ToString(string? format, IFormatProvider? formatProvider) => ToString(TextStyle.Parse(format, formatProvider));

    DisplayBlock IDisplayable.ToDisplay(TextStyle style) => new(TotalWords(style))
    {
        Rows =
        [
            new DisplayRow("method", Method.Name),
            new DisplayRow("hours", QuantityText.Of(Count, style)),
            new DisplayRow("missing", QuantityText.Of(MissingCount, style)),
            .. Cautions.Select(caution => new DisplayRow(caution.LevelWord, caution.Sentence)),
            new DisplayRow("source", Method.Source.ToString()),
        ],
    };

    /// <summary>Makes a series again from what was stored of it, with every check.</summary>
    internal static HourlyAccumulation Restore(DateTime start, Method method, AccumulationUnit unit, double[] hourly)
    {
        DateTime first = HourRange.Full(start, nameof(start));
        if (hourly.Length == 0 || hourly.Length - 1 > (DateTime.MaxValue - first).TotalHours)
            throw new ArgumentException("hourly held no hours, or more than the calendar; allowed: 1 or more.", nameof(hourly));
        foreach (double value in hourly)
        {
            if (double.IsInfinity(value))
                throw Guard.Refused(nameof(hourly), value, Words(unit), "a finite number, or none where the hour is missing");
        }

        return new HourlyAccumulation(first, method, Guard.Defined(unit), hourly);
    }

    internal static string Words(AccumulationUnit unit) => unit switch
    {
        AccumulationUnit.ChillHours => "chill hours",
        AccumulationUnit.ChillUnits => "chill units",
        AccumulationUnit.ChillPortions => "chill portions",
        _ => "growing degree hours",
    };

    private string UnitWords => Words(Unit);

    private string ToString(TextStyle style) =>
        $"{TotalWords(style)}, {QuantityText.Of(MissingCount, style)} missing; {Method.Name} [{Method.Source}]; "
        + (Cautions.Count == 1 ? "1 caution" : string.Create(CultureInfo.InvariantCulture, $"{Cautions.Count} cautions"));

    private string TotalWords(TextStyle style) =>
        $"{QuantityText.Number(Total, style)} {UnitWords} from {HourRange.Text(Start)} to {HourRange.Text(End)}";
}
