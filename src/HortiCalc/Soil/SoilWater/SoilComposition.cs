using System.Text.Json.Serialization;
using HortiCalc.Display;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Soil;

/// <summary>What decides how much water a soil holds: its texture, and what a report says beyond it.</summary>
/// <remarks>
/// Immutable; equal when all members are equal. Only the texture is needed for the tables; <see cref="AvailableWaterMethod.SaxtonRawls"/> asks for
/// particle sizes and organic matter too.
/// </remarks>
/// <example><code>
/// SoilComposition felt = new(SoilTexture.SandyLoam);
/// SoilComposition measured = SoilComposition.FromParticles(
///     ParticleSizes.FromSandAndClay(sand: MassFraction.FromPercent(40), clay: MassFraction.FromPercent(20)),
///     organicMatter: MassFraction.FromPercent(2.5));
/// Console.WriteLine(measured.Texture);   // Loam
/// </code></example>
public sealed record SoilComposition : IFormattable
{
    /// <summary>Holds what is known of a soil.</summary>
    /// <param name="texture">The USDA class.</param>
    /// <param name="particles">The particle sizes, where they were measured; they must be of the class.</param>
    /// <param name="organicMatter">Organic matter by mass, from 0 to 100 %.</param>
    /// <param name="sandGrade">The grade of the sand, for tables that ask for it.</param>
    /// <param name="gravel">What is coarser than 2 mm, by mass of the whole soil, below 100 %; none where it is not given.</param>
    /// <param name="compaction">Bulk density as a share of the normal one for the soil, above zero: below 100 % loose, above it compacted; normal where it is not given.</param>
    /// <param name="salinity">The conductivity of the saturated-paste extract; none where it is not given.</param>
    /// <exception cref="ArgumentException">The particles are not of the class.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public SoilComposition(
        SoilTexture texture,
        ParticleSizes? particles = null,
        MassFraction? organicMatter = null,
        SandGrade sandGrade = SandGrade.Unstated,
        MassFraction? gravel = null,
        Ratio? compaction = null,
        ElectricConductivity? salinity = null)
    {
        Texture = Guard.Defined(texture);
        SandGrade = Guard.Defined(sandGrade);
        Particles = particles;
        if (particles is not null && SoilTextures.Classify(particles).Value is SoilTexture measured && measured != texture)
            throw new ArgumentException($"particles was {particles}, which is {measured}; allowed: particles of {texture}.", nameof(particles));
        if (organicMatter is { } matter)
        {
            Guard.Within(Boundary.MassFraction(matter) * 100, 0, 100, "%", nameof(organicMatter));
            OrganicMatter = HouseUnits.Normalise(matter);
        }

        if (gravel is { } stones)
        {
            double percent = Boundary.MassFraction(stones) * 100;
            if (!(percent >= 0 && percent < 100))
                throw Guard.Refused(nameof(gravel), percent, "%", "from 0 to below 100 %");
            Gravel = HouseUnits.Normalise(stones);
        }

        if (compaction is { } density)
        {
            Guard.Positive(Boundary.Fraction(density) * 100, "%", nameof(compaction));
            Compaction = HouseUnits.Normalise(density);
        }

        if (salinity is { } salts)
        {
            Guard.NotNegative(Boundary.DecisiemensPerMetre(salts), "dS/m", nameof(salinity));
            Salinity = HouseUnits.Normalise(salts);
        }
    }

    /// <summary>The USDA class.</summary>
    public SoilTexture Texture { get; }

    /// <summary>The particle sizes, where they were measured.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public ParticleSizes? Particles { get; }

    /// <summary>Organic matter by mass.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public MassFraction? OrganicMatter { get; }

    /// <summary>The grade of the sand.</summary>
    public SandGrade SandGrade { get; }

    /// <summary>What is coarser than 2 mm, by mass of the whole soil.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public MassFraction? Gravel { get; }

    /// <summary>Bulk density as a share of the normal one.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public Ratio? Compaction { get; }

    /// <summary>The conductivity of the saturated-paste extract.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public ElectricConductivity? Salinity { get; }

    /// <summary>A soil whose particles and organic matter were measured.</summary>
    /// <param name="particles">The particle sizes.</param>
    /// <param name="organicMatter">Organic matter by mass, from 0 to 100 %.</param>
    /// <param name="gravel">What is coarser than 2 mm, by mass of the whole soil, below 100 %.</param>
    /// <param name="compaction">Bulk density as a share of the normal one, above zero.</param>
    /// <param name="salinity">The conductivity of the saturated-paste extract.</param>
    /// <returns>The soil, of the USDA class of its particles.</returns>
    /// <exception cref="ArgumentNullException">The particles are <see langword="null"/>.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public static SoilComposition FromParticles(
        ParticleSizes particles,
        MassFraction organicMatter,
        MassFraction? gravel = null,
        Ratio? compaction = null,
        ElectricConductivity? salinity = null) =>
        new(SoilTextures.Classify(Guard.NotNull(particles)).Value, particles, organicMatter, SandGrade.Unstated, gravel, compaction, salinity);

    /// <summary>The soil in invariant culture.</summary>
    /// <returns>For instance <c>Loam (sand 40 %, silt 40 %, clay 20 %), organic matter 2.5 %</c>.</returns>
    public override string ToString() => ToString(TextStyle.Default);

    /// <summary>The soil as one line of text.</summary>
    /// <param name="format"><c>M</c>, <c>U</c> or nothing.</param>
    /// <param name="formatProvider">The culture, or <see langword="null"/> for the invariant one.</param>
    /// <returns>The class and what else is known.</returns>
    /// <exception cref="FormatException">The format is another one.</exception>
    public string ToString(string? format, IFormatProvider? formatProvider) => ToString(TextStyle.Parse(format, formatProvider));

    private string ToString(TextStyle style)
    {
        string?[] parts =
        [
            SandGrade == SandGrade.Unstated ? $"{Texture}" : $"{Texture}, {SandGrade} sand",
            Particles?.ToString(style.Format, style.Culture),
            OrganicMatter is { } matter ? $"organic matter {QuantityText.Number(Boundary.MassFraction(matter) * 100, style)} %" : null,
            Gravel is { } gravel ? $"gravel {QuantityText.Number(Boundary.MassFraction(gravel) * 100, style)} %" : null,
            Compaction is { } compaction ? $"compaction {QuantityText.Of(compaction, style)}" : null,
            Salinity is { } salts ? QuantityText.Of(salts, style) : null,
        ];
        return string.Join(", ", parts.Where(part => part is not null));
    }
}
