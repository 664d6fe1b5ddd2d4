using HortiCalc.Evidence;
using HortiCalc.Units;

namespace HortiCalc.Climate;

/// <summary>A published way to count the degree days of a day from its lowest and highest temperature.</summary>
/// <remarks>
/// <para>
/// A requirement belongs to the method it was published with: the same year counts differently by each, by a tenth and
/// more. Where a requirement names none, use <see cref="SingleSine"/>: it follows the course of the day, and without a cutoff it
/// never counts less than <see cref="SimpleAverage"/> nor more than <see cref="ClampedAverage"/>.
/// </para>
/// <para>
/// All that look at both extremes of one day agree on a day wholly between the thresholds: mean less base. They part where a threshold cuts
/// through the day. A day exactly at the lower threshold gives exactly zero. With a horizontal cutoff, a day wholly above the upper threshold
/// gives the distance of the thresholds, save by the two methods that cap the maximum alone, which give more.
/// </para>
/// </remarks>
public sealed record DegreeDayMethod
{
    private static readonly Source OneEquationTwoInterpretations = new(
        "mcmaster-wilhelm-1997",
        "Growing degree-days: one equation, two interpretations",
        "Agricultural and Forest Meteorology 87:291-300",
        1997,
        "https://studylib.es/doc/8826713/mcmaster1997");

    private static readonly Source CornGrowingDegreeDays = new(
        "ohio-corn-gdd",
        "Corn growing degree days",
        "Ohio State University Extension",
        2023,
        "https://wfin.com/agnet/corn-growing-degree-days/");

    private static readonly Source NineVariants = new(
        "heliyon-gdd-variants",
        "Table 3: GDD's calculation methods adopted in the trials",
        "Heliyon 6(10) e05114",
        2020,
        "https://pmc.ncbi.nlm.nih.gov/articles/PMC7581921/table/tbl3");

    // The glossary defines both curves and the cutoffs in words. Algebra: Baskerville and Emin, Ecology 50:514, 1969.
    private static readonly Source Glossary = new(
        "california-degree-day-glossary",
        "Degree-days: more information (glossary)",
        "University of California Statewide IPM Program",
        null,
        "http://www.ipm.ucdavis.edu/WEATHER/ddmoreinfo.html");

    private static readonly Source FourCases = new(
        "ukcp09-degree-days",
        "How have CDD and HDD been calculated in UKCP09",
        "Met Office",
        2009,
        "http://ukclimateprojections.metoffice.gov.uk/22715");

    private static readonly Source AboveAndBelow = new(
        "met-eireann-degree-days",
        "Degree days above and below",
        "Met Éireann",
        null,
        "http://www.met.ie/climate/data03.asp?prn=1");

    private static readonly Source Cucumber = new(
        "cucumber-heat-units",
        "A heat unit accumulation method for predicting cucumber harvest date",
        "HortTechnology 6(1):27-30",
        1996,
        "https://studylib.net/doc/11069199/a-heat-unit-accumulation-method-for-predicting");

    private static readonly Source DegreeHours = new(
        "ams-growing-degree-hour",
        "Growing degree-hour (Glossary of Meteorology)",
        "American Meteorological Society",
        null,
        "http://glossary.ametsoc.org/wiki/Growing_degree-hour");

    private static readonly UpperCutoff[] NoneOnly = [UpperCutoff.None];

    private static readonly UpperCutoff[] NoneOrHorizontal = [UpperCutoff.None, UpperCutoff.Horizontal];

    private static readonly UpperCutoff[] EveryCutoff = Enum.GetValues<UpperCutoff>();

    private readonly DegreeDayRule rule;
    private readonly UpperCutoff[] cutoffs;

    private DegreeDayMethod(string key, string name, Source source, string conditions, DegreeDayRule rule, UpperCutoff[] cutoffs)
    {
        Evidence = new Method(key, name, source, new Domain(conditions));
        Cutoffs = ValueList<UpperCutoff>.Of(cutoffs);
        this.rule = rule;
        this.cutoffs = cutoffs;
    }

    /// <summary>
    /// The mean of the day's extremes less the base; nothing where the mean is below the base. With a horizontal cutoff the mean is taken
    /// for the upper threshold where it is above. The first of the two interpretations of McMaster and Wilhelm, 1997.
    /// </summary>
    public static DegreeDayMethod SimpleAverage { get; } = new(
        "simple-average",
        "average of minimum and maximum",
        OneEquationTwoInterpretations,
        "a mean below the base counts as the base",
        DegreeDayRule.SimpleAverage,
        NoneOrHorizontal);

    /// <summary>
    /// The mean less the base, where a maximum above the upper threshold is taken for the threshold and the minimum is left as it is.
    /// Variants IV, VI and VIII of a trial in Heliyon, 2020. Without a cutoff it is <see cref="SimpleAverage"/>.
    /// </summary>
    public static DegreeDayMethod CappedMaximumAverage { get; } = new(
        "capped-maximum-average",
        "average with the maximum capped",
        NineVariants,
        "a maximum above the upper threshold counts as the threshold",
        DegreeDayRule.CappedMaximum,
        [UpperCutoff.Horizontal]);

    /// <summary>
    /// The mean less the base, after both extremes are brought within the thresholds. The second of the two interpretations of McMaster
    /// and Wilhelm, 1997; with 50 and 86 °F it is the 86/50 method of maize.
    /// </summary>
    public static DegreeDayMethod ClampedAverage { get; } = new(
        "clamped-average",
        "average with both extremes clamped",
        OneEquationTwoInterpretations,
        "a minimum or maximum outside the thresholds counts as the nearer threshold",
        DegreeDayRule.Clamped,
        NoneOrHorizontal);

    /// <summary>
    /// The mean less the base, after a minimum below the base is raised to it and a maximum above the upper threshold is capped at it, as
    /// extension pages word the 86/50 method. It parts from <see cref="ClampedAverage"/> only where the minimum too is above the upper
    /// threshold, and then counts more.
    /// </summary>
    public static DegreeDayMethod CappedAndRaisedAverage { get; } = new(
        "capped-and-raised-average",
        "average with the maximum capped and the minimum raised",
        CornGrowingDegreeDays,
        "a minimum below the base counts as the base, a maximum above the upper threshold as that",
        DegreeDayRule.CappedAndRaised,
        NoneOrHorizontal);

    /// <summary>
    /// The mean less the base, where a maximum above the upper threshold is taken for as much below it. Variants V, VII and IX of a trial in
    /// Heliyon, 2020. The day counts nothing where the mean is then below the base.
    /// </summary>
    public static DegreeDayMethod ReflectedMaximumAverage { get; } = new(
        "reflected-maximum-average",
        "average with the maximum reflected",
        NineVariants,
        "a maximum above the upper threshold counts as far below it as it is above",
        DegreeDayRule.ReflectedMaximum,
        [UpperCutoff.Intermediate]);

    /// <summary>
    /// The maximum less the base, where a maximum above the upper threshold is taken for as much below it; the minimum has no part in it.
    /// Published by Perry and Wehner, 1996, for the harvest of cucumbers, with 60 and 90 °F.
    /// </summary>
    public static DegreeDayMethod MaximumOnly { get; } = new(
        "maximum-only",
        "maximum alone, reflected",
        Cucumber,
        "cucumber; a maximum above the upper threshold counts as far below it as it is above",
        DegreeDayRule.MaximumOnly,
        [UpperCutoff.Intermediate]);

    /// <summary>
    /// The four cases by which the Met Office and Met Éireann weigh a day that the base cuts through. Without an upper threshold; between
    /// <see cref="SimpleAverage"/> and <see cref="ClampedAverage"/>. Cooling degree days are counted by it too.
    /// </summary>
    public static DegreeDayMethod FourCase { get; } = new(
        "four-case",
        "four cases of the Met Office",
        FourCases,
        "no upper threshold",
        DegreeDayRule.FourCase,
        NoneOnly);

    /// <summary>The area within the thresholds of a triangle from the day's minimum to its maximum and back.</summary>
    public static DegreeDayMethod SingleTriangle { get; } = new(
        "single-triangle",
        "single triangle",
        Glossary,
        "the day falls back to the minimum it rose from",
        DegreeDayRule.Triangle,
        EveryCutoff);

    /// <summary>The area within the thresholds of a sine wave through the day's minimum and maximum.</summary>
    public static DegreeDayMethod SingleSine { get; } = new(
        "single-sine",
        "single sine",
        Glossary,
        "the day falls back to the minimum it rose from",
        DegreeDayRule.Sine,
        EveryCutoff);

    /// <summary>
    /// Half a triangle from the day's minimum up to its maximum, and half of one down to the next day's minimum. The last day of a record, and
    /// a day before a missing one, falls back to its own minimum; a next minimum above the maximum changes places with it.
    /// </summary>
    public static DegreeDayMethod DoubleTriangle { get; } = new(
        "double-triangle",
        "double triangle",
        Glossary,
        "the day falls to the minimum of the next",
        DegreeDayRule.DoubleTriangle,
        EveryCutoff);

    /// <summary>
    /// Half a sine wave from the day's minimum up to its maximum, and half of one down to the next day's minimum. The last day of a record, and
    /// a day before a missing one, falls back to its own minimum; a next minimum above the maximum changes places with it.
    /// </summary>
    public static DegreeDayMethod DoubleSine { get; } = new(
        "double-sine",
        "double sine",
        Glossary,
        "the day falls to the minimum of the next",
        DegreeDayRule.DoubleSine,
        EveryCutoff);

    /// <summary>
    /// Degree hours over 24, where the temperature of each hour is read in its middle from the sine wave of the day. For hours that were
    /// measured, use <see cref="MeasuredHours"/>.
    /// </summary>
    public static DegreeDayMethod HourlySine { get; } = new(
        "hourly-sine",
        "hours read from the sine",
        DegreeHours,
        "the middle of each hour stands for it; the day falls back to the minimum it rose from",
        DegreeDayRule.HourlySine,
        EveryCutoff);

    /// <summary>
    /// Degree hours over 24 from one reading an hour, by <see cref="DegreeDays.AccumulateHours"/> or <see cref="DegreeDays.OfHours"/>. It cannot
    /// count a day from its extremes, and so is not among <see cref="All"/>.
    /// </summary>
    public static DegreeDayMethod MeasuredHours { get; } = new(
        "measured-hours",
        "hours measured",
        DegreeHours,
        "one reading an hour, which stands for its hour",
        DegreeDayRule.MeasuredHours,
        EveryCutoff);

    /// <summary>The base less the mean of the day's extremes; nothing where the mean is above the base. Heating degree days.</summary>
    public static DegreeDayMethod SimpleAverageBelow { get; } = new(
        "simple-average-below",
        "average of minimum and maximum, below the base",
        OneEquationTwoInterpretations,
        "a mean above the base counts as the base",
        DegreeDayRule.SimpleAverageBelow,
        NoneOnly);

    /// <summary>The four cases of the Met Office and Met Éireann, below the base. Heating degree days.</summary>
    public static DegreeDayMethod FourCaseBelow { get; } = new(
        "four-case-below",
        "four cases of Met Éireann, below the base",
        AboveAndBelow,
        "no upper threshold",
        DegreeDayRule.FourCaseBelow,
        NoneOnly);

    /// <summary>The area of the triangle of the day below the base.</summary>
    public static DegreeDayMethod SingleTriangleBelow { get; } = new(
        "single-triangle-below",
        "single triangle, below the base",
        Glossary,
        "the day falls back to the minimum it rose from",
        DegreeDayRule.TriangleBelow,
        NoneOnly);

    /// <summary>The area of the sine wave of the day below the base.</summary>
    public static DegreeDayMethod SingleSineBelow { get; } = new(
        "single-sine-below",
        "single sine, below the base",
        Glossary,
        "the day falls back to the minimum it rose from",
        DegreeDayRule.SineBelow,
        NoneOnly);

    /// <summary>Every method that counts the warmth above a base from the extremes of a day.</summary>
    public static IReadOnlyList<DegreeDayMethod> All { get; } = ValueList<DegreeDayMethod>.Of(
    [
        SimpleAverage, CappedMaximumAverage, ReflectedMaximumAverage, ClampedAverage, CappedAndRaisedAverage, MaximumOnly, FourCase,
        SingleTriangle, DoubleTriangle, SingleSine, DoubleSine, HourlySine,
    ]);

    /// <summary>Every method that counts the cold below a base, as for heating. The base is the lower threshold; there is no upper one.</summary>
    public static IReadOnlyList<DegreeDayMethod> AllBelow { get; } = ValueList<DegreeDayMethod>.Of(
        [SimpleAverageBelow, FourCaseBelow, SingleTriangleBelow, SingleSineBelow]);

    private static IEnumerable<DegreeDayMethod> Keyed => [.. All, .. AllBelow, MeasuredHours];

    /// <summary>The method's key, name and source.</summary>
    public Method Evidence { get; }

    /// <summary>The upper cutoffs that the method is defined for.</summary>
    public IReadOnlyList<UpperCutoff> Cutoffs { get; }

    /// <summary>Whether the method counts the cold below the base, and not the warmth above it.</summary>
    public bool CountsBelow => rule is DegreeDayRule.SimpleAverageBelow or DegreeDayRule.FourCaseBelow
        or DegreeDayRule.TriangleBelow or DegreeDayRule.SineBelow;

    /// <summary>Whether the method looks at the next day's minimum.</summary>
    public bool UsesNextMinimum => rule is DegreeDayRule.DoubleTriangle or DegreeDayRule.DoubleSine;

    /// <summary>Whether the method counts readings of each hour, and not the extremes of a day.</summary>
    public bool NeedsHours => rule == DegreeDayRule.MeasuredHours;

    /// <summary>Finds a method by its key.</summary>
    /// <param name="key">The <see cref="Method.Key"/> of its <see cref="Evidence"/>, for instance <c>single-sine</c>.</param>
    /// <returns>The method.</returns>
    /// <exception cref="ArgumentException">There is no such method, or the key is empty.</exception>
    public static DegreeDayMethod FromKey(string key)
    {
        Guard.NotBlank(key);
        return Keyed.FirstOrDefault(method => method.Evidence.Key == key)
            ?? throw new ArgumentException(
                $"key was '{key}'; allowed: {string.Join(", ", Keyed.Select(method => method.Evidence.Key))}.", nameof(key));
    }

    /// <summary>The method's name.</summary>
    /// <returns>For instance <c>single sine</c>.</returns>
    public override string ToString() => Evidence.Name;

    /// <summary>Refuses a cutoff that the method is not defined for, and one that lacks its threshold.</summary>
    internal void Require(DegreeDayThresholds thresholds, UpperCutoff cutoff)
    {
        if (!cutoffs.AsSpan().Contains(cutoff))
        {
            Guard.Defined(cutoff);
            throw new ArgumentException($"cutoff was {cutoff}; allowed with the method '{this}': {string.Join(", ", Cutoffs)}.", nameof(cutoff));
        }

        if (cutoff != UpperCutoff.None && thresholds.Upper is null)
        {
            throw new ArgumentException(
                $"thresholds had no upper temperature; allowed with the cutoff {cutoff}: a lower and an upper one.", nameof(thresholds));
        }
    }

    /// <summary>Refuses as <see cref="Require"/>, and a method that cannot count a day from its extremes.</summary>
    internal static void RequireExtremes(DegreeDayMethod method, DegreeDayThresholds thresholds, UpperCutoff cutoff)
    {
        if (Guard.NotNull(method).NeedsHours)
        {
            throw new ArgumentException(
                $"method was '{method}', which needs readings of each hour; allowed: a method of DegreeDayMethod.All or AllBelow.", nameof(method));
        }

        method.Require(Guard.NotNull(thresholds), cutoff);
    }

    /// <summary>Counts each day of a run of consecutive days. Where the method looks at the next day's minimum, the last day falls to its own.</summary>
    internal void Count(
        ReadOnlySpan<double> minimaCelsius,
        ReadOnlySpan<double> maximaCelsius,
        DegreeDayThresholds thresholds,
        UpperCutoff cutoff,
        Span<double> celsiusDays)
    {
        int last = celsiusDays.Length - 1;
        if (!UsesNextMinimum || last < 0)
        {
            Count(minimaCelsius, maximaCelsius, minimaCelsius, thresholds, cutoff, celsiusDays);
            return;
        }

        double lastMinimumCelsius = minimaCelsius[last];
        Count(minimaCelsius[..last], maximaCelsius[..last], minimaCelsius[1..], thresholds, cutoff, celsiusDays[..last]);
        Count(new(in lastMinimumCelsius), maximaCelsius[last..], new(in lastMinimumCelsius), thresholds, cutoff, celsiusDays[last..]);
    }

    /// <summary>Counts each of some days whose next minima are given.</summary>
    internal void Count(
        ReadOnlySpan<double> minimaCelsius,
        ReadOnlySpan<double> maximaCelsius,
        ReadOnlySpan<double> nextMinimaCelsius,
        DegreeDayThresholds thresholds,
        UpperCutoff cutoff,
        Span<double> celsiusDays) => Count(cutoff, new DayRun
        {
            Minima = minimaCelsius,
            Maxima = maximaCelsius,
            NextMinima = nextMinimaCelsius,
            Destination = celsiusDays,
            Lower = thresholds.LowerCelsius,
            Upper = thresholds.UpperCelsius,
            Lowest = AirTemperature.LowestCelsius,
            Highest = AirTemperature.HighestCelsius,
        });

    /// <summary>Counts in whatever unit the run is in.</summary>
    /// <returns>Whether every extreme was missing, or in range and in order.</returns>
    internal bool Count(UpperCutoff cutoff, in DayRun run) =>
        DegreeDayKernels.Count(rule, cutoff, cutoff == UpperCutoff.None ? run.WithoutUpper() : run);

    /// <summary>Counts by lanes of one width, to compare them.</summary>
    internal bool Count<TLanes>(UpperCutoff cutoff, in DayRun run)
        where TLanes : struct, ILanes<TLanes> =>
        DegreeDayKernels.Count<TLanes>(rule, cutoff, cutoff == UpperCutoff.None ? run.WithoutUpper() : run);
}
