using HortiCalc.Evidence;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Soil;

/// <summary>The arithmetic of mass, pores and water in a soil, and typical densities by texture.</summary>
/// <remarks>Moisture by mass is water on the dry soil, so that it can exceed 100 %; moisture by volume is water in the whole soil.</remarks>
public static class SoilDensity
{
    private const double KilogramsPerCubicMetreOfWater = 1000;

    /// <summary>The density of mineral particles, 2.65 g/cm³, as quartz; organic matter is far lighter.</summary>
    public static Estimate<Density> MineralParticles { get; } = new(
        Density.FromKilogramsPerCubicMeter(SaxtonRawlsKernel.ParticleGramsPerCubicCentimetre * 1000),
        new Method(
            "soil-particle-density",
            "density of mineral particles",
            SoilWaterSources.SaxtonRawls,
            new Domain("mineral soil; not for peat or volcanic ash")));

    /// <summary>Typical bulk densities by texture: a garden list, in which silt is not listed.</summary>
    public static IReadOnlyList<TypicalBulkDensity> Typical { get; } = ValueList<TypicalBulkDensity>.Of(
    [
        Row(SoilTexture.Clay, 1.25),
        Row(SoilTexture.SiltyClay, 1.21),
        Row(SoilTexture.SiltyClayLoam, 1.27),
        Row(SoilTexture.ClayLoam, 1.3),
        Row(SoilTexture.SandyClay, 1.34),
        Row(SoilTexture.SiltLoam, 1.38),
        Row(SoilTexture.Loam, 1.43),
        Row(SoilTexture.SandyClayLoam, 1.4),
        Row(SoilTexture.SandyLoam, 1.51),
        Row(SoilTexture.LoamySand, 1.63),
        Row(SoilTexture.Sand, 1.69),
    ]);

    /// <summary>The share of pores in a soil.</summary>
    /// <param name="bulk">The mass of dry soil per volume; above zero, not above that of the particles.</param>
    /// <param name="particle">The density of the particles, for instance <see cref="MineralParticles"/>; above zero.</param>
    /// <returns>The pores by volume.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A density is not above zero, or the soil is denser than its particles.</exception>
    /// <example><code>
    /// VolumeConcentration pores = SoilDensity.Porosity(Density.FromGramsPerCubicCentimeter(1.262), SoilDensity.MineralParticles.Value);
    /// Console.WriteLine(pores.Percent.ToString("F1", System.Globalization.CultureInfo.InvariantCulture));   // 52.4
    /// </code></example>
    public static VolumeConcentration Porosity(Density bulk, Density particle)
    {
        double particleDensity = Guard.Positive(Boundary.KilogramsPerCubicMetre(particle), "kg/m³", nameof(particle));
        double bulkDensity = Guard.Positive(Boundary.KilogramsPerCubicMetre(bulk), "kg/m³", nameof(bulk));
        Guard.Within(bulkDensity, 0, particleDensity, "kg/m³", nameof(bulk));
        return VolumeConcentration.FromPercent((1 - bulkDensity / particleDensity) * 100);
    }

    /// <summary>The mass of dry soil per volume that a share of pores leaves.</summary>
    /// <param name="porosity">The pores by volume, from 0 to below 100 %.</param>
    /// <param name="particle">The density of the particles; above zero.</param>
    /// <returns>The bulk density.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The porosity is outside its range, or the density not above zero.</exception>
    public static Density FromPorosity(VolumeConcentration porosity, Density particle)
    {
        double percent = Boundary.VolumeFraction(porosity) * 100;
        if (!(percent >= 0 && percent < 100))
            throw Guard.Refused(nameof(porosity), percent, "%", "from 0 to below 100 %");
        double particleDensity = Guard.Positive(Boundary.KilogramsPerCubicMetre(particle), "kg/m³", nameof(particle));
        return Density.FromKilogramsPerCubicMeter((1 - percent / 100) * particleDensity);
    }

    /// <summary>The bulk density of a core from its dry mass.</summary>
    /// <param name="dry">The mass after drying; above zero.</param>
    /// <param name="core">The volume of the core as it stood in the ground; above zero.</param>
    /// <returns>The bulk density.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The mass or the volume is not above zero.</exception>
    public static Density OfCore(Mass dry, Volume core) => Density.FromKilogramsPerCubicMeter(
        Guard.Positive(Boundary.Kilograms(dry), "kg", nameof(dry)) / Guard.Positive(Boundary.CubicMetres(core), "m³", nameof(core)));

    /// <summary>The dry mass of moist soil.</summary>
    /// <param name="moist">The mass as it is; above zero.</param>
    /// <param name="moisture">The water on the dry soil, 0 or more.</param>
    /// <returns>The mass after drying.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The mass is not above zero, or the moisture negative.</exception>
    public static Mass DryMass(Mass moist, Ratio moisture)
    {
        double moistKilograms = Guard.Positive(Boundary.Kilograms(moist), "kg", nameof(moist));
        double percent = Guard.NotNegative(Boundary.Fraction(moisture) * 100, "%", nameof(moisture));
        return Mass.FromKilograms(moistKilograms / (1 + percent / 100));
    }

    /// <summary>The moisture by mass, from a sample weighed before and after drying.</summary>
    /// <param name="moist">The mass before.</param>
    /// <param name="dry">The mass after; above zero, not above the one before.</param>
    /// <returns>The water on the dry soil.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The dry mass is not above zero, or above the moist one.</exception>
    public static Ratio Moisture(Mass moist, Mass dry)
    {
        double dryKilograms = Guard.Positive(Boundary.Kilograms(dry), "kg", nameof(dry));
        double moistKilograms = Guard.AtLeast(Boundary.Kilograms(moist), dryKilograms, "kg", nameof(moist));
        return Ratio.FromPercent((moistKilograms - dryKilograms) / dryKilograms * 100);
    }

    /// <summary>The moisture by volume from that by mass.</summary>
    /// <param name="moisture">The water on the dry soil, 0 or more.</param>
    /// <param name="bulk">The mass of dry soil per volume; above zero.</param>
    /// <returns>The water in the whole soil.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The moisture is negative, the density not above zero, or there would be more water than soil.</exception>
    public static VolumeConcentration WaterByVolume(Ratio moisture, Density bulk)
    {
        double percent = Guard.NotNegative(Boundary.Fraction(moisture) * 100, "%", nameof(moisture));
        double density = Guard.Positive(Boundary.KilogramsPerCubicMetre(bulk), "kg/m³", nameof(bulk));
        double most = KilogramsPerCubicMetreOfWater / density * 100;
        Guard.Within(percent, 0, most, "%", nameof(moisture));
        return VolumeConcentration.FromPercent(percent / most * 100);
    }

    /// <summary>The pores from a sample whose water fills a known share of them.</summary>
    /// <param name="dry">The mass after drying; above zero.</param>
    /// <param name="water">The mass of its water; above zero.</param>
    /// <param name="saturation">The share of the pores that the water fills; above 0, up to 100 %.</param>
    /// <param name="particle">The density of the particles; above zero.</param>
    /// <returns>The pores by volume.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public static VolumeConcentration PorosityFromWater(Mass dry, Mass water, Ratio saturation, Density particle)
    {
        double percent = Guard.Positive(Boundary.Fraction(saturation) * 100, "%", nameof(saturation));
        double filled = Guard.Within(percent, 0, 100, "%", nameof(saturation)) / 100;
        double pores = Guard.Positive(Boundary.Kilograms(water), "kg", nameof(water)) / KilogramsPerCubicMetreOfWater / filled;
        double solids = Guard.Positive(Boundary.Kilograms(dry), "kg", nameof(dry))
            / Guard.Positive(Boundary.KilogramsPerCubicMetre(particle), "kg/m³", nameof(particle));
        return VolumeConcentration.FromPercent(pores / (pores + solids) * 100);
    }

    private static TypicalBulkDensity Row(SoilTexture texture, double gramsPerCubicCentimetre) =>
        new(texture, Density.FromKilogramsPerCubicMeter(gramsPerCubicCentimetre * 1000), SoilWaterSources.GardenBulkDensity);
}
