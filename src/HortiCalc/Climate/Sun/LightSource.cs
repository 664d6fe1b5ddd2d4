using HortiCalc.Display;
using HortiCalc.Evidence;
using HortiCalc.Units;

namespace HortiCalc.Climate;

/// <summary>What shines, and how many photons that plants can use stand behind a lux and behind a watt of it.</summary>
/// <remarks>
/// Immutable; equal when all members are equal. There is none for LEDs: no factor holds for all of them. Make one from the figures of
/// the lamp's maker.
/// </remarks>
/// <example><code>
/// Source maker = new("maker", "Data sheet of the lamp", "its maker", 2025, null, SourceKind.Given);
/// LightSource led = new("my-led", "white LED, 4000 K", luxPerMicromole: 67, micromolesPerJoule: null, maker);
/// </code></example>
public sealed record LightSource : IFormattable
{
    /// <summary>Describes what shines.</summary>
    /// <param name="key">A short stable name.</param>
    /// <param name="name">The name in plain English.</param>
    /// <param name="luxPerMicromole">Lux per µmol/(m²·s), greater than 0; <see langword="null"/> where it is not known.</param>
    /// <param name="micromolesPerJoule">
    /// Micromoles of photons per joule of radiation from 400 to 700 nm, greater than 0; <see langword="null"/> where it is not known. Not the
    /// efficacy of a lamp, whose joules are electrical.
    /// </param>
    /// <param name="source">Where the factors come from.</param>
    /// <exception cref="ArgumentException">A text is empty, or the source is missing.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A factor is not greater than 0.</exception>
    public LightSource(string key, string name, double? luxPerMicromole, double? micromolesPerJoule, Source source)
    {
        Key = Guard.NotBlank(key);
        Name = Guard.NotBlank(name);
        if (luxPerMicromole is double lux)
            Guard.Positive(lux, "lx per µmol/(m²·s)", nameof(luxPerMicromole));
        if (micromolesPerJoule is double micromoles)
            Guard.Positive(micromoles, "µmol/J", nameof(micromolesPerJoule));
        LuxPerMicromole = luxPerMicromole;
        MicromolesPerJoule = micromolesPerJoule;
        Source = Guard.NotNull(source);
    }

    /// <summary>Sun and sky.</summary>
    public static LightSource Sunlight { get; } = new("sunlight", "sun and sky", 54, 4.57, LightEvidence.ThimijanHeins);

    /// <summary>The blue sky without the sun, as on the shaded side of a house.</summary>
    public static LightSource BlueSky { get; } = new("blue-sky", "blue sky only", 52, 4.24, LightEvidence.ThimijanHeins);

    /// <summary>Metal halide lamps.</summary>
    public static LightSource MetalHalide { get; } = new("metal-halide", "metal halide", 71, 4.59, LightEvidence.ThimijanHeins);

    /// <summary>High-pressure sodium lamps.</summary>
    public static LightSource HighPressureSodium { get; } =
        new("high-pressure-sodium", "high-pressure sodium", 82, 4.98, LightEvidence.ThimijanHeins);

    /// <summary>Cool white fluorescent tubes.</summary>
    public static LightSource CoolWhiteFluorescent { get; } =
        new("cool-white-fluorescent", "cool white fluorescent", 74, 4.59, LightEvidence.ThimijanHeins);

    /// <summary>Incandescent bulbs.</summary>
    public static LightSource Incandescent { get; } = new("incandescent", "incandescent", 50, 5.00, LightEvidence.ThimijanHeins);

    /// <summary>Double-ended high-pressure sodium lamps of 1000 W.</summary>
    public static LightSource DoubleEndedSodium { get; } =
        new("double-ended-sodium", "high-pressure sodium, double-ended, 1000 W", 77, null, LightEvidence.Apogee);

    /// <summary>Ceramic metal halide lamps of 4200 K.</summary>
    public static LightSource CeramicMetalHalide4200 { get; } =
        new("ceramic-metal-halide-4200", "ceramic metal halide, 4200 K", 65, null, LightEvidence.Apogee);

    /// <summary>Ceramic metal halide lamps of 3100 K.</summary>
    public static LightSource CeramicMetalHalide3100 { get; } =
        new("ceramic-metal-halide-3100", "ceramic metal halide, 3100 K", 59, null, LightEvidence.Apogee);

    /// <summary>Low-pressure sodium lamps; printed as 9.85 foot-candles per µmol/(m²·s).</summary>
    public static LightSource LowPressureSodium { get; } = new(
        "low-pressure-sodium", "low-pressure sodium", 9.85 / Boundary.SquareMetresPerSquareFoot, null, LightEvidence.Apogee);

    /// <summary>Every published one.</summary>
    public static IReadOnlyList<LightSource> All { get; } = ValueList<LightSource>.Of(
    [
        Sunlight, BlueSky, MetalHalide, HighPressureSodium, CoolWhiteFluorescent, Incandescent,
        DoubleEndedSodium, CeramicMetalHalide4200, CeramicMetalHalide3100, LowPressureSodium,
    ]);

    /// <summary>A short stable name.</summary>
    public string Key { get; }

    /// <summary>The name in plain English.</summary>
    public string Name { get; }

    /// <summary>Lux per µmol/(m²·s); <see langword="null"/> where it is not known.</summary>
    public double? LuxPerMicromole { get; }

    /// <summary>Micromoles of photons per joule from 400 to 700 nm; <see langword="null"/> where it is not known.</summary>
    public double? MicromolesPerJoule { get; }

    /// <summary>Where the factors come from.</summary>
    public Source Source { get; }

    /// <summary>Finds a published one by its key.</summary>
    /// <param name="key">The <see cref="Key"/>, for instance <c>sunlight</c>.</param>
    /// <returns>The light source.</returns>
    /// <exception cref="ArgumentException">There is no such one, or the key is empty.</exception>
    public static LightSource FromKey(string key) => Keyed.Find(All, light => light.Key, key);

    internal Method LuxMethod => new(
        $"light.lux.{Key}", $"lux and photons, {Name}", Source, new Domain("the lamp's own spectrum, unfiltered; 400 to 700 nm"));

    internal Method WattMethod => new(
        $"light.watt.{Key}", $"watts and photons, {Name}", Source, new Domain("watts of 400 to 700 nm only, not of all radiation, not of electricity"));

    internal double RequireLux(string parameter) => LuxPerMicromole ?? throw Unknown("lux", parameter);

    internal double RequireJoule(string parameter) => MicromolesPerJoule ?? throw Unknown("watts", parameter);

    /// <summary>The name and the factors in invariant culture.</summary>
    /// <returns>One line.</returns>
    public override string ToString() => ToString(TextStyle.Default);

    /// <summary>The name and the factors as one line of text.</summary>
    /// <param name="format"><c>M</c>, <c>U</c> or nothing: the factors are written in one way.</param>
    /// <param name="formatProvider">The culture, or <see langword="null"/> for the invariant one.</param>
    /// <returns>One line.</returns>
    /// <exception cref="FormatException">The format is another one.</exception>
    public string ToString(string? format, IFormatProvider? formatProvider) => ToString(TextStyle.Parse(format, formatProvider));

    private ArgumentException Unknown(string what, string parameter) => new(
        $"{parameter} was {Name}, whose factor for {what} is not known; allowed: a light source with one.", parameter);

    private string ToString(TextStyle style)
    {
        string lux = LuxPerMicromole is double factor ? $", {QuantityText.Of(factor, style)} lx per µmol/(m²·s)" : "";
        string joule = MicromolesPerJoule is double photons ? $", {QuantityText.Of(photons, style)} µmol/J" : "";
        return $"{Name}{lux}{joule} [{Source}]";
    }
}
