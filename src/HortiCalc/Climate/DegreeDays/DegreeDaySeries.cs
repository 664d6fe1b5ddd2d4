using HortiCalc.Display;
using HortiCalc.Evidence;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Climate;

/// <summary>The degree days of each day of a run, and their running sum.</summary>
/// <remarks>
/// Immutable; equal when the days, what they add, and how they were counted are the same. It carries the method that counted it,
/// and the cautions that apply.
/// </remarks>
[TypeFormatterSource(typeof(DisplayFormatters))]
public sealed record DegreeDaySeries : IFormattable, IDisplayable
{
    /// <summary>The rounding of a long sum, and of a unit conversion, must not move a date by a day.</summary>
    internal const double RoundingCelsiusDays = 1e-9;

    private static readonly Caution MethodCaution = new(
        "degree-days.method",
        CautionLevel.Note,
        "Compare this sum only with requirements published for the same method, thresholds and cutoff.",
        DegreeDayMethod.SimpleAverage.Evidence.Source);

    private static readonly Source MissingDaysCustom =
        Source.CommonPractice("degree-days-missing", "missing days of a temperature sum are reported");

    private static readonly Caution LeftOutCaution = new(
        "degree-days.missing-left-out",
        CautionLevel.Care,
        "Days without a temperature add nothing: the true sum is larger, and the true date of a stage may be earlier.",
        MissingDaysCustom);

    private static readonly Caution InterpolatedCaution = new(
        "degree-days.missing-interpolated",
        CautionLevel.Note,
        "Days without a temperature were filled in from the days around them.",
        MissingDaysCustom);

    // NaN marks a day that adds nothing because it is missing.
    private readonly double[] dailyCelsiusDays;
    private readonly double[] sumsCelsiusDays;
    private ValueList<DegreeDay>? days;

    internal DegreeDaySeries(
        DateOnly start,
        DegreeDayThresholds thresholds,
        DegreeDayMethod method,
        UpperCutoff cutoff,
        MissingDays missingDays,
        IReadOnlyList<DateOnly> missing,
        double[] dailyCelsiusDays)
    {
        Start = start;
        Thresholds = thresholds;
        Method = method;
        Cutoff = cutoff;
        MissingDays = missingDays;
        Missing = ValueList<DateOnly>.Of(missing);
        this.dailyCelsiusDays = dailyCelsiusDays;
        sumsCelsiusDays = new double[dailyCelsiusDays.Length];
        double sumCelsiusDays = 0;
        int leftOut = 0;
        for (int day = 0; day < dailyCelsiusDays.Length; day++)
        {
            bool isLeftOut = double.IsNaN(dailyCelsiusDays[day]);
            leftOut += isLeftOut ? 1 : 0;
            sumCelsiusDays += isLeftOut ? 0 : dailyCelsiusDays[day];
            sumsCelsiusDays[day] = sumCelsiusDays;
        }

        LeftOutCount = leftOut;
        List<Caution> cautions = [MethodCaution];
        if (leftOut > 0)
            cautions.Add(LeftOutCaution);
        if (Missing.Count > leftOut)
            cautions.Add(InterpolatedCaution);
        Cautions = ValueList<Caution>.Of(cautions);
    }

    /// <summary>Makes a series again from what was stored of it, with every check.</summary>
    internal static DegreeDaySeries Restore(
        DateOnly start,
        DegreeDayThresholds thresholds,
        DegreeDayMethod method,
        UpperCutoff cutoff,
        MissingDays missingDays,
        IReadOnlyList<DateOnly> missing,
        double[] dailyCelsiusDays)
    {
        method.Require(thresholds, cutoff);
        Guard.Defined(missingDays);
        if (dailyCelsiusDays.Length == 0 || dailyCelsiusDays.Length - 1 > DateOnly.MaxValue.DayNumber - start.DayNumber)
            throw new ArgumentException("daily held no days, or more than the calendar; allowed: 1 or more.", nameof(dailyCelsiusDays));
        int gaps = 0;
        for (int day = 0; day < dailyCelsiusDays.Length; day++)
        {
            DateOnly date = start.AddDays(day);
            double value = dailyCelsiusDays[day];
            bool isMissing = gaps < missing.Count && missing[gaps] == date;
            gaps += isMissing ? 1 : 0;
            if (double.IsNaN(value) && isMissing)
                continue;
            if (cutoff == UpperCutoff.IntermediateBelowZero)
                Guard.Finite(value, "°C·d", $"daily on {AirTemperature.Text(date)}");
            else
                Guard.NotNegative(value, "°C·d", $"daily on {AirTemperature.Text(date)}");
            if (isMissing && missingDays == MissingDays.LeftOut)
                throw new ArgumentException($"daily held a value on {AirTemperature.Text(date)}, a missing day; allowed: none.", nameof(missing));
        }

        if (gaps < missing.Count)
            throw new ArgumentException($"missing held {AirTemperature.Text(missing[gaps])}; allowed: days of the series, in order.", nameof(missing));
        return new DegreeDaySeries(start, thresholds, method, cutoff, missingDays, missing, dailyCelsiusDays);
    }

    /// <summary>The first day counted.</summary>
    public DateOnly Start { get; }

    /// <summary>The last day counted.</summary>
    public DateOnly End => Start.AddDays(Count - 1);

    /// <summary>How many days there are from the first to the last, missing ones included.</summary>
    public int Count => dailyCelsiusDays.Length;

    /// <summary>The temperatures between which development was counted.</summary>
    public DegreeDayThresholds Thresholds { get; }

    /// <summary>The method that counted, with its source in <see cref="DegreeDayMethod.Evidence"/>.</summary>
    public DegreeDayMethod Method { get; }

    /// <summary>What happened above the upper threshold.</summary>
    public UpperCutoff Cutoff { get; }

    /// <summary>What was done about missing days.</summary>
    public MissingDays MissingDays { get; }

    /// <summary>The days that were missing in the record, in order, whether they were filled in or left out.</summary>
    public IReadOnlyList<DateOnly> Missing { get; }

    /// <summary>How many of the missing days were left out: all of them, or those that nothing could be filled in for.</summary>
    public int LeftOutCount { get; }

    /// <summary>What to take care of.</summary>
    public IReadOnlyList<Caution> Cautions { get; }

    /// <summary>The sum over all days.</summary>
    public ThermalTime Total => ThermalTime.FromCelsiusDays(sumsCelsiusDays[^1]);

    /// <summary>Every day with what it adds and the sum so far, in order.</summary>
    public IReadOnlyList<DegreeDay> Days => days ??= ValueList<DegreeDay>.Of(Enumerable.Range(0, Count).Select(At));

    internal ReadOnlySpan<double> DailyCelsiusDays => dailyCelsiusDays;

    /// <summary>One day with what it adds and the sum so far.</summary>
    /// <param name="date">A day of the series.</param>
    /// <returns>The day.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The date is before the first day or after the last.</exception>
    public DegreeDay this[DateOnly date] => At(IndexOf(date, nameof(date)));

    /// <summary>The sum from the first day counted to the end of a day.</summary>
    /// <param name="date">A day of the series.</param>
    /// <returns>The sum.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The date is before the first day or after the last.</exception>
    public ThermalTime SumOn(DateOnly date) => ThermalTime.FromCelsiusDays(sumsCelsiusDays[IndexOf(date, nameof(date))]);

    /// <summary>The first day at whose end the sum has reached a requirement.</summary>
    /// <param name="requirement">The sum to reach; not negative. Nothing is reached on the first day counted.</param>
    /// <returns>
    /// The whole day on which it is reached, without a fraction; <see langword="null"/> where it is not reached by the last day.
    /// </returns>
    /// <remarks>
    /// The sum may fall short by a billionth of a degree-day, so that rounding moves no date. Where days were left out the date may be too late.
    /// </remarks>
    /// <exception cref="ArgumentOutOfRangeException">The requirement is negative.</exception>
    public DateOnly? DateReached(ThermalTime requirement)
    {
        double requiredCelsiusDays = Guard.NotNegative(requirement.CelsiusDays, "°C·d", nameof(requirement)) - RoundingCelsiusDays;
        int day = Array.FindIndex(sumsCelsiusDays, sum => sum >= requiredCelsiusDays);
        return day < 0 ? null : Start.AddDays(day);
    }

    /// <summary>When a requirement is first met, within the day.</summary>
    /// <param name="requirement">The degree days needed, counted by the same method; zero is reached as the first day begins.</param>
    /// <returns>The day and the part of it; <see langword="null"/> where it is not reached by the last day.</returns>
    /// <remarks>As <see cref="DateReached"/>, with the part of the day that was needed, if its degree days come evenly.</remarks>
    /// <exception cref="ArgumentOutOfRangeException">The requirement is negative.</exception>
    public TimeReached? WhenReached(ThermalTime requirement)
    {
        if (DateReached(requirement) is not DateOnly date)
            return null;
        int day = date.DayNumber - Start.DayNumber;
        double beforeCelsiusDays = day == 0 ? 0 : sumsCelsiusDays[day - 1];
        double neededCelsiusDays = Math.Max(0, requirement.CelsiusDays - beforeCelsiusDays);
        double part = dailyCelsiusDays[day] > 0 ? Math.Min(1, neededCelsiusDays / dailyCelsiusDays[day]) : 0;
        return new TimeReached(date, Ratio.FromPercent(part * 100));
    }

    /// <summary>The degree days of some of the days.</summary>
    /// <param name="first">The first of them; a day of the series.</param>
    /// <param name="last">The last of them; a day of the series, not before <paramref name="first"/>.</param>
    /// <returns>The sum over the days from the first to the last, both included.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A date is not in the series, or the last is before the first.</exception>
    public ThermalTime SumBetween(DateOnly first, DateOnly last)
    {
        int from = IndexOf(first, nameof(first));
        int to = IndexOf(last, nameof(last));
        if (to < from)
        {
            throw new ArgumentOutOfRangeException(
                nameof(last), $"last was {AirTemperature.Text(last)}; allowed: not before first, {AirTemperature.Text(first)}.");
        }

        return ThermalTime.FromCelsiusDays(sumsCelsiusDays[to] - (from == 0 ? 0 : sumsCelsiusDays[from - 1]));
    }

    /// <summary>Whether another series has the same days, counted in the same way, adding the same.</summary>
    /// <param name="other">Another series.</param>
    /// <returns><see langword="true"/> where both are the same.</returns>
    public bool Equals(DegreeDaySeries? other) => other is not null
        && (Start, Thresholds, Method, Cutoff, MissingDays) == (other.Start, other.Thresholds, other.Method, other.Cutoff, other.MissingDays)
        && Missing.Equals(other.Missing)
        && dailyCelsiusDays.AsSpan().SequenceEqual(other.dailyCelsiusDays);

    /// <inheritdoc/>
    public override int GetHashCode() => HashCode.Combine(Start, Count, Thresholds, Method, Cutoff, MissingDays, Total);

    /// <summary>The series in metric units and invariant culture.</summary>
    /// <returns>One line: total, first and last day, method, cutoff, thresholds, source, missing days, number of cautions.</returns>
    public override string ToString() => ToString(TextStyle.Default);

    /// <summary>The series as one line of text.</summary>
    /// <param name="format"><c>M</c> or nothing for metric units, <c>U</c> for US customary ones.</param>
    /// <param name="formatProvider">The culture, or <see langword="null"/> for the invariant one.</param>
    /// <returns>One line: total, first and last day, method, cutoff, thresholds, source, missing days, number of cautions.</returns>
    /// <exception cref="FormatException">The format is another one.</exception>
    public string ToString(string? format, IFormatProvider? formatProvider) => ToString(TextStyle.Parse(format, formatProvider));

    DisplayBlock IDisplayable.ToDisplay(TextStyle style) => new(TotalWords(style))
    {
        Rows =
        [
            new DisplayRow("method", Method.Evidence.Name),
            new DisplayRow("thresholds", Thresholds.ToString(style)),
            new DisplayRow("cutoff", DegreeDayText.Of(Cutoff)),
            new DisplayRow("days", QuantityText.Of(Count, style)),
            new DisplayRow("missing", MissingWords(style)),
            .. Cautions.Select(caution => new DisplayRow(caution.LevelWord, caution.Sentence)),
            new DisplayRow("source", Method.Evidence.Source.ToString()),
        ],
    };

    private string ToString(TextStyle style) =>
        $"{TotalWords(style)}, {MissingWords(style)} missing; "
        + $"{Method.Evidence.Name}, {Thresholds.ToString(style)}, cutoff {DegreeDayText.Of(Cutoff)} [{Method.Evidence.Source}]; "
        + (Cautions.Count == 1 ? "1 caution" : $"{QuantityText.Of(Cautions.Count, style)} cautions");

    private string TotalWords(TextStyle style) =>
        $"{QuantityText.Of(Total, style)} from {AirTemperature.Text(Start)} to {AirTemperature.Text(End)}";

    private string MissingWords(TextStyle style)
    {
        string count = QuantityText.Of(Missing.Count, style);
        return Missing.Count == 0 ? count
            : LeftOutCount == Missing.Count ? $"{count} (left out)"
            : LeftOutCount == 0 ? $"{count} (filled in)"
            : $"{count} ({QuantityText.Of(LeftOutCount, style)} left out, the others filled in)";
    }

    private DegreeDay At(int index) => new(
        Start.AddDays(index),
        double.IsNaN(dailyCelsiusDays[index]) ? null : ThermalTime.FromCelsiusDays(dailyCelsiusDays[index]),
        ThermalTime.FromCelsiusDays(sumsCelsiusDays[index]));

    private int IndexOf(DateOnly date, string parameter) => DayRange.IndexOf(date, Start, End, parameter);
}
