using System.Globalization;
using System.Text.Json;
using HortiCalc.Display;
using HortiCalc.Json;
using HortiCalc.Soil;
using HortiCalc.Units;
using UnitsNet;
using static HortiCalc.Tests.Soil.SoilSamples;

namespace HortiCalc.Tests.Soil;

/// <summary>How lime requirements read, and how they are stored.</summary>
public class LimingDisplayTests
{
    private static readonly LimeRequirement Need =
        Liming.Requirement(ByAcidity(5.5, 5.2), new Ph(7), LimingMethod.PennStateAgronomic).As(LimingMaterial.CalciumHydroxide);

    [Fact]
    public void ToString_Requirement_IsOneHonestLine() => Assert.Equal(
        "calcium hydroxide for 17.8 cm of soil: 431 g/m²; Penn State formula by exchangeable acidity, corrected for the calcium carbonate equivalent "
        + "[Penn State College of Agricultural Sciences, The Agronomy Guide, Part 1, Section 2: Limestone recommendation (no date)]; 5 cautions",
        Need.ToString());

    [Fact]
    public void ToString_UsCustomaryAndCommaCulture_FollowsTheCaller()
    {
        Assert.StartsWith("calcium hydroxide for 7 in of soil: 8.84 lb/100 sq ft;", Need.ToString("U", null), StringComparison.Ordinal);
        Assert.StartsWith("calcium hydroxide for 7 in of soil: 8,84 lb/100 sq ft;", Need.ToString("U", CultureInfo.GetCultureInfo("de-DE")), StringComparison.Ordinal);
        Assert.Throws<FormatException>(() => Need.ToString("X", null));
    }

    [Fact]
    public void ToString_ScheduleAndRules_ReadAsSentences()
    {
        LimeSchedule schedule = Given(1200).Split(LimeSplit.PennStateGarden);

        Assert.StartsWith(
            "400 g/m², then 400 g/m², then 400 g/m² of ground limestone, 6 months apart; split for a home garden, Penn State [",
            schedule.ToString(),
            StringComparison.Ordinal);
        Assert.StartsWith("no application of ground limestone;", Given(0).Split(LimeSplit.PennStateGarden).ToString(), StringComparison.Ordinal);
        Assert.Equal("ground limestone (100 % calcium carbonate equivalent)", LimingMaterial.GroundLimestone.ToString());
        Assert.StartsWith("UK garden table by texture [Routledge, Principles of Horticulture", LimingMethod.UkGardenTexture.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void ToDisplay_Requirement_ShowsMethodRulesCautionsAndSource()
    {
        DisplayBlock block = ((IDisplayable)Need).ToDisplay(TextStyle.Default);

        Assert.Equal("431 g/m² of calcium hydroxide for 17.8 cm of soil", block.Title);
        Assert.Contains(block.Rows, row => row is { Label: "then", Text: "corrected for the calcium carbonate equivalent" });
        Assert.Contains(block.Rows, row => row.Label == "danger" && row.Text.Contains("goggles", StringComparison.Ordinal));
        Assert.Equal("source", block.Rows[^1].Label);
        Assert.Equal("split", ((IDisplayable)Need.Split(LimeSplit.PennStateLawn)).ToDisplay(TextStyle.Default).Rows[0].Label);
    }

    [Fact]
    public void Json_SoilReport_ComesBackEqualAndHoldsOnlyWhatIsKnown()
    {
        SoilReport soil = ByTexture(5.4, SoilTexture.SandyLoam);
        string json = JsonSerializer.Serialize(soil, HortiCalcJsonContext.Default.SoilReport);

        Assert.Equal("""{"phInWater":{"value":5.4,"unit":"pH"},"texture":"SandyLoam"}""", json);
        Assert.Equal(soil, JsonSerializer.Deserialize(json, HortiCalcJsonContext.Default.SoilReport));
        SoilReport full = Full(5.4, 3, SoilTexture.Clay);
        Assert.Equal(
            full,
            JsonSerializer.Deserialize(JsonSerializer.Serialize(full, HortiCalcJsonContext.Default.SoilReport), HortiCalcJsonContext.Default.SoilReport));
        Assert.Throws<JsonException>(() => JsonSerializer.Deserialize("""{"texture":"Mud"}""", HortiCalcJsonContext.Default.SoilReport));
        Assert.Throws<JsonException>(() => JsonSerializer.Deserialize("""{"phInWater":{"value":20,"unit":"pH"}}""", HortiCalcJsonContext.Default.SoilReport));
    }

    [Fact]
    public void Json_LimingMethods_ComeBackEqual()
    {
        LimingMethod credited = LimingMethod.NorthCarolina(
            new ResidualLime(AreaDensity.FromGramsPerSquareMeter(224), 5, NorthCarolinaSoilClass.Organic));

        Assert.All(
            [.. LimingMethod.All, credited],
            method => Assert.Equal(
                method,
                JsonSerializer.Deserialize(JsonSerializer.Serialize(method, HortiCalcJsonContext.Default.LimingMethod), HortiCalcJsonContext.Default.LimingMethod)));
        Assert.Equal("""{"kind":"uk-garden-texture"}""", JsonSerializer.Serialize(LimingMethod.UkGardenTexture, HortiCalcJsonContext.Default.LimingMethod));
        Assert.NotEqual(credited, LimingMethod.NorthCarolina());
    }

    [Theory]
    [InlineData("""{"kind":"guess"}""", "guess")]
    [InlineData("""{"kind":"uk-garden-texture","residual":{"rate":{"value":1,"unit":"g/m²"},"months":1,"soilClass":"Mineral"}}""", "residual")]
    [InlineData("""{"colour":"red"}""", "colour")]
    [InlineData("""{"kind":7}""", "kind")]
    [InlineData("""{}""", "unknown kind")]
    [InlineData("\"uk-garden-texture\"", "String")]
    public void Json_MalformedLimingMethod_SaysWhatIsWrong(string json, string named) => Assert.Contains(
        named,
        Assert.Throws<JsonException>(() => JsonSerializer.Deserialize(json, HortiCalcJsonContext.Default.LimingMethod)).Message,
        StringComparison.Ordinal);

    [Fact]
    public void Json_MaterialsRulesAndSchedules_ComeBackEqual()
    {
        LimingMaterial product = new("product", Ratio.FromPercent(88.5), LimeForm.Hydroxide, MassFraction.FromPercent(3));
        LimeSchedule schedule = Need.Split(LimeSplit.NorthCarolinaLawn);
        string json = JsonSerializer.Serialize(schedule, HortiCalcJsonContext.Default.LimeSchedule);

        Assert.Equal(schedule, JsonSerializer.Deserialize(json, HortiCalcJsonContext.Default.LimeSchedule));
        Assert.Equal(schedule.Rates, JsonSerializer.Deserialize(json, HortiCalcJsonContext.Default.LimeSchedule)!.Rates);
        Assert.All(
            [product, LimingMaterial.Dolomite],
            material => Assert.Equal(
                material,
                JsonSerializer.Deserialize(JsonSerializer.Serialize(material, HortiCalcJsonContext.Default.LimingMaterial), HortiCalcJsonContext.Default.LimingMaterial)));
        Assert.All(
            Splits,
            split => Assert.Equal(
                split,
                JsonSerializer.Deserialize(JsonSerializer.Serialize(split, HortiCalcJsonContext.Default.LimeSplit), HortiCalcJsonContext.Default.LimeSplit)));
    }

    [Fact]
    public void Equality_SameQuantitiesInOtherUnits_IsByValue()
    {
        LimeRequirement inches = new(Need.Rate, LimingMaterial.GroundLimestone, Length.FromInches(10));
        LimeRequirement centimetres = new(Need.Rate, LimingMaterial.GroundLimestone, Length.FromCentimeters(25.4));

        Assert.Equal(inches, centimetres);
        Assert.Equal(new LimingMaterial("a", Ratio.FromPercent(80)), new LimingMaterial("a", Ratio.FromDecimalFractions(0.8)));
        Assert.Equal(new SoilReport { PhInWater = new Ph(5) }, new SoilReport { PhInWater = new Ph(5) });
    }

    [Fact]
    public void Culture_CommaDecimal_ChangesNoMessageAndNoResult()
    {
        CultureInfo before = CultureInfo.CurrentCulture;
        try
        {
            CultureInfo.CurrentCulture = CultureInfo.GetCultureInfo("de-DE");

            Assert.Contains("431 g/m²", Need.ToString(), StringComparison.Ordinal);
            Assert.Contains("17.8 cm", Need.ToString(), StringComparison.Ordinal);
            LimingMethod.UkGardenTexture.CanUse(ByTexture(6.25, SoilTexture.Loam), Neutralish, out string reason);
            Assert.Contains("PhInWater was 6.25 pH", reason, StringComparison.Ordinal);
            Assert.Equal("product (88.5 % calcium carbonate equivalent)", Product(88.5).ToString());
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }
    }
}
