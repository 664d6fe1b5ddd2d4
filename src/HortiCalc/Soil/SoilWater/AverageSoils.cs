using HortiCalc.Evidence;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Soil;

/// <summary>The averages of the USDA Agricultural Research Service by texture, whole table.</summary>
public static class AverageSoils
{
    /// <summary>Every class.</summary>
    public static IReadOnlyList<AverageSoil> All { get; } = ValueList<AverageSoil>.Of(
    [
        Row(SoilTexture.Sand, 94.83, 2.27, 1.49, 0.08, 0.03, 0.43, 38.41, 4.1),
        Row(SoilTexture.LoamySand, 85.23, 6.53, 1.52, 0.15, 0.06, 0.42, 10.87, 3.99),
        Row(SoilTexture.SandyLoam, 69.28, 12.48, 1.57, 0.21, 0.09, 0.4, 5.24, 4.84),
        Row(SoilTexture.SiltLoam, 19.28, 17.11, 1.42, 0.32, 0.12, 0.46, 3.96, 3.79),
        Row(SoilTexture.Silt, 4.5, 8.3, 1.28, 0.28, 0.08, 0.52, 8.59, 3.05),
        Row(SoilTexture.Loam, 41, 20.69, 1.49, 0.29, 0.14, 0.43, 1.97, 5.3),
        Row(SoilTexture.SandyClayLoam, 60.97, 26.33, 1.6, 0.27, 0.17, 0.39, 2.4, 8.66),
        Row(SoilTexture.SiltyClayLoam, 9.04, 33.05, 1.38, 0.36, 0.21, 0.48, 4.57, 7.48),
        Row(SoilTexture.ClayLoam, 30.08, 33.46, 1.43, 0.34, 0.21, 0.46, 1.77, 8.02),
        Row(SoilTexture.SandyClay, 50.32, 39.3, 1.57, 0.31, 0.23, 0.41, 1.19, 13),
        Row(SoilTexture.SiltyClay, 8.18, 44.58, 1.35, 0.37, 0.25, 0.49, 2.95, 9.76),
        Row(SoilTexture.Clay, 24.71, 52.46, 1.39, 0.36, 0.27, 0.47, 3.18, 12.28),
    ]);

    /// <summary>The averages of a class.</summary>
    /// <param name="texture">The USDA class.</param>
    /// <returns>Its averages.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The class is not one of the defined ones.</exception>
    /// <example><code>
    /// AverageSoil clay = AverageSoils.Of(SoilTexture.Clay);
    /// Console.WriteLine(clay.BulkDensity.GramsPerCubicCentimeter.ToString(System.Globalization.CultureInfo.InvariantCulture));   // 1.39
    /// </code></example>
    public static AverageSoil Of(SoilTexture texture)
    {
        Guard.Defined(texture);
        return All.Single(soil => soil.Texture == texture);
    }

    // Per cent, per cent, g/cm³, three shares by volume, cm/h.
    private static AverageSoil Row(
        SoilTexture texture, double sand, double clay, double density, double fieldCapacity, double wiltingPoint, double porosity, double conductivity, double b) =>
        new(
            texture,
            MassFraction.FromPercent(sand),
            MassFraction.FromPercent(clay),
            Density.FromKilogramsPerCubicMeter(density * 1000),
            VolumeConcentration.FromPercent(fieldCapacity * 100),
            VolumeConcentration.FromPercent(wiltingPoint * 100),
            VolumeConcentration.FromPercent(porosity * 100),
            WaterRate.FromCentimetresPerHour(conductivity),
            b,
            SoilWaterSources.ArsAverages);
}
