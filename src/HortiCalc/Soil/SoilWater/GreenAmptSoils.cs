using HortiCalc.Evidence;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Soil;

/// <summary>The Green-Ampt parameters of eleven classes of texture, Rawls et al. 1983, whole table.</summary>
/// <remarks>The spans are one standard deviation to either side; that of the suction covers more than a power of ten.</remarks>
public static class GreenAmptSoils
{
    /// <summary>Every class; silt is not in the table.</summary>
    public static IReadOnlyList<GreenAmptSoil> All { get; } = ValueList<GreenAmptSoil>.Of(
    [
        Row(SoilTexture.Sand, [0.437, 0.374, 0.500], [0.417, 0.354, 0.480], [1.95, 0.38, 9.98], 4.74),
        Row(SoilTexture.LoamySand, [0.437, 0.363, 0.506], [0.401, 0.329, 0.473], [2.41, 0.53, 11.00], 1.18),
        Row(SoilTexture.SandyLoam, [0.453, 0.351, 0.555], [0.412, 0.283, 0.541], [4.33, 1.05, 17.90], 0.43),
        Row(SoilTexture.Loam, [0.463, 0.375, 0.551], [0.434, 0.334, 0.534], [3.50, 0.52, 23.38], 0.13),
        Row(SoilTexture.SiltLoam, [0.501, 0.420, 0.582], [0.486, 0.394, 0.578], [6.57, 1.15, 37.56], 0.26),
        Row(SoilTexture.SandyClayLoam, [0.398, 0.332, 0.464], [0.330, 0.235, 0.425], [8.60, 1.74, 42.52], 0.06),
        Row(SoilTexture.ClayLoam, [0.464, 0.409, 0.519], [0.309, 0.279, 0.501], [8.22, 1.89, 35.87], 0.04),
        Row(SoilTexture.SiltyClayLoam, [0.471, 0.418, 0.524], [0.432, 0.347, 0.517], [10.75, 2.23, 51.77], 0.04),
        Row(SoilTexture.SandyClay, [0.430, 0.370, 0.490], [0.321, 0.207, 0.435], [9.41, 1.61, 55.20], 0.02),
        Row(SoilTexture.SiltyClay, [0.479, 0.425, 0.533], [0.423, 0.334, 0.512], [11.50, 2.41, 54.88], 0.02),
        Row(SoilTexture.Clay, [0.475, 0.427, 0.523], [0.385, 0.269, 0.501], [12.45, 2.52, 61.61], 0.01),
    ]);

    /// <summary>The parameters of a class.</summary>
    /// <param name="texture">The USDA class.</param>
    /// <returns>Its parameters.</returns>
    /// <exception cref="ArgumentException">The table does not have the class: silt.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The class is not one of the defined ones.</exception>
    /// <example><code>
    /// GreenAmpt dryLoam = GreenAmptSoils.Of(SoilTexture.SiltLoam).From(effectiveSaturation: Ratio.FromPercent(30));
    /// Length intoTheGround = dryLoam.CumulativeAfter(Duration.FromHours(1));
    /// </code></example>
    public static GreenAmptSoil Of(SoilTexture texture)
    {
        Guard.Defined(texture);
        return All.FirstOrDefault(soil => soil.Texture == texture)
            ?? throw new ArgumentException($"texture was {texture}, which the table does not have; allowed: {string.Join(", ", All.Select(soil => soil.Texture))}.", nameof(texture));
    }

    private static GreenAmptSoil Row(SoilTexture texture, double[] porosity, double[] effective, double[] suctionInches, double inchesPerHour) => new(
        texture,
        Spread(porosity, share => VolumeConcentration.FromPercent(share * 100)),
        Spread(effective, share => VolumeConcentration.FromPercent(share * 100)),
        Spread(suctionInches, inches => Length.FromMeters(inches * Boundary.MetresPerInch)),
        WaterRate.FromInchesPerHour(inchesPerHour));

    private static Estimate<T> Spread<T>(double[] values, Func<double, T> make)
        where T : notnull =>
        new(make(values[0]), GreenAmptSoil.Method, new EstimateRange<T>(make(values[1]), make(values[2]), "one standard deviation to either side"));
}
