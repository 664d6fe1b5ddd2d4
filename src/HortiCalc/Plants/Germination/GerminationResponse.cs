using HortiCalc.Evidence;
using HortiCalc.Units;

namespace HortiCalc.Plants;

/// <summary>A published shape of the rate of germination against temperature.</summary>
/// <remarks>
/// Each gives the degrees that a temperature counts for: what it has above the base as far as the rate rises in a straight line, and as many
/// degrees as have the same rate beyond. Thermal time divided by those degrees is the time. At and below the base and at and above the
/// ceiling every shape gives nothing.
/// </remarks>
public sealed record GerminationResponse
{
    private readonly Func<double, CardinalTemperatures, double> degrees;

    private GerminationResponse(
        string key, string name, Source source, string conditions, bool needsCeiling, bool hasSpan, Func<double, CardinalTemperatures, double> degrees)
    {
        Evidence = new Method(key, name, source, new Domain(conditions));
        NeedsCeiling = needsCeiling;
        AllowsSpan = hasSpan;
        this.degrees = degrees;
    }

    /// <summary>
    /// The degrees above the base: thermal time as most sources count it. It holds below the optimum alone, so that a need counted by it should
    /// say up to which temperature.
    /// </summary>
    public static GerminationResponse Linear { get; } = new(
        "germination.linear",
        "thermal time above a base temperature",
        GerminationSources.Onion,
        "constant or slowly changing temperature below the optimum",
        needsCeiling: false,
        hasSpan: true,
        (celsius, cardinal) => celsius - cardinal.BaseCelsius);

    /// <summary>
    /// A straight rise to the optimum, a level span where two optima are given (then called dent-like), and a straight fall to the ceiling. The
    /// one to take where a source gives base, optimum and ceiling and names no shape: it is the linear one below the optimum.
    /// </summary>
    public static GerminationResponse Segmented { get; } = new(
        "germination.segmented",
        "thermal time with a straight rise to the optimum and a straight fall to the ceiling",
        GerminationSources.Fennel,
        "constant or slowly changing temperature",
        needsCeiling: true,
        hasSpan: true,
        SegmentedDegrees);

    /// <summary>
    /// A smooth curve through base, optimum and ceiling: (C − T)/(C − O) · ((T − B)/(O − B)) to the power (O − B)/(C − O), one at the optimum.
    /// </summary>
    public static GerminationResponse Beta { get; } = new(
        "germination.beta",
        "thermal time by a beta curve of base, optimum and ceiling",
        GerminationSources.Yin,
        "constant or slowly changing temperature",
        needsCeiling: true,
        hasSpan: false,
        BetaDegrees);

    /// <summary>Every shape there is.</summary>
    public static IReadOnlyList<GerminationResponse> All { get; } = ValueList<GerminationResponse>.Of([Linear, Segmented, Beta]);

    /// <summary>The method's key, name and source.</summary>
    public Method Evidence { get; }

    /// <summary>Whether the shape needs an optimum and a ceiling.</summary>
    public bool NeedsCeiling { get; }

    /// <summary>Whether the optimum may be a span.</summary>
    public bool AllowsSpan { get; }

    /// <summary>Finds a shape by its key.</summary>
    /// <param name="key">The <see cref="Method.Key"/> of its <see cref="Evidence"/>.</param>
    /// <returns>The shape.</returns>
    /// <exception cref="ArgumentException">There is no such shape, or the key is empty.</exception>
    public static GerminationResponse FromKey(string key)
    {
        Guard.NotBlank(key);
        return All.FirstOrDefault(response => response.Evidence.Key == key)
            ?? throw new ArgumentException(
                $"key was '{key}'; allowed: {string.Join(", ", All.Select(response => response.Evidence.Key))}.", nameof(key));
    }

    /// <summary>Whether two are the same shape.</summary>
    /// <param name="other">The other.</param>
    /// <returns>Whether their keys are the same.</returns>
    public bool Equals(GerminationResponse? other) => other is not null && Evidence.Key == other.Evidence.Key;

    /// <summary>A hash of the key.</summary>
    /// <returns>The hash.</returns>
    public override int GetHashCode() => Evidence.Key.GetHashCode(StringComparison.Ordinal);

    /// <summary>The shape's name.</summary>
    /// <returns>For instance <c>thermal time above a base temperature</c>.</returns>
    public override string ToString() => Evidence.Name;

    /// <summary>Refuses temperatures that the shape cannot be drawn through.</summary>
    internal void Require(CardinalTemperatures temperatures)
    {
        if (NeedsCeiling && (temperatures.LowerOptimum is null || temperatures.Ceiling is null))
            throw new ArgumentException($"temperatures were {temperatures}; allowed with '{this}': base, optimum and ceiling.", nameof(temperatures));
        if (!AllowsSpan && temperatures.LowerOptimumCelsius != temperatures.UpperOptimumCelsius)
            throw new ArgumentException($"temperatures were {temperatures}; allowed with '{this}': one optimum, no span.", nameof(temperatures));
    }

    /// <summary>The degrees that a temperature counts for; zero where nothing happens.</summary>
    internal double Degrees(double celsius, CardinalTemperatures temperatures) =>
        celsius <= temperatures.BaseCelsius || celsius >= temperatures.CeilingCelsius ? 0 : degrees(celsius, temperatures);

    private static double SegmentedDegrees(double celsius, CardinalTemperatures cardinal)
    {
        double most = cardinal.LowerOptimumCelsius!.Value - cardinal.BaseCelsius;
        double upper = cardinal.UpperOptimumCelsius!.Value;
        double ceiling = cardinal.CeilingCelsius!.Value;
        return celsius <= upper ? Math.Min(celsius - cardinal.BaseCelsius, most) : most * (ceiling - celsius) / (ceiling - upper);
    }

    private static double BetaDegrees(double celsius, CardinalTemperatures cardinal)
    {
        double rise = cardinal.LowerOptimumCelsius!.Value - cardinal.BaseCelsius;
        double fall = cardinal.CeilingCelsius!.Value - cardinal.LowerOptimumCelsius!.Value;
        double falling = (cardinal.CeilingCelsius!.Value - celsius) / fall;
        return rise * falling * Math.Pow((celsius - cardinal.BaseCelsius) / rise, rise / fall);
    }
}
