using HortiCalc.Evidence;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Soil;

/// <summary>Bulk densities at which roots are held back, by texture, and those that suit them, as two lists print them.</summary>
public static class RootDensityLimits
{
    /// <summary>Every row of both lists.</summary>
    public static IReadOnlyList<RootDensityLimit> All { get; } = ValueList<RootDensityLimit>.Of(
    [
        Illinois("sands; loamy sands except loamy very fine sand", 1.8, [SoilTexture.Sand, SoilTexture.LoamySand]),
        Illinois("very fine sand; loamy very fine sand", 1.77, [SoilTexture.Sand, SoilTexture.LoamySand], veryFineSand: true),
        Illinois("sandy loams", 1.75, [SoilTexture.SandyLoam]),
        Illinois("loam; sandy clay loam", 1.7, [SoilTexture.Loam, SoilTexture.SandyClayLoam]),
        Illinois("clay loam", 1.65, [SoilTexture.ClayLoam]),
        Illinois("sandy clay", 1.6, [SoilTexture.SandyClay]),
        Illinois("silt; silt loam", 1.55, [SoilTexture.Silt, SoilTexture.SiltLoam]),
        Illinois("silty clay loam", 1.5, [SoilTexture.SiltyClayLoam]),
        Illinois("silty clay", 1.45, [SoilTexture.SiltyClay]),
        Illinois("clay", 1.4, [SoilTexture.Clay]),
        Nrcs("sandy", 1.6, 1.8, [SoilTexture.Sand, SoilTexture.LoamySand]),
        Nrcs("silty", 1.4, 1.65, [SoilTexture.Silt, SoilTexture.SiltLoam]),
        Nrcs("clayey", 1.1, 1.47, [SoilTexture.Clay, SoilTexture.SiltyClay, SoilTexture.SandyClay]),
    ]);

    /// <summary>The limits of a class.</summary>
    /// <param name="texture">The USDA class.</param>
    /// <param name="sandGrade">The grade of the sand; very fine sand has a limit of its own.</param>
    /// <returns>The rows; each list has one at most.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The class or the grade is not one of the defined ones.</exception>
    /// <example><code>
    /// foreach (RootDensityLimit limit in RootDensityLimits.Of(SoilTexture.Clay))
    ///     Console.WriteLine(limit.Restricts(Density.FromGramsPerCubicCentimeter(1.5)));   // True, twice
    /// </code></example>
    public static IReadOnlyList<RootDensityLimit> Of(SoilTexture texture, SandGrade sandGrade = SandGrade.Unstated)
    {
        Guard.Defined(texture);
        Guard.Defined(sandGrade);
        return ValueList<RootDensityLimit>.Of(All.Where(row =>
            row.Textures.Contains(texture)
            && (row.SandGrade is null || row.SandGrade == SandGrade.VeryFine == (sandGrade == SandGrade.VeryFine))));
    }

    private static RootDensityLimit Illinois(string printed, double gramsPerCubicCentimetre, SoilTexture[] textures, bool veryFineSand = false) => new(
        printed,
        textures,
        Grams(gramsPerCubicCentimetre),
        SoilWaterSources.IllinoisRoots,
        sandGrade: veryFineSand ? SandGrade.VeryFine : textures.Contains(SoilTexture.Sand) ? SandGrade.Unstated : null);

    private static RootDensityLimit Nrcs(string printed, double ideal, double restricts, SoilTexture[] textures) =>
        new(printed, textures, Grams(restricts), SoilWaterSources.NrcsRoots, Grams(ideal));

    private static Density Grams(double gramsPerCubicCentimetre) => Density.FromKilogramsPerCubicMeter(gramsPerCubicCentimetre * 1000);
}
