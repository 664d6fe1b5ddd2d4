using System.Text.Json;
using HortiCalc.Json;
using HortiCalc.Soil;
using UnitsNet;

namespace HortiCalc.Tests.Soil;

public class TextureClassTests
{
    [Fact]
    public void Classes_EveryPointOfTheTriangle_HasOneAndOneAlone()
    {
        for (int sand = 0; sand <= 500; sand++)
        {
            for (int clay = 0; clay <= 500 - sand; clay++)
            {
                double s = sand / 5.0;
                double c = clay / 5.0;
                double z = Math.Round(100 - s - c, 9, MidpointRounding.AwayFromZero);
                Assert.Single(TextureRules.Usda, rule => rule.Holds(s, z, c));
            }
        }
    }

    // Mean sand and clay of the classes over 2128 samples, https://github.com/UW-Hydro/VIC (soiltext.md).
    [Theory]
    [InlineData(94.83, 2.27, SoilTexture.Sand)]
    [InlineData(85.23, 6.53, SoilTexture.LoamySand)]
    [InlineData(69.28, 12.48, SoilTexture.SandyLoam)]
    [InlineData(19.28, 17.11, SoilTexture.SiltLoam)]
    [InlineData(4.5, 8.3, SoilTexture.Silt)]
    [InlineData(41, 20.69, SoilTexture.Loam)]
    [InlineData(60.97, 26.33, SoilTexture.SandyClayLoam)]
    [InlineData(9.04, 33.05, SoilTexture.SiltyClayLoam)]
    [InlineData(30.08, 33.46, SoilTexture.ClayLoam)]
    [InlineData(50.32, 39.3, SoilTexture.SandyClay)]
    [InlineData(8.18, 44.58, SoilTexture.SiltyClay)]
    [InlineData(24.71, 52.46, SoilTexture.Clay)]
    public void Classify_MeanSoilOfAClass_IsTheClass(double sand, double clay, SoilTexture expected) =>
        Assert.Equal(expected, SoilTextures.Classify(Of(sand, clay)).Value);

    [Theory]
    [InlineData(40, 40, 18)]
    [InlineData(40, 44, 18)]
    public void ParticleSizes_NotAHundredTogether_AreRefusedWithWhatWouldBe(double sand, double silt, double clay) => Assert.Contains(
        "42 % beside 40 % of sand and 18 % of clay",
        Assert.Throws<ArgumentOutOfRangeException>(
            nameof(silt), () => new ParticleSizes(MassFraction.FromPercent(sand), MassFraction.FromPercent(silt), MassFraction.FromPercent(clay))).Message,
        StringComparison.Ordinal);

    [Fact]
    public void Json_ParticlesClassAndGrade_ComeBackEqual()
    {
        RoundTrip(Of(40, 18));
        RoundTrip(SoilTextures.Classify(Of(40, 18)));
        Assert.All(AustralianFieldGrades.All, RoundTrip);
    }

    private static ParticleSizes Of(double sand, double clay) =>
        ParticleSizes.FromSandAndClay(MassFraction.FromPercent(sand), MassFraction.FromPercent(clay));

    private static void RoundTrip<T>(T value) =>
        Assert.Equal(value, JsonSerializer.Deserialize<T>(JsonSerializer.Serialize(value, HortiCalcJson.Options), HortiCalcJson.Options));
}
