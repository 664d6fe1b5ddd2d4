using HortiCalc.Evidence;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Climate;

/// <summary>
/// The days of a span as a sum sees them: taken from the record, the gaps filled in where that is asked for, every day that the record
/// lacks known, those before its first and after its last day included. All sums treat missing days here and nowhere else.
/// </summary>
internal sealed class CountedDays
{
    private const double MaximumMissingPercent = 5;

    private static readonly Source MissingDaysCustom =
        Source.CommonPractice("climate-sum-missing", "missing days of a sum are reported, never taken for zero");

    private static readonly Caution LeftOut = new(
        "climate-sum.missing-left-out",
        CautionLevel.Care,
        "Days without a temperature add nothing: the true sum is another, most often a larger one.",
        MissingDaysCustom);

    private static readonly Caution FilledIn = new(
        "climate-sum.missing-filled-in",
        CautionLevel.Note,
        "Days without a temperature were filled in from the days around them.",
        MissingDaysCustom);

    private readonly double[] minimaCelsius;
    private readonly double[] maximaCelsius;

    private CountedDays(DateSpan span, double[] minimaCelsius, double[] maximaCelsius, List<DateOnly> missing)
    {
        Span = span;
        this.minimaCelsius = minimaCelsius;
        this.maximaCelsius = maximaCelsius;
        Missing = missing;
        foreach (double minimumCelsius in minimaCelsius)
            LeftOutCount += double.IsNaN(minimumCelsius) ? 1 : 0;
    }

    public delegate double Daily(double minimumCelsius, double maximumCelsius, DateOnly date);

    public DateSpan Span { get; }

    public IReadOnlyList<DateOnly> Missing { get; }

    public int LeftOutCount { get; }

    public ReadOnlySpan<double> MinimaCelsius => minimaCelsius;

    public ReadOnlySpan<double> MaximaCelsius => maximaCelsius;

    /// <summary>Takes the days of a span from a record.</summary>
    /// <param name="days">The record.</param>
    /// <param name="span">The days to count.</param>
    /// <param name="missingDays">What is done about days that the record lacks.</param>
    /// <param name="maximumMissing">The largest share of them that is accepted.</param>
    /// <param name="maximaAlone">
    /// Whether the rule looks at maxima alone, so that a day without its minimum is not missing; its minimum is then its maximum.
    /// </param>
    public static CountedDays Of(
        DailyTemperatures days, DateSpan span, MissingDays missingDays, Ratio? maximumMissing, bool maximaAlone = false)
    {
        Guard.NotNull(days);
        Guard.Defined(missingDays);
        double maximumMissingPercent = maximumMissing is Ratio share
            ? Guard.Within(Boundary.Fraction(share) * 100, 0, 100, "%", nameof(maximumMissing))
            : MaximumMissingPercent;

        double[] minimaCelsius = new double[span.Count];
        double[] maximaCelsius = new double[span.Count];
        List<DateOnly> missing = [];
        for (int index = 0; index < minimaCelsius.Length; index++)
        {
            DateOnly date = span.From.AddDays(index);
            int at = date.DayNumber - days.Start.DayNumber;
            bool isInRecord = at >= 0 && at < days.Count;
            double maximumCelsius = isInRecord ? days.MaximaCelsius[at] : double.NaN;
            double minimumCelsius = isInRecord && !maximaAlone ? days.MinimaCelsius[at] : maximumCelsius;
            bool isMissing = double.IsNaN(minimumCelsius) || double.IsNaN(maximumCelsius);
            minimaCelsius[index] = isMissing ? double.NaN : minimumCelsius;
            maximaCelsius[index] = isMissing ? double.NaN : maximumCelsius;
            if (isMissing)
                missing.Add(date);
        }

        if (100.0 * missing.Count / span.Count > maximumMissingPercent || missing.Count == span.Count)
        {
            throw new ArgumentException(
                $"days had {Guard.Number(missing.Count)} of {Guard.Number(span.Count)} missing from {span}; "
                + $"allowed: up to {Guard.Number(maximumMissingPercent)} % (maximumMissing sets this), and one known day.",
                nameof(days));
        }

        if (missingDays == MissingDays.Interpolated && missing.Count > 0)
        {
            Gaps.Interpolate(minimaCelsius);
            Gaps.Interpolate(maximaCelsius);
        }

        return new CountedDays(span, minimaCelsius, maximaCelsius, missing);
    }

    /// <summary>The sum over the days that are known or filled in.</summary>
    public double Sum(Daily daily)
    {
        double sum = 0;
        for (int index = 0; index < minimaCelsius.Length; index++)
        {
            if (!double.IsNaN(minimaCelsius[index]))
                sum += daily(minimaCelsius[index], maximaCelsius[index], Span.From.AddDays(index));
        }

        return sum;
    }

    /// <summary>The first day at whose end the sum has reached a requirement; a billionth short counts as reached.</summary>
    public DateOnly? Reached(double requirement, Daily daily)
    {
        const double rounding = 1e-9;
        double sum = 0;
        for (int index = 0; index < minimaCelsius.Length; index++)
        {
            if (!double.IsNaN(minimaCelsius[index]))
                sum += daily(minimaCelsius[index], maximaCelsius[index], Span.From.AddDays(index));
            if (sum >= requirement - rounding)
                return Span.From.AddDays(index);
        }

        return null;
    }

    public ClimateSum<T> Result<T>(T value, string unit, Method method, params IEnumerable<Caution> cautions)
        where T : notnull =>
        new(value, unit, Span.From, Span.To, Missing, LeftOutCount, method, [.. cautions, .. OfMissingDays()]);

    private IEnumerable<Caution> OfMissingDays()
    {
        if (LeftOutCount > 0)
            yield return LeftOut;
        if (Missing.Count > LeftOutCount)
            yield return FilledIn;
    }
}
