using System.Globalization;
using System.Text.Json;
using HortiCalc.Evidence;
using HortiCalc.Json;
using HortiCalc.Soil;
using HortiCalc.Units;
using UnitsNet;
using static HortiCalc.Tests.Soil.SoilSamples;

namespace HortiCalc.Tests.Soil;

/// <summary>What acidifying refuses, warns of, says and stores.</summary>
public class AcidifyingEdges
{
    private static readonly AcidRequirement Sulfur = Acidifying.Requirement(ByTexture(7.2, SoilTexture.Sand), new Ph(6.5), AcidifyingMethod.Rhs);

    [Theory]
    [InlineData(7.6)]
    [InlineData(6.9)]
    public void Requirement_OutsideTheRhsChange_RefusesWithTheDomain(double ph)
    {
        ArgumentOutOfRangeException refused = Assert.Throws<ArgumentOutOfRangeException>(
            () => Acidifying.Requirement(ByTexture(ph, SoilTexture.Sand), new Ph(6.0), AcidifyingMethod.Rhs));

        Assert.Equal("PhInWater", refused.ParamName);
        Assert.Contains($"PhInWater was {ph.ToString(CultureInfo.InvariantCulture)} pH; allowed: from 7 to 7.5 pH", refused.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Requirement_ToAnotherTarget_Refuses()
    {
        ArgumentOutOfRangeException refused = Assert.Throws<ArgumentOutOfRangeException>(
            () => Acidifying.Requirement(ByTexture(6, SoilTexture.Sand), new Ph(5), AcidifyingMethod.Michigan));

        Assert.Equal("target", refused.ParamName);
        Assert.Contains("target was 5 pH; allowed: from 4.5 to 4.5 pH", refused.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Requirement_TextureWithoutARate_RefusesAndListsThoseItHas()
    {
        ArgumentOutOfRangeException refused = Assert.Throws<ArgumentOutOfRangeException>(
            () => Acidifying.Requirement(ByTexture(7.2, SoilTexture.Loam), new Ph(6.5), AcidifyingMethod.Rhs));

        Assert.Equal("Texture", refused.ParamName);
        Assert.Contains("Texture was Loam; allowed: Sand, LoamySand, SandyLoam, SandyClay, SiltyClay, Clay", refused.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Requirement_ReportWithoutAMember_RefusesByItsName()
    {
        ArgumentException refused = Assert.Throws<ArgumentException>(
            () => Acidifying.Requirement(new SoilReport { PhInWater = new Ph(7) }, new Ph(6.5), AcidifyingMethod.Rhs));

        Assert.StartsWith("soil has no Texture, which 'RHS rate of sulfur for sandy soil and clay' needs.", refused.Message, StringComparison.Ordinal);
        Assert.Equal(["Texture"], AcidifyingMethod.Rhs.Missing(new SoilReport { PhInWater = new Ph(7) }));
        Assert.Empty(AcidifyingMethod.AnySoil.Missing(new SoilReport { PhInWater = new Ph(7) }));
    }

    [Fact]
    public void Requirement_Nothing_Refuses()
    {
        Assert.Equal("soil", Assert.Throws<ArgumentNullException>(() => Acidifying.Requirement(null!, new Ph(6), AcidifyingMethod.Rhs)).ParamName);
        Assert.Equal("method", Assert.Throws<ArgumentNullException>(() => Acidifying.Requirement(new SoilReport(), new Ph(6), null!)).ParamName);
        Assert.Equal("key", Assert.Throws<ArgumentException>(() => AcidifyingMethod.FromKey("none")).ParamName);
    }

    [Fact]
    public void Cautions_Sulfur_NameIgnitionAndIrritationAndTheFizzTest()
    {
        string[] codes = [.. Sulfur.Rate.Codes()];

        Assert.Contains("acid.sulfur-ignition", codes);
        Assert.Contains("acid.sulfur-irritates", codes);
        Assert.Contains("acid.fizz-test", codes);
        Assert.Contains("acid.over-acidifying", codes);
        Assert.Contains("acid.retest", codes);
        Assert.Contains("acid.laboratory", codes);
        Assert.DoesNotContain("acid.free-carbonate", codes);
        Assert.Contains(Sulfur.Rate.Cautions, caution => caution.Level == CautionLevel.Danger && caution.Sentence.Contains("H228", StringComparison.Ordinal));
    }

    [Fact]
    public void Cautions_ChangeOfMaterial_ChangesThem()
    {
        string[] iron = [.. Sulfur.As(AcidifyingMaterial.IronSulfate(7)).Rate.Codes()];
        string[] aluminium = [.. Sulfur.As(AcidifyingMaterial.AluminiumSulfate(18)).Rate.Codes()];

        Assert.Contains("acid.iron-stains", iron);
        Assert.DoesNotContain("acid.sulfur-ignition", iron);
        Assert.Contains("acid.aluminium", aluminium);
        Assert.Contains("acid.nitrogen", Sulfur.As(AcidifyingMaterial.AmmoniumSulfate).Rate.Codes());
    }

    [Fact]
    public void Requirement_SoilWithFreeCarbonate_SaysThatItMayNotBeWorthIt()
    {
        SoilReport soil = ByTexture(7.4, SoilTexture.Clay) with { FreeCarbonate = MassFraction.FromPercent(2) };

        Assert.Contains("acid.free-carbonate", Acidifying.Requirement(soil, new Ph(6.5), AcidifyingMethod.Rhs).Rate.Codes());
        Assert.Equal("pH 7.4, clay, free carbonate 2 % by mass", soil.ToString());
        Assert.Equal(soil, JsonSerializer.Deserialize(JsonSerializer.Serialize(soil, HortiCalcJsonContext.Default.SoilReport), HortiCalcJsonContext.Default.SoilReport));
        Assert.Equal("FreeCarbonate", Assert.Throws<ArgumentOutOfRangeException>(() => new SoilReport { FreeCarbonate = MassFraction.FromPercent(101) }).ParamName);
    }

    [Fact]
    public void FreeCarbonate_None_IsZeroAndImpossibleLayersRefuse()
    {
        Density bulk = Density.FromKilogramsPerCubicMeter(1300);
        AcidRequirement none = Acidifying.FreeCarbonate(MassFraction.Zero, Length.FromCentimeters(20), bulk);

        Assert.Equal(0, none.Rate.Value.GramsPerSquareMeter);
        Assert.Equal(["acid.not-needed"], none.Rate.Codes());
        Assert.Equal("depth", Assert.Throws<ArgumentOutOfRangeException>(() => Acidifying.FreeCarbonate(MassFraction.FromPercent(1), Length.Zero, bulk)).ParamName);
        Assert.Equal("bulkDensity", Assert.Throws<ArgumentOutOfRangeException>(
            () => Acidifying.FreeCarbonate(MassFraction.FromPercent(1), Length.FromMeters(0.2), Density.Zero)).ParamName);
        ArgumentOutOfRangeException share = Assert.Throws<ArgumentOutOfRangeException>(
            () => Acidifying.CarbonatePerArea(MassFraction.FromPercent(-1), Length.FromMeters(0.2), bulk));
        Assert.Contains("carbonate was -1 %; allowed: from 0 to 100 %", share.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void FreeCarbonate_OnePercentUnderALawn_TakesMostOfALifetime()
    {
        AcidRequirement need = Acidifying.FreeCarbonate(MassFraction.FromPercent(1), Length.FromCentimeters(20), Density.FromKilogramsPerCubicMeter(1300));

        // 2.6 kg/m² of carbonate by 3.1214, at 10 lb/1000 sq ft a year, which is 48.8 g/m².
        Assert.Equal(832.9, need.Rate.Value.GramsPerSquareMeter, 0.1);
        Assert.Equal(35, need.Split(AcidLimit.PurdueTurf).Count);
        Assert.Equal(18, need.Split(AcidLimit.PurdueTurf).Years);
    }

    [Theory]
    [InlineData(-1)]
    [InlineData(8)]
    public void IronSulfate_ImpossibleWaters_Refuses(int waters)
    {
        ArgumentOutOfRangeException refused = Assert.Throws<ArgumentOutOfRangeException>(() => AcidifyingMaterial.IronSulfate(waters));

        Assert.Equal("waters", refused.ParamName);
        Assert.Contains("from 0 to 7", refused.Message, StringComparison.Ordinal);
        Assert.Throws<ArgumentOutOfRangeException>(() => AcidifyingMaterial.AluminiumSulfate(19));
    }

    [Theory]
    [InlineData(0)]
    [InlineData(-3)]
    [InlineData(314)]
    public void AcidifyingMaterial_ImpossibleStrength_Refuses(double percent) => Assert.Equal(
        "carbonateNeutralised",
        Assert.Throws<ArgumentOutOfRangeException>(() => new AcidifyingMaterial("a", Ratio.FromPercent(percent), AcidForm.Sulfur)).ParamName);

    [Fact]
    public void ForDepthAndOver_Impossible_Refuse()
    {
        AcidRequirement noDepth = Acidifying.Requirement(ByTexture(6, SoilTexture.Sand), new Ph(4.5), AcidifyingMethod.Michigan);

        Assert.Contains("does not say which depth", Assert.Throws<InvalidOperationException>(() => noDepth.ForDepth(Length.FromMeters(0.1))).Message, StringComparison.Ordinal);
        Assert.Equal("depth", Assert.Throws<ArgumentOutOfRangeException>(() => Sulfur.ForDepth(Length.Zero)).ParamName);
        Assert.Equal("area", Assert.Throws<ArgumentOutOfRangeException>(() => Sulfur.Over(Area.FromSquareMeters(-1))).ParamName);
        Assert.Throws<InvalidOperationException>(() => Sulfur.As(AcidifyingMaterial.IronSulfate(7)).As(AcidEquivalent.Published[0]));
    }

    [Fact]
    public void AcidLimit_Impossible_Refuses()
    {
        Method rule = new("own", "our own rule", Source.CommonPractice("own", "our own rule"), new Domain(""));
        AreaDensity ten = AreaDensity.FromGramsPerSquareMeter(10);

        Assert.Equal("maximum", Assert.Throws<ArgumentOutOfRangeException>(() => new AcidLimit(rule, AreaDensity.Zero)).ParamName);
        Assert.Equal("maximumPerYear", Assert.Throws<ArgumentOutOfRangeException>(() => new AcidLimit(rule, ten, AreaDensity.FromGramsPerSquareMeter(9))).ParamName);
        Assert.Equal("fewestMonths", Assert.Throws<ArgumentOutOfRangeException>(() => new AcidLimit(rule, ten, null, 0)).ParamName);
    }

    [Fact]
    public void FertilizerAcidity_WithoutNitrogenOrWithNegativeAmount_Refuses()
    {
        Assert.Throws<InvalidOperationException>(() => FertilizerAcidities.Named("norganics-fertilizer-alkalinity", "Urea").By(AcidityBasis.Nitrogen));
        Assert.Equal("amount", Assert.Throws<ArgumentOutOfRangeException>(
            () => FertilizerAcidities.All[0].LimeFor(Mass.FromKilograms(-1))).ParamName);
        Assert.Equal("material", Assert.Throws<ArgumentException>(() => FertilizerAcidities.Named("alabama-anr-174", "gravel")).ParamName);
        Assert.Equal(4, FertilizerAcidities.Compare("UREA").Count);
        Assert.NotNull(FertilizerAcidities.Named("norganics-fertilizer-alkalinity", "sulfur").Doubt);
    }

    [Fact]
    public void Compare_SandyLoamFromSixToFive_ShowsTheSpreadAndWhyOthersAreSilent()
    {
        AcidComparison all = Acidifying.Compare(ByTexture(6, SoilTexture.SandyLoam), new Ph(5));

        Assert.Equal(["acid-blueberry", "acid-garden-soil", "acid-any-soil"], all.Requirements.Select(need => need.Rate.Method.Key));
        Assert.Equal(48.8, all.Spread!.Low.GramsPerSquareMeter, 0.05);
        Assert.Equal(97.6, all.Spread.High.GramsPerSquareMeter, 0.05);
        Assert.Equal("pH 6, sandy loam to pH 5: 3 of 7 methods answer, 48.8 g/m² to 97.6 g/m² of elemental sulfur", all.ToString());
        Assert.All(all.Refusals, refusal => Assert.Contains("allowed:", refusal.Reason, StringComparison.Ordinal));
    }

    [Fact]
    public void Compare_WithADepth_BringsThoseThatNameOneToIt()
    {
        AcidComparison all = Acidifying.Compare(ByTexture(7.5, SoilTexture.Clay), new Ph(6.5), Length.FromCentimeters(30));

        Assert.Equal([540, 300], all.Requirements.Select(need => Math.Round(need.Rate.Value.GramsPerSquareMeter, 6, MidpointRounding.AwayFromZero)));
        Assert.All(all.Requirements, need => Assert.Equal(0.3, need.Depth!.Value.Meters, 1e-12));
    }

    [Fact]
    public void ToString_Requirement_IsOneHonestLineInTheCallersCulture()
    {
        Assert.StartsWith("elemental sulfur for 15 cm of soil: 135 g/m²; RHS rate of sulfur for sandy soil and clay,", Sulfur.ToString(), StringComparison.Ordinal);
        Assert.StartsWith("elemental sulfur for 5,91 in of soil: 2,77 lb/100 sq ft", Sulfur.ToString("U", CultureInfo.GetCultureInfo("de-DE")), StringComparison.Ordinal);
        Assert.StartsWith("2 times 67.5 g/m² of elemental sulfur, 3 months apart;", Sulfur.Split(AcidLimit.GardenBed).ToString(), StringComparison.Ordinal);
        Assert.Throws<FormatException>(() => Sulfur.ToString("X", null));
    }

    [Fact]
    public void Json_EveryType_ComesBackEqual()
    {
        Same(Sulfur.As(AcidifyingMaterial.IronSulfate(7)));
        Same(Sulfur.Split(AcidLimit.PurdueTurf));
        Same(AcidLimit.BlueberrySurface);
        Same(AcidEquivalent.Published[2]);
        Same(AcidReactionTime.Published[0]);
        Same(FertilizerAcidities.All[3]);
        Same(MediumRates.All[6]);
        Same(Acidifying.Compare(ByTexture(6, SoilTexture.SandyLoam), new Ph(5)));
        Assert.All(AcidifyingMethod.All, Same);
        Assert.Throws<JsonException>(() => JsonSerializer.Deserialize("\"acid-none\"", HortiCalcJsonContext.Default.AcidifyingMethod));
    }

    private static void Same<T>(T value)
    {
        string json = JsonSerializer.Serialize(value, HortiCalcJson.Options);
        Assert.Equal(value, JsonSerializer.Deserialize<T>(json, HortiCalcJson.Options));
    }
}
