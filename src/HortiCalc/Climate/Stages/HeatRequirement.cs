using HortiCalc.Display;
using HortiCalc.Evidence;
using HortiCalc.Units;

namespace HortiCalc.Climate;

/// <summary>The degree days that something needs, with the way of counting that they were published with.</summary>
/// <remarks>
/// Immutable; equal when the sum, the way of counting and the source are the same. The same season counts differently by another method,
/// other thresholds or another cutoff, so that <see cref="CautionsFor"/> has a caution for each that differs.
/// </remarks>
/// <example><code>
/// HeatRequirement firstCrawlers = new(
///     ThermalTime.FromFahrenheitDays(405),
///     new DegreeDayThresholds(Temperature.FromDegreesFahrenheit(51), Temperature.FromDegreesFahrenheit(90)),
///     DegreeDayMethod.SingleSine,
///     UpperCutoff.Horizontal,
///     new Source("scale-model", "San Jose scale: phenology model", "University of California Statewide IPM Program", 1982, null));
/// Console.WriteLine(firstCrawlers.ToString("U", null));
/// </code></example>
public sealed record HeatRequirement : IFormattable
{
    // How far apart two thresholds may be and still be the one threshold, printed to a tenth in °C and in °F.
    private const double SameThresholdCelsius = 0.06;

    private static readonly Caution OtherMethod = Differs(
        "method", "This sum was published for another method of counting degree days: the date may be off by a week and more.");

    private static readonly Caution OtherThresholds = Differs(
        "thresholds", "This sum was published for other threshold temperatures: it does not hold for the degree days counted here.");

    private static readonly Caution OtherCutoff = Differs(
        "cutoff", "This sum was published for another cutoff above the upper threshold: dates of a hot season will differ.");

    private static readonly Caution MethodNotStated = new(
        "heat-requirement.method-not-stated",
        CautionLevel.Note,
        "The source of this sum does not say how its degree days were counted.",
        DegreeDayMethod.SimpleAverage.Evidence.Source);

    /// <summary>Describes a published requirement.</summary>
    /// <param name="sum">The degree days that are needed; zero or more.</param>
    /// <param name="thresholds">The temperatures between which they were counted.</param>
    /// <param name="method">
    /// The method that they were counted by; <see langword="null"/> where the source does not say, for <see cref="DegreeDayMethod.SingleSine"/>.
    /// </param>
    /// <param name="cutoff">What was done above the upper threshold.</param>
    /// <param name="source">Where the requirement was published.</param>
    /// <exception cref="ArgumentNullException">The thresholds or the source are <see langword="null"/>.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The sum is negative, or the cutoff is none of the defined ones.</exception>
    /// <exception cref="ArgumentException">The method is not defined for the cutoff, or the cutoff lacks its upper threshold.</exception>
    public HeatRequirement(ThermalTime sum, DegreeDayThresholds thresholds, DegreeDayMethod? method, UpperCutoff cutoff, Source source)
    {
        Guard.NotNegative(sum.CelsiusDays, "°C·d", nameof(sum));
        Sum = sum;
        Thresholds = Guard.NotNull(thresholds);
        Method = method;
        Cutoff = Guard.Defined(cutoff);
        Source = Guard.NotNull(source);
        CountingMethod.Require(thresholds, cutoff);
    }

    /// <summary>The degree days that are needed.</summary>
    public ThermalTime Sum { get; }

    /// <summary>The temperatures between which they were counted.</summary>
    public DegreeDayThresholds Thresholds { get; }

    /// <summary>The method that they were counted by, or <see langword="null"/> where the source does not say.</summary>
    public DegreeDayMethod? Method { get; }

    /// <summary>What was done above the upper threshold.</summary>
    public UpperCutoff Cutoff { get; }

    /// <summary>Where the requirement was published.</summary>
    public Source Source { get; }

    /// <summary>The published method, or the single sine where the source names none: it lies between the others.</summary>
    internal DegreeDayMethod CountingMethod => Method ?? DegreeDayMethod.SingleSine;

    /// <summary>Counts a record in the way that the requirement was published with.</summary>
    /// <param name="days">The daily temperatures.</param>
    /// <param name="from">The first day to count, or <see langword="null"/> for the first of the record.</param>
    /// <returns>The degree days of each day and their running sum, to the last day of the record.</returns>
    /// <exception cref="ArgumentNullException">The days are <see langword="null"/>.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The first day is not in the record.</exception>
    /// <exception cref="ArgumentException">
    /// More than 5 % of the days are missing, or the method needs readings of each hour: count those by <see cref="DegreeDays.AccumulateHours"/>.
    /// </exception>
    public DegreeDaySeries Count(DailyTemperatures days, DateOnly? from = null) =>
        DegreeDays.Accumulate(days, Thresholds, CountingMethod, Cutoff, from);

    /// <summary>What to take care of when the requirement is compared with a sum that was counted in some way.</summary>
    /// <param name="series">The degree days to compare with.</param>
    /// <returns>
    /// A caution for each of method, thresholds and cutoff that is not the published one, and a note where the source names no method; none
    /// where all is as published.
    /// </returns>
    /// <exception cref="ArgumentNullException">The series is <see langword="null"/>.</exception>
    public IReadOnlyList<Caution> CautionsFor(DegreeDaySeries series)
    {
        Guard.NotNull(series);
        List<Caution> cautions = [];
        if (Method is null)
            cautions.Add(MethodNotStated);
        else if (series.Method != Method)
            cautions.Add(OtherMethod);
        bool upperMatters = Cutoff != UpperCutoff.None && series.Cutoff != UpperCutoff.None;
        if (Differ(Thresholds.LowerCelsius, series.Thresholds.LowerCelsius)
            || (upperMatters && Differ(Thresholds.UpperCelsius, series.Thresholds.UpperCelsius)))
        {
            cautions.Add(OtherThresholds);
        }

        if (series.Cutoff != Cutoff)
            cautions.Add(OtherCutoff);
        return ValueList<Caution>.Of(cautions);
    }

    /// <summary>The requirement in metric units and invariant culture.</summary>
    /// <returns>For instance <c>225 °C·d, 10.6 °C to 32.2 °C, single sine, cutoff horizontal [source]</c>.</returns>
    public override string ToString() => ToString(TextStyle.Default);

    /// <summary>The requirement as one line of text.</summary>
    /// <param name="format"><c>M</c> or nothing for metric units, <c>U</c> for US customary ones.</param>
    /// <param name="formatProvider">The culture, or <see langword="null"/> for the invariant one.</param>
    /// <returns>The sum, the thresholds, the method, the cutoff and the source.</returns>
    /// <exception cref="FormatException">The format is another one.</exception>
    public string ToString(string? format, IFormatProvider? formatProvider) => ToString(TextStyle.Parse(format, formatProvider));

    private static bool Differ(double oneCelsius, double otherCelsius) => Math.Abs(oneCelsius - otherCelsius) > SameThresholdCelsius;

    private static Caution Differs(string what, string sentence) => new(
        $"heat-requirement.other-{what}", CautionLevel.Care, sentence, DegreeDayMethod.SimpleAverage.Evidence.Source);

    private string ToString(TextStyle style) =>
        $"{QuantityText.Of(Sum, style)}, {Thresholds.ToString(style)}, {Method?.ToString() ?? "method not stated"}, "
        + $"cutoff {DegreeDayText.Of(Cutoff)} [{Source}]";
}
