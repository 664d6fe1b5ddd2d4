using System.Text.Json;
using HortiCalc.Json;
using HortiCalc.Soil;
using HortiCalc.Units;
using UnitsNet;
using static HortiCalc.Tests.Soil.SoilSamples;

namespace HortiCalc.Tests.Soil;

/// <summary>What liming materials refuse or say.</summary>
public class LimeMaterialEdges
{
    [Fact]
    public void Fineness_WithoutASieveOfTheScheme_RefusesAndGuessesNothing()
    {
        ArgumentException refused = Assert.Throws<ArgumentException>(() => FinenessScheme.NewYork.Fineness(SieveAnalysis.OfMeshes((20, 95), (60, 60))));

        Assert.Equal("sieves", refused.ParamName);
        Assert.Contains("no sieve of 0.149 mm", refused.Message, StringComparison.Ordinal);
        Assert.Equal("key", Assert.Throws<ArgumentException>(() => FinenessScheme.FromKey("guess")).ParamName);
    }

    [Fact]
    public void SieveAnalysis_OutOfOrderOrRising_Refuses()
    {
        Assert.Contains("never more through the finer", Assert.Throws<ArgumentException>(() => SieveAnalysis.OfMeshes((20, 50), (60, 60))).Message, StringComparison.Ordinal);
        Assert.Equal("sieves", Assert.Throws<ArgumentException>(() => SieveAnalysis.OfMeshes((60, 50), (20, 40))).ParamName);
        Assert.Equal("sieves", Assert.Throws<ArgumentException>(() => new SieveAnalysis([])).ParamName);
        Assert.Equal("mesh", Assert.Throws<ArgumentOutOfRangeException>(() => SieveAnalysis.OpeningOf(70)).ParamName);
        Assert.Equal("passing", Assert.Throws<ArgumentOutOfRangeException>(() => SievePassing.Mesh(20, Ratio.FromPercent(101))).ParamName);
    }

    // The trap: weights of cumulative shares do not fit the shares between sieves.
    [Fact]
    public void Schemes_OnlyIowa_IsCumulative() =>
        Assert.Equal([FinenessScheme.Iowa], FinenessScheme.All.Where(scheme => scheme.IsCumulative));

    [Theory]
    [InlineData(-1)]
    [InlineData(100)]
    public void LimingProduct_ImpossibleMoisture_Refuses(double percent)
    {
        ArgumentOutOfRangeException refused = Assert.Throws<ArgumentOutOfRangeException>(
            () => new LimingProduct(Product(90), SieveAnalysis.OfMeshes((60, 100)), MassFraction.FromPercent(percent)));

        Assert.Equal("moisture", refused.ParamName);
        Assert.Contains("from 0 to below 100 %", refused.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void LimingProduct_NegativePrice_Refuses() => Assert.Equal("pricePerTonne", Assert.Throws<ArgumentOutOfRangeException>(
        () => new LimingProduct(Product(90), SieveAnalysis.OfMeshes((60, 100)), pricePerTonne: -1)).ParamName);

    // Missouri's most is 800, not 2000; a label of 54 in the United Kingdom is as calcium oxide.
    [Fact]
    public void Convert_KnownTraps_ComeOutAsTheyAre()
    {
        Assert.Equal(800, LimeIndexes.Convert(2000, LimeIndex.EffectiveNeutralizingPower, LimeIndex.EffectiveNeutralizingMaterial), 1e-9);
        Assert.Equal(96.4, LimeIndexes.Convert(54, LimeIndex.NeutralisingValueAsCalciumOxide, LimeIndex.EffectiveCalciumCarbonateEquivalent), 0.05);
        Assert.Equal("value", Assert.Throws<ArgumentOutOfRangeException>(
            () => LimeIndexes.Convert(-1, LimeIndex.AgriculturalIndex, LimeIndex.AgriculturalIndex)).ParamName);
        Assert.Throws<ArgumentOutOfRangeException>(() => LimeIndexes.Convert(1, (LimeIndex)99, LimeIndex.AgriculturalIndex));
    }

    [Fact]
    public void LimeComposition_NothingOrTooMuch_Refuses()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => new LimeComposition());
        Assert.Contains("110 % together", Assert.Throws<ArgumentOutOfRangeException>(
            () => new LimeComposition(MassFraction.FromPercent(60), MassFraction.FromPercent(50))).Message, StringComparison.Ordinal);
        Assert.Equal(LimeForm.Oxide, LimingMaterial.FromComposition(
            "half burnt", new LimeComposition(calciumCarbonate: MassFraction.FromPercent(80), calciumOxide: MassFraction.FromPercent(10))).Form);
    }

    [Fact]
    public void FinenessClass_Meets_IsUnknownWhereTheAnalysisDoesNotDecide()
    {
        FinenessClass fine = FinenessClass.All[0];

        Assert.True(fine.Meets(SieveAnalysis.OfMeshes((20, 96), (60, 61), (100, 50))));
        Assert.False(fine.Meets(SieveAnalysis.OfMeshes((20, 90), (60, 61))));
        Assert.Null(fine.Meets(SieveAnalysis.OfMeshes((20, 96), (60, 61))));
    }

    [Fact]
    public void WoodAsh_AboveNeutral_IsNone()
    {
        Assert.Equal(0, WoodAsh.MostPerYear(new Ph(7.1)).Value.GramsPerSquareMeter);
        Assert.InRange(WoodAsh.MostPerYear(new Ph(7.0)).Value.GramsPerSquareMeter, 97.6, 97.7);
        Assert.Contains(WoodAsh.MostPerYear(new Ph(6)).Cautions, caution => caution.Code == "lime.coal-ash");
    }

    [Fact]
    public void GermanAdvice_WithoutARow_Refuses()
    {
        Assert.Equal("humus", Assert.Throws<ArgumentOutOfRangeException>(
            () => GermanLiming.Advice(GermanSoilGroup.Loam, GermanLandUse.Arable, MassFraction.FromPercent(31))).ParamName);
        Assert.Equal("group", Assert.Throws<ArgumentOutOfRangeException>(
            () => GermanLiming.Advice(GermanSoilGroup.Clay, GermanLandUse.Grass, MassFraction.FromPercent(3))).ParamName);
        Assert.Null(GermanLiming.Advice(GermanSoilGroup.Loam, GermanLandUse.Grass, MassFraction.FromPercent(3)).Maintenance);
    }

    // The trap: 600 kg of oxide are 1071 kg of carbonate.
    [Fact]
    public void GermanAdvice_Maintenance_IsOfCalciumOxide()
    {
        LimeRequirement maintenance = GermanLiming.Advice(GermanSoilGroup.Sand, GermanLandUse.Arable, MassFraction.FromPercent(2)).Maintenance!;

        Assert.Equal(60, maintenance.Grams(), 1e-9);
        Assert.Equal(107.1, maintenance.As(LimingMaterial.CalciumCarbonate).Grams(), 0.05);
        Assert.Contains("lime.quicklime", maintenance.Rate.Codes());
    }

    [Fact]
    public void LimeSafety_CausticMaterials_SayMoreThanCarbonates()
    {
        string[] carbonate = [.. LimeSafety.Of(LimingMaterial.GroundLimestone).Select(caution => caution.Code)];
        string[] oxide = [.. LimeSafety.Of(LimingMaterial.CalciumOxide).Select(caution => caution.Code)];

        Assert.Equal(["lime.manure", "lime.dust", "lime.retest", "lime.laboratory"], carbonate);
        Assert.Empty(((string[])["lime.caustic", "lime.quicklime", "lime.brush-off", "lime.exposure-limit"]).Except(oxide));
    }

    [Fact]
    public void Json_Materials_ComeBackEqual()
    {
        LimingProduct product = new(Product(92), SieveAnalysis.OfMeshes((4, 100), (8, 90), (60, 55)), MassFraction.FromPercent(2), 30);
        GermanLimeAdvice advice = GermanLiming.Advice(GermanSoilGroup.Loam, GermanLandUse.Arable, MassFraction.FromPercent(3));
        LimeComposition composition = new(MassFraction.FromPercent(52), MassFraction.FromPercent(40));

        Assert.Equal(product, JsonSerializer.Deserialize(JsonSerializer.Serialize(product, HortiCalcJsonContext.Default.LimingProduct), HortiCalcJsonContext.Default.LimingProduct));
        Assert.Equal(advice, JsonSerializer.Deserialize(JsonSerializer.Serialize(advice, HortiCalcJsonContext.Default.GermanLimeAdvice), HortiCalcJsonContext.Default.GermanLimeAdvice));
        Assert.Equal(composition, JsonSerializer.Deserialize(
            JsonSerializer.Serialize(composition, HortiCalcJsonContext.Default.LimeComposition), HortiCalcJsonContext.Default.LimeComposition));
        Assert.Equal(FinenessScheme.Ohio, JsonSerializer.Deserialize("\"fineness-ohio\"", HortiCalcJsonContext.Default.FinenessScheme));
        Assert.All(FinenessClass.All, known => Assert.Equal(
            known, JsonSerializer.Deserialize(JsonSerializer.Serialize(known, HortiCalcJsonContext.Default.FinenessClass), HortiCalcJsonContext.Default.FinenessClass)));
        Assert.All(LimeMaterialRange.Published, range => Assert.Equal(
            range, JsonSerializer.Deserialize(JsonSerializer.Serialize(range, HortiCalcJsonContext.Default.LimeMaterialRange), HortiCalcJsonContext.Default.LimeMaterialRange)));
        Assert.All(LimeTimeFact.Published, fact => Assert.Equal(
            fact, JsonSerializer.Deserialize(JsonSerializer.Serialize(fact, HortiCalcJsonContext.Default.LimeTimeFact), HortiCalcJsonContext.Default.LimeTimeFact)));
    }
}
