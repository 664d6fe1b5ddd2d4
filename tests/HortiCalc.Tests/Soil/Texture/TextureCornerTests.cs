using HortiCalc.Soil;
using UnitsNet;

namespace HortiCalc.Tests.Soil;

/// <summary>Every corner of the USDA triangle, where three classes or two and a side meet, by the words of the Soil Survey Manual.</summary>
public class TextureCornerTests
{
    // Sand, clay, and the class that the manual's words give the corner itself.
    [Theory]
    [InlineData(0, 100, SoilTexture.Clay)]
    [InlineData(0, 60, SoilTexture.SiltyClay)]      // silt 40: 40 % or more silt
    [InlineData(0, 40, SoilTexture.SiltyClay)]      // clay 40: 40 % or more clay
    [InlineData(20, 40, SoilTexture.SiltyClay)]     // silt 40
    [InlineData(45, 40, SoilTexture.Clay)]          // sand 45: 45 % or less
    [InlineData(45, 55, SoilTexture.Clay)]
    [InlineData(45, 35, SoilTexture.ClayLoam)]      // sandy clay needs more than 45 % of sand
    [InlineData(65, 35, SoilTexture.SandyClay)]
    [InlineData(45, 27, SoilTexture.ClayLoam)]
    [InlineData(20, 27, SoilTexture.SiltyClayLoam)] // sand 20: 20 % or less
    [InlineData(0, 27, SoilTexture.SiltyClayLoam)]
    [InlineData(23, 27, SoilTexture.ClayLoam)]      // silt 50, clay 27
    [InlineData(80, 20, SoilTexture.SandyClayLoam)]
    [InlineData(52, 20, SoilTexture.Loam)]          // silt 28: 28 % or more
    [InlineData(45, 27.5, SoilTexture.ClayLoam)]
    [InlineData(52, 7, SoilTexture.Loam)]           // 52 % or less sand
    [InlineData(43, 7, SoilTexture.SiltLoam)]       // silt 50
    [InlineData(50, 0, SoilTexture.SiltLoam)]       // silt 50
    [InlineData(20, 0, SoilTexture.Silt)]           // silt 80
    [InlineData(8, 12, SoilTexture.SiltLoam)]       // clay 12
    [InlineData(0, 12, SoilTexture.SiltLoam)]
    [InlineData(0, 0, SoilTexture.Silt)]
    [InlineData(70, 0, SoilTexture.SandyLoam)]      // silt + 2 clay = 30
    [InlineData(85, 15, SoilTexture.SandyLoam)]
    [InlineData(85, 0, SoilTexture.LoamySand)]      // silt + 1.5 clay = 15
    [InlineData(90, 10, SoilTexture.LoamySand)]
    [InlineData(100, 0, SoilTexture.Sand)]
    public void Classify_CornerOfTheTriangle_IsTheClassOfTheManual(double sand, double clay, SoilTexture expected) =>
        Assert.Equal(expected, SoilTextures.Classify(ParticleSizes.FromSandAndClay(MassFraction.FromPercent(sand), MassFraction.FromPercent(clay))).Value);

    [Fact]
    public void Classify_DenseGrid_EveryClassIsThereInItsShareOfTheTriangle()
    {
        // Areas of the classes by the shoelace formula over the corners above, in per cent of the triangle.
        Dictionary<SoilTexture, double> areas = new()
        {
            [SoilTexture.Sand] = 1.5,
            [SoilTexture.LoamySand] = 3,
            [SoilTexture.SandyClay] = 4,
            [SoilTexture.SiltyClay] = 4,
            [SoilTexture.Clay] = 29.75,
            [SoilTexture.SiltyClayLoam] = 5.2,
            [SoilTexture.ClayLoam] = 6.5,
        };
        Dictionary<SoilTexture, int> found = [];
        int all = 0;
        const int Steps = 400;
        for (int i = 0; i < Steps; i++)
        {
            for (int j = 0; j < Steps - i; j++, all++)
            {
                // Off the lattice of the bounds, in the middle of the cells.
                SoilTexture texture = SoilTextures.Classify(ParticleSizes.FromSandAndClay(
                    MassFraction.FromPercent((i + 1 / 3.0) * 100 / Steps), MassFraction.FromPercent((j + 1 / 3.0) * 100 / Steps))).Value;
                found[texture] = found.GetValueOrDefault(texture) + 1;
            }
        }

        Assert.Equal(12, found.Count);
        Assert.All(areas, pair => Assert.Equal(pair.Value, 100.0 * found[pair.Key] / all, 0.3));
    }
}
