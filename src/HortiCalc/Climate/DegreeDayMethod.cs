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
/// All agree on a day wholly between the thresholds: mean less base. They part where a threshold cuts through the day. A day
/// exactly at the lower threshold gives exactly zero. A day wholly above the upper threshold gives the distance of the
/// thresholds, save by the two methods that cap the maximum alone, which give more.
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

    private readonly Kernel kernel;
    private readonly UpperCutoff[] cutoffs;

    private DegreeDayMethod(string key, string name, Source source, string conditions, Kernel kernel, params UpperCutoff[] cutoffs)
    {
        Evidence = new Method(key, name, source, new Domain(conditions));
        Cutoffs = ValueList<UpperCutoff>.Of(cutoffs);
        this.kernel = kernel;
        this.cutoffs = cutoffs;
    }

    internal delegate void Kernel(
        ReadOnlySpan<double> minimaCelsius, ReadOnlySpan<double> maximaCelsius, double lowerCelsius, double upperCelsius, Span<double> celsiusDays);

    /// <summary>
    /// The mean of the day's extremes less the base; nothing where the mean is below the base. With a horizontal cutoff the mean is taken
    /// for the upper threshold where it is above. The first of the two interpretations of McMaster and Wilhelm, 1997.
    /// </summary>
    public static DegreeDayMethod SimpleAverage { get; } = new(
        "simple-average",
        "average of minimum and maximum",
        OneEquationTwoInterpretations,
        "a mean below the base counts as the base",
        DegreeDayKernels.SimpleAverage,
        UpperCutoff.None,
        UpperCutoff.Horizontal);

    /// <summary>
    /// The mean less the base, where a maximum above the upper threshold is taken for the threshold and the minimum is left as it is.
    /// Variants IV, VI and VIII of a trial in Heliyon, 2020. Without a cutoff it is <see cref="SimpleAverage"/>.
    /// </summary>
    public static DegreeDayMethod CappedMaximumAverage { get; } = new(
        "capped-maximum-average",
        "average with the maximum capped",
        NineVariants,
        "a maximum above the upper threshold counts as the threshold",
        DegreeDayKernels.CappedMaximumAverage,
        UpperCutoff.Horizontal);

    /// <summary>
    /// The mean less the base, after both extremes are brought within the thresholds. The second of the two interpretations of McMaster
    /// and Wilhelm, 1997; with 50 and 86 °F it is the 86/50 method of maize.
    /// </summary>
    public static DegreeDayMethod ClampedAverage { get; } = new(
        "clamped-average",
        "average with both extremes clamped",
        OneEquationTwoInterpretations,
        "a minimum or maximum outside the thresholds counts as the nearer threshold",
        DegreeDayKernels.ClampedAverage,
        UpperCutoff.None,
        UpperCutoff.Horizontal);

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
        DegreeDayKernels.CappedAndRaisedAverage,
        UpperCutoff.None,
        UpperCutoff.Horizontal);

    /// <summary>The area within the thresholds of a triangle from the day's minimum to its maximum and back.</summary>
    public static DegreeDayMethod SingleTriangle { get; } = new(
        "single-triangle",
        "single triangle",
        Glossary,
        "the day falls back to the minimum it rose from",
        DegreeDayKernels.SingleTriangle,
        UpperCutoff.None,
        UpperCutoff.Horizontal);

    /// <summary>The area within the thresholds of a sine wave through the day's minimum and maximum.</summary>
    public static DegreeDayMethod SingleSine { get; } = new(
        "single-sine",
        "single sine",
        Glossary,
        "the day falls back to the minimum it rose from",
        DegreeDayKernels.SingleSine,
        UpperCutoff.None,
        UpperCutoff.Horizontal);

    /// <summary>Every method there is.</summary>
    public static IReadOnlyList<DegreeDayMethod> All { get; } = ValueList<DegreeDayMethod>.Of(
        [SimpleAverage, CappedMaximumAverage, ClampedAverage, CappedAndRaisedAverage, SingleTriangle, SingleSine]);

    /// <summary>The method's key, name and source.</summary>
    public Method Evidence { get; }

    /// <summary>The upper cutoffs that the method is defined for.</summary>
    public IReadOnlyList<UpperCutoff> Cutoffs { get; }

    /// <summary>Finds a method by its key.</summary>
    /// <param name="key">The <see cref="Method.Key"/> of its <see cref="Evidence"/>, for instance <c>single-sine</c>.</param>
    /// <returns>The method.</returns>
    /// <exception cref="ArgumentException">There is no such method, or the key is empty.</exception>
    public static DegreeDayMethod FromKey(string key)
    {
        Guard.NotBlank(key);
        return All.FirstOrDefault(method => method.Evidence.Key == key)
            ?? throw new ArgumentException(
                $"key was '{key}'; allowed: {string.Join(", ", All.Select(method => method.Evidence.Key))}.", nameof(key));
    }

    /// <summary>The method's name.</summary>
    /// <returns>For instance <c>single sine</c>.</returns>
    public override string ToString() => Evidence.Name;

    /// <summary>Refuses a cutoff that the method is not defined for, and one that lacks its threshold.</summary>
    internal void Require(DegreeDayThresholds thresholds, UpperCutoff cutoff)
    {
        Guard.Defined(cutoff);
        if (Array.IndexOf(cutoffs, cutoff) < 0)
            throw new ArgumentException($"cutoff was {cutoff}; allowed with the method '{this}': {string.Join(", ", Cutoffs)}.", nameof(cutoff));
        if (cutoff != UpperCutoff.None && thresholds.Upper is null)
        {
            throw new ArgumentException(
                $"thresholds had no upper temperature; allowed with the cutoff {cutoff}: a lower and an upper one.", nameof(thresholds));
        }
    }

    /// <summary>Counts each day of a run.</summary>
    internal void Count(
        ReadOnlySpan<double> minimaCelsius,
        ReadOnlySpan<double> maximaCelsius,
        DegreeDayThresholds thresholds,
        UpperCutoff cutoff,
        Span<double> celsiusDays) => kernel(
            minimaCelsius,
            maximaCelsius,
            thresholds.LowerCelsius,
            cutoff == UpperCutoff.None ? double.PositiveInfinity : thresholds.UpperCelsius,
            celsiusDays);
}
