using HortiCalc.Evidence;

namespace HortiCalc.Climate;

/// <summary>A published course of the air temperature through the day, drawn from its lowest and highest.</summary>
/// <remarks>
/// <para>
/// Where nothing else decides, use <see cref="SineLogarithm"/>: the chill counts of orchards are commonly made with it, and it follows
/// the length of the day. A requirement that was measured with one curve holds for that curve.
/// </para>
/// <para>
/// What becomes of the extremes. All but <see cref="Sine"/> and <see cref="TwoHarmonics"/> reach the maximum on the day and run through
/// the minimum of a day into the next. <see cref="Sine"/> reaches both and jumps at midnight. <see cref="SineExponential"/> reaches the
/// minimum with its day part, while its night stays above it by a ninth of what is left at sunset, and jumps there.
/// <see cref="TwoHarmonics"/> comes within 3 % of the day's range of either.
/// </para>
/// </remarks>
public sealed record DiurnalCurve
{
    // Our limits for curves that follow the sun: the maximum comes before sunset, and there is a night to fall through.
    private static readonly DomainLimit SunUp = new("dayLength", 5, 22, "h");

    private DiurnalCurve(string key, string name, Source source, string conditions, Kernel at, params DomainLimit[] limits)
    {
        Evidence = new Method(key, name, source, new Domain(conditions, limits));
        At = at;
    }

    internal delegate double Kernel(in DiurnalDay yesterday, in DiurnalDay today, in DiurnalDay tomorrow, double hour);

    /// <summary>
    /// One sine wave through the extremes of the day itself: lowest at 6, highest at 18. Whatever the neighbours; so it jumps at
    /// midnight where the mean changes.
    /// </summary>
    public static DiurnalCurve Sine { get; } = new(
        "sine",
        "sine of the day",
        new Source(
            "usda-ars-air-temperature-sine",
            "Air temperature by time of day, sinusoidal approximation (source text)",
            "USDA Agricultural Research Service",
            2002,
            "https://infosys.ars.usda.gov/svn/code/branches/wsu-branch/weps/weps.src/hydro/airtempsin.for"),
        "lowest at 6 and highest at 18 by the sun",
        DiurnalKernels.Sine);

    /// <summary>
    /// Half waves from each extreme to the next: lowest at 6, highest at 18. Its days are those that the double-sine count of
    /// degree days puts under the curve.
    /// </summary>
    public static DiurnalCurve DoubleSine { get; } = new(
        "double-sine-curve",
        "half sines from extreme to extreme",
        new Source(
            "allen-1976-curve",
            "A modified sine wave method for calculating degree days",
            "Environmental Entomology 5:388-396",
            1976,
            null,
            SourceKind.FromMemory),
        "lowest at 6 and highest at 18 by the sun",
        DiurnalKernels.DoubleSine);

    /// <summary>
    /// A sine by day, highest two hours after noon, and a logarithm by night, from an hour after sunset down to the next minimum at
    /// sunrise. Linvill, 1990.
    /// </summary>
    /// <remarks>The night is as long as it is between the two days; the source takes 24 h less the day.</remarks>
    public static DiurnalCurve SineLogarithm { get; } = new(
        "sine-logarithm",
        "sine by day, logarithm by night",
        new Source(
            "linvill-1990",
            "Calculating chilling hours and chill units from daily maximum and minimum temperature observations",
            "HortScience 25:14-16",
            1990,
            null,
            SourceKind.FromMemory),
        "the minimum comes at sunrise; limits of the day's length are ours",
        DiurnalKernels.SineLogarithm,
        SunUp);

    /// <summary>
    /// A truncated sine by day and an exponential fall by night, with the coefficients for air at 150 cm: highest 1.86 h after noon
    /// less the lag of the minimum, which comes 0.17 h before sunrise. Parton and Logan, 1981.
    /// </summary>
    public static DiurnalCurve SineExponential { get; } = new(
        "sine-exponential",
        "sine by day, exponential by night",
        new Source(
            "parton-logan-1981",
            "A model for diurnal variation in soil and air temperature",
            "Agricultural Meteorology 23:205-216",
            1981,
            "https://paperzz.com/doc/9415856/a-model-for-diurnal-variation-in-soil-and-air"),
        "fitted to shortgrass prairie in Colorado, 1977, air at 150 cm; limits of the day's length are ours",
        DiurnalKernels.SineExponential,
        SunUp);

    /// <summary>
    /// A sine up to the maximum, four hours before sunset; a sine down to sunset, by when 39 % of the fall is done; a square root
    /// from there to the next minimum at sunrise. Cesaraccio and others, 2001.
    /// </summary>
    public static DiurnalCurve SineSineSquareRoot { get; } = new(
        "sine-sine-square-root",
        "two sines by day, square root by night",
        new Source(
            "cesaraccio-2001",
            "An improved model for determining degree-day values from daily temperature data",
            "International Journal of Biometeorology 45:161-169",
            2001,
            "https://doi.org/10.1007/s004840100104"),
        "fitted to stations in California; limits of the day's length are ours",
        DiurnalKernels.SineSineSquareRoot,
        SunUp);

    /// <summary>
    /// Two harmonics of fixed phase, the same in every season and place: lowest at half past 4, highest at 14. Campbell and Norman,
    /// 1997.
    /// </summary>
    public static DiurnalCurve TwoHarmonics { get; } = new(
        "two-harmonics",
        "two harmonics",
        new Source(
            "campbell-norman-1997",
            "An introduction to environmental biophysics, equations 2.2 and 2.3",
            "Springer",
            1997,
            "https://learncropmodel.blogspot.com/2021/03/blog-post.html"),
        "clear weather, hours by the sun",
        DiurnalKernels.TwoHarmonics);

    /// <summary>Every curve there is.</summary>
    public static IReadOnlyList<DiurnalCurve> All { get; } = ValueList<DiurnalCurve>.Of(
        [Sine, DoubleSine, SineLogarithm, SineExponential, SineSineSquareRoot, TwoHarmonics]);

    /// <summary>The curve's key, name and source.</summary>
    public Method Evidence { get; }

    internal Kernel At { get; }

    /// <summary>Finds a curve by its key.</summary>
    /// <param name="key">The <see cref="Method.Key"/> of its <see cref="Evidence"/>, for instance <c>sine-logarithm</c>.</param>
    /// <returns>The curve.</returns>
    /// <exception cref="ArgumentException">There is no such curve, or the key is empty.</exception>
    public static DiurnalCurve FromKey(string key) => Keyed.Find(All, curve => curve.Evidence.Key, key);

    /// <summary>The curve's name.</summary>
    /// <returns>For instance <c>sine by day, logarithm by night</c>.</returns>
    public override string ToString() => Evidence.Name;
}
