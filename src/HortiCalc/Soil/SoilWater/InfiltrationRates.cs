using HortiCalc.Evidence;
using HortiCalc.Units;

namespace HortiCalc.Soil;

/// <summary>How fast soils take water in, as three lists print it by texture.</summary>
/// <remarks>
/// The lists differ up to tenfold for clay: they speak of different moments of a rain and of different grounds. Each row carries the caution that a
/// crust or a pan cuts the rate.
/// </remarks>
public static class InfiltrationRates
{
    /// <summary>Every row of the three lists.</summary>
    public static IReadOnlyList<InfiltrationRate> All { get; } = ValueList<InfiltrationRate>.Of(
    [
        Colorado("sand", 4.00, 8.00, [SoilTexture.Sand]),
        Colorado("loamy sand", 1.20, 2.40, [SoilTexture.LoamySand]),
        Colorado("loam", 0.50, 1.00, [SoilTexture.Loam]),
        Colorado("silt loam", 0.15, 0.30, [SoilTexture.SiltLoam]),
        Colorado("sandy clay loam", 0.10, 0.20, [SoilTexture.SandyClayLoam]),
        Colorado("clay loam", 0.05, 0.10, [SoilTexture.ClayLoam]),
        Colorado("silty clay loam", 0.05, 0.10, [SoilTexture.SiltyClayLoam]),
        Colorado("sandy clay", 0.03, 0.05, [SoilTexture.SandyClay]),
        Colorado("silty clay", 0.02, 0.04, [SoilTexture.SiltyClay]),
        Colorado("clay", 0.01, 0.02, [SoilTexture.Clay]),
        Fao("sandy loam", 20, 30, [SoilTexture.SandyLoam]),
        Fao("loam", 10, 20, [SoilTexture.Loam]),
        Fao("clay loam", 5, 10, [SoilTexture.ClayLoam]),
        Fao("clay", 1, 5, [SoilTexture.Clay]),
        Steady("sand", 0.8, null, [SoilTexture.Sand]),
        Steady("sandy and silty soils", 0.4, 0.8, [SoilTexture.SandyLoam, SoilTexture.SiltLoam, SoilTexture.Silt]),
        Steady("loam", 0.2, 0.4, [SoilTexture.Loam]),
        Steady("clayey soils", 0.04, 0.2, [SoilTexture.SandyClay, SoilTexture.SiltyClay, SoilTexture.Clay]),
        Steady("sodic clayey soils", 0, 0.04, []),
    ]);

    /// <summary>What the lists print for a class.</summary>
    /// <param name="texture">The USDA class.</param>
    /// <returns>The rows, one a list at most; none for a class that no list has.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The class is not one of the defined ones.</exception>
    /// <example><code>
    /// foreach (InfiltrationRate list in InfiltrationRates.Of(SoilTexture.ClayLoam))
    ///     Console.WriteLine(list);
    /// </code></example>
    public static IReadOnlyList<InfiltrationRate> Of(SoilTexture texture)
    {
        Guard.Defined(texture);
        return ValueList<InfiltrationRate>.Of(All.Where(row => row.Textures.Contains(texture)));
    }

    private static InfiltrationRate Colorado(string printed, double low, double? high, SoilTexture[] textures) =>
        Inches(printed, low, high, textures, SoilWaterSources.ColoradoInfiltration);

    private static InfiltrationRate Steady(string printed, double low, double? high, SoilTexture[] textures) =>
        Inches(printed, low, high, textures, SoilWaterSources.SteadyInfiltration);

    private static InfiltrationRate Fao(string printed, double low, double? high, SoilTexture[] textures) => new(
        printed,
        textures,
        WaterRate.FromMillimetresPerHour(low),
        high is { } most ? WaterRate.FromMillimetresPerHour(most) : null,
        SoilWaterSources.FaoInfiltration);

    private static InfiltrationRate Inches(string printed, double low, double? high, SoilTexture[] textures, Source source) =>
        new(printed, textures, WaterRate.FromInchesPerHour(low), high is { } most ? WaterRate.FromInchesPerHour(most) : null, source);
}
