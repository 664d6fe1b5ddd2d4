using System.Text.Json;
using HortiCalc.Display;
using HortiCalc.Evidence;
using HortiCalc.Json;
using HortiCalc.Soil;
using HortiCalc.Units;
using UnitsNet;
using static HortiCalc.Tests.Soil.SoilSamples;

namespace HortiCalc.Tests.Soil;

/// <summary>What the methods by buffer, cations and pH unit refuse or say, and the comparison of all.</summary>
public class LimeMethodEdges
{
    private static readonly Length Spade = Length.FromCentimeters(20);

    [Theory]
    [InlineData(4.79, 6.4, "SikoraBufferPh", "from 4.8 to 6.9 pH")]
    [InlineData(6.91, 6.4, "SikoraBufferPh", "from 4.8 to 6.9 pH")]
    [InlineData(6.0, 6.5, "target", "5.6 or 6 or 6.4 or 6.8 or 7.2 pH")]
    public void Requirement_OregonOutsideItsTable_Refuses(double buffer, double target, string parameter, string allowed)
    {
        ArgumentOutOfRangeException refused = Assert.Throws<ArgumentOutOfRangeException>(
            () => Liming.Requirement(new SoilReport { SikoraBufferPh = new Ph(buffer) }, new Ph(target), LimingMethod.OregonSikora));

        Assert.Equal(parameter, refused.ParamName);
        Assert.Contains(allowed, refused.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Requirement_TeagascToAnotherTarget_Refuses() => Assert.Equal("target", Assert.Throws<ArgumentOutOfRangeException>(
        () => Liming.Requirement(new SoilReport { SmpBufferPh = new Ph(6.3) }, new Ph(6.5), LimingMethod.Teagasc)).ParamName);

    [Fact]
    public void Requirement_AdamsEvans_CarriesThatItIsNotConfirmedAndStaysOutOfAll()
    {
        SoilReport soil = Full(5, 3, SoilTexture.LoamySand);
        LimeRequirement need = Liming.Requirement(soil, Neutralish, LimingMethod.AdamsEvans);

        Assert.Contains("lime.unconfirmed", need.Rate.Codes());
        Assert.Equal(SourceKind.FromMemory, need.Rate.Method.Source.Kind);
        Assert.DoesNotContain(Liming.Compare(soil, Neutralish, Spade).Answers, answer => answer.Rate.Method == LimingMethod.AdamsEvans.Method);
        Assert.Equal("PhInWater", Assert.Throws<ArgumentOutOfRangeException>(
            () => Liming.Requirement(Full(4.3, 3, SoilTexture.Sand), Neutralish, LimingMethod.AdamsEvans)).ParamName);
    }

    // By hand: from pH 5.0 the lower root is 0.7073, as in the collection; from 6.5 it is 0.2601.
    [Fact]
    public void Requirement_AdamsEvans_IsTheFormulaByHand() =>
        Assert.Equal(
            8000 * 0.4 / 0.7073 * (0.7073 - 0.2601) * 1.5,
            (Liming.Requirement(Full(5, 3, SoilTexture.Sand), Neutralish, LimingMethod.AdamsEvans).Rate.Value * Area.FromAcres(1)).Pounds,
            3.0);

    [Theory]
    [InlineData(-1)]
    [InlineData(101)]
    public void Methods_ImpossibleSaturation_Refuse(double percent)
    {
        Assert.Equal("targetSaturation", Assert.Throws<ArgumentOutOfRangeException>(
            () => LimingMethod.BrazilBaseSaturation(Ratio.FromPercent(percent))).ParamName);
        Assert.Equal("tolerated", Assert.Throws<ArgumentOutOfRangeException>(() => LimingMethod.Cochrane(Ratio.FromPercent(percent))).ParamName);
    }

    [Fact]
    public void Methods_ImpossibleFactor_Refuses()
    {
        ArgumentOutOfRangeException refused = Assert.Throws<ArgumentOutOfRangeException>(
            () => LimingMethod.BrazilAluminium(4.1, Ratio.Zero, VolumetricCharge.FromCentimolesPerLitre(2)));

        Assert.Equal("factor", refused.ParamName);
        Assert.Contains("4.1", refused.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Requirement_CationsWithoutPotentialAcidity_NamesWhatIsAbsent()
    {
        SoilCations cations = new(
            VolumetricCharge.FromCentimolesPerLitre(1), VolumetricCharge.FromCentimolesPerLitre(1), VolumetricCharge.FromCentimolesPerLitre(0),
            VolumetricCharge.FromCentimolesPerLitre(1));

        Assert.Equal(["Cations.PotentialAcidity"], LimingMethod.BrazilBaseSaturation(Ratio.FromPercent(60)).Missing(new SoilReport { Cations = cations }));
        Assert.Equal(["Cations"], LimingMethod.Cochrane(Ratio.Zero).Missing(new SoilReport()));
        Assert.Null(cations.BaseSaturation);
    }

    [Fact]
    public void Requirement_SaturationReached_IsZeroAndSaysSo()
    {
        SoilReport soil = new() { Cations = Cations(6, 1, 0, 1) };

        Assert.Equal(["lime.saturated"], Liming.Requirement(soil, Neutralish, LimingMethod.BrazilBaseSaturation(Ratio.FromPercent(70))).Rate.Codes());
        Assert.Equal(["lime.saturated"], Liming.Requirement(soil, Neutralish, LimingMethod.Cochrane(Ratio.Zero)).Rate.Codes());
    }

    // Cap of Guarçoni and Sobreira: no more than the potential acidity of the layer. The dose is 2 × 1 + (2 − 0.3) = 3.7 cmol/dm³.
    [Fact]
    public void Requirement_MoreThanThePotentialAcidity_WarnsOfOverliming()
    {
        SoilReport little = new() { Cations = Cations(0.2, 0.1, 1, 3.6) };
        SoilReport much = new() { Cations = Cations(0.2, 0.1, 1, 3.8) };

        Assert.Contains("lime.overliming", Liming.Requirement(little, Neutralish, LimingMethod.BrazilAluminium()).Rate.Codes());
        Assert.DoesNotContain("lime.overliming", Liming.Requirement(much, Neutralish, LimingMethod.BrazilAluminium()).Rate.Codes());
    }

    // The rule rounds the capacity up: 6.2 stands for 7, so (130 × 7 − 500) × 4 / 43 pounds on 1000 square feet.
    [Fact]
    public void Requirement_GardenCalcium_TakesTheNextWholeCapacity()
    {
        SoilReport soil = new()
        {
            CationExchangeCapacity = ExchangeableCharge.FromMilliequivalentsPer100Grams(6.2),
            ExtractableCalcium = MassFraction.FromPartsPerMillion(500),
        };

        AreaDensity rate = Liming.Requirement(soil, Neutralish, LimingMethod.GardenCalcium).Rate.Value;

        Assert.Equal(410 * 4 / 43.0, (rate * Area.FromSquareFeet(1000)).Pounds, 1e-9);
    }

    [Fact]
    public void Requirement_GardenCalcium_SaysThatNobodyReviewedIt()
    {
        Assert.Contains("lime.unreviewed", Liming.Requirement(Full(5, 3, SoilTexture.Loam), Neutralish, LimingMethod.GardenCalcium).Rate.Codes());
        Assert.Equal("CationExchangeCapacity", Assert.Throws<ArgumentOutOfRangeException>(() => Liming.Requirement(
            new SoilReport { CationExchangeCapacity = ExchangeableCharge.FromMilliequivalentsPer100Grams(31), ExtractableCalcium = MassFraction.Zero },
            Neutralish,
            LimingMethod.GardenCalcium)).ParamName);
    }

    [Fact]
    public void ReserveAcidity_AboveTheBuffersPh_RefusesOrIsNothing()
    {
        Assert.Equal("bufferPh", Assert.Throws<ArgumentOutOfRangeException>(() => ReserveAcidity.AdamsEvans(new Ph(8.1))).ParamName);
        Assert.Equal("bufferPh", Assert.Throws<ArgumentOutOfRangeException>(() => ReserveAcidity.Mehlich(new Ph(6.7))).ParamName);
        Assert.Equal(0, ReserveAcidity.Spectrum(new Ph(7.0)).Value.MilliequivalentsPer100Grams);
        Assert.Equal(12, ReserveAcidity.Spectrum(new Ph(6.0)).Value.MilliequivalentsPer100Grams);
    }

    [Fact]
    public void Compare_AFullReport_GivesTheSpreadTheReasonsAndTheCautions()
    {
        LimeComparison comparison = Liming.Compare(Full(5.5, 6, SoilTexture.SiltLoam), Neutralish, Spade);
        LimeRequirement[] forDepth = [.. comparison.Answers.Where(answer => answer.Depth is not null)];

        Assert.Equal(forDepth.Min(answer => answer.Grams()), comparison.Spread!.Low.GramsPerSquareMeter, 1e-9);
        Assert.Equal(forDepth.Max(answer => answer.Grams()), comparison.Spread!.High.GramsPerSquareMeter, 1e-9);
        Assert.Equal(6, comparison.WhyTheyDiffer.Count);
        Assert.Contains(comparison.Cautions, caution => caution.Code == "lime.laboratory");
        Assert.All(comparison.Answers.Where(answer => answer.Depth is null), answer => Assert.Contains("lime.depth-unknown", answer.Rate.Codes()));
        Assert.Contains(comparison.Refusals, refusal => refusal.Method == LimingMethod.OregonSikora.Method && refusal.Reason.Contains("target was 6.5 pH", StringComparison.Ordinal));
        Assert.Contains("why", ((IDisplayable)comparison).ToDisplay(TextStyle.Default).Rows.Select(row => row.Label));
        Assert.EndsWith("methods not used", comparison.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void Compare_AnEmptyReport_HasNoSpreadAndAReasonEach()
    {
        LimeComparison comparison = Liming.Compare(new SoilReport(), Neutralish, Spade);

        Assert.Null(comparison.Spread);
        Assert.Empty(comparison.WhyTheyDiffer);
        Assert.Equal(LimingMethod.All.Count, comparison.Refusals.Count);
        Assert.StartsWith("no method answers", comparison.ToString(), StringComparison.Ordinal);
        Assert.Equal("depth", Assert.Throws<ArgumentOutOfRangeException>(() => Liming.Compare(new SoilReport(), Neutralish, Length.Zero)).ParamName);
        Assert.Equal("soil", Assert.Throws<ArgumentNullException>(() => Liming.Compare(null!, Neutralish, Spade)).ParamName);
        Assert.Equal("answers", Assert.Throws<ArgumentException>(
            () => new LimeComparison(Neutralish, Spade, LimingMaterial.Dolomite, [Given(1)], [])).ParamName);
    }

    [Fact]
    public void OnSurface_AShallowDepth_ScalesAndWarns()
    {
        LimeRequirement need = Given(600, depth: Length.FromInches(6)).OnSurface(Length.FromInches(2));

        Assert.Equal(200, need.Grams(), 1e-9);
        Assert.Contains("lime.surface", need.Rate.Codes());
    }

    [Theory]
    [InlineData(0)]
    [InlineData(-5)]
    public void SoilReport_ImpossibleBulkDensity_Refuses(double kilograms) => Assert.Equal("BulkDensity", Assert.Throws<ArgumentOutOfRangeException>(
        () => new SoilReport { BulkDensity = Density.FromKilogramsPerCubicMeter(kilograms) }).ParamName);

    [Theory]
    [InlineData("""{"kind":"cochrane-aluminium"}""", "needs \"tolerated\"")]
    [InlineData("""{"kind":"oregon-sikora","factor":1}""", "takes no \"factor\"")]
    [InlineData("""{"kind":"brazil-base-saturation","targetSaturation":{"value":120,"unit":"%"}}""", "targetSaturation")]
    public void Json_MethodWithTheWrongInputs_SaysSo(string json, string named) => Assert.Contains(
        named,
        Assert.Throws<JsonException>(() => JsonSerializer.Deserialize(json, HortiCalcJsonContext.Default.LimingMethod)).Message,
        StringComparison.Ordinal);

    [Fact]
    public void Json_ComparisonReportAndMethods_ComeBackEqual()
    {
        SoilReport soil = Full(5.5, 6, SoilTexture.SiltLoam);
        LimeComparison comparison = Liming.Compare(soil, Neutralish, Spade, LimingMaterial.Dolomite);
        LimingMethod method = LimingMethod.BrazilAluminium(1.5, Ratio.FromPercent(15), VolumetricCharge.FromCentimolesPerLitre(2));

        Assert.Equal(comparison, JsonSerializer.Deserialize(
            JsonSerializer.Serialize(comparison, HortiCalcJsonContext.Default.LimeComparison), HortiCalcJsonContext.Default.LimeComparison));
        Assert.Equal(soil, JsonSerializer.Deserialize(JsonSerializer.Serialize(soil, HortiCalcJsonContext.Default.SoilReport), HortiCalcJsonContext.Default.SoilReport));
        Assert.Equal(method, JsonSerializer.Deserialize(JsonSerializer.Serialize(method, HortiCalcJsonContext.Default.LimingMethod), HortiCalcJsonContext.Default.LimingMethod));
    }
}
