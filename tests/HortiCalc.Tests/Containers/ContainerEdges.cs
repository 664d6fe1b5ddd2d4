using System.Globalization;
using System.Text.Json;
using HortiCalc.Containers;
using HortiCalc.Display;
using HortiCalc.Evidence;
using HortiCalc.Json;
using UnitsNet;

namespace HortiCalc.Tests.Containers;

/// <summary>What containers, medium and mixes refuse, and how they show and store themselves.</summary>
public class ContainerEdges
{
    private static readonly Source Own = Source.CommonPractice("own", "a recipe of one's own");

    private static Length Cm(double centimetres) => Length.FromCentimeters(centimetres);

    private static Volume L(double litres) => Volume.FromLiters(litres);

    [Fact]
    public void Container_DimensionsOutOfRange_AreRefusedByName()
    {
        Refused("topDiameter", "topDiameter was 0 m; allowed: greater than 0 m", () => Container.RoundTapered(Cm(0), Cm(1), Cm(1)));
        Refused("baseDiameter", "baseDiameter was -0.01 m; allowed: from 0 to 1000000 m", () => Container.RoundTapered(Cm(1), Cm(-1), Cm(1)));
        Refused("height", "height was 0 m", () => Container.RoundTapered(Cm(1), Cm(1), Cm(0)));
        Refused("diameter", "diameter was -0.01 m", () => Container.Round(Cm(-1), Cm(1)));
        Refused("topSide", "topSide was 0 m", () => Container.SquareTapered(Cm(0), Cm(1), Cm(1)));
        Refused("side", "side was 0 m", () => Container.Square(Cm(0), Cm(1)));
        Refused("length", "length was 0 m", () => Container.Rectangular(Cm(0), Cm(1), Cm(1)));
        Refused("width", "width was 0 m", () => Container.Rectangular(Cm(1), Cm(0), Cm(1)));
        Refused("topWidth", "topWidth was 0 m", () => Container.RectangularTapered(Cm(1), Cm(0), Cm(1), Cm(1), Cm(1)));
        Refused("baseWidth", "baseWidth was -0.01 m", () => Container.RectangularTapered(Cm(1), Cm(1), Cm(1), Cm(-1), Cm(1)));
    }

    [Theory]
    [InlineData(double.NaN)]
    [InlineData(double.NegativeInfinity)]
    public void Round_NotANumber_CannotBeMade(double centimetres) =>
        Assert.ThrowsAny<ArgumentException>(() => Container.Round(Cm(centimetres), Cm(10)));

    [Fact]
    public void VolumeTo_OutsideTheContainer_IsRefusedWithItsHeight()
    {
        Container pot = Container.Round(Cm(10), Cm(20));
        Refused("fillHeight", "fillHeight was 0.21 m; allowed: from 0 to 0.2 m", () => pot.VolumeTo(Cm(21)));
        Refused("fillHeight", "fillHeight was -0.01 m", () => pot.VolumeTo(Cm(-1)));
        Refused("headspace", "headspace was 0.21 m; allowed: from 0 to 0.2 m", () => pot.FillVolume(Cm(21)));
        Refused("volume", "volume was 2 L; allowed: from 0 to 1.5", () => pot.HeightFilledBy(L(2)));
        Refused("volume", "volume was -1 L", () => pot.HeightFilledBy(L(-1)));
    }

    [Fact]
    public void HeightFilledBy_NothingAndTheBrim_AreTheEnds()
    {
        Container pot = Container.RoundTapered(Cm(17), Cm(12), Cm(13));
        Assert.Equal(0, pot.HeightFilledBy(Volume.Zero).Meters);
        Assert.Equal(0.13, pot.HeightFilledBy(pot.BrimVolume).Meters, 1e-12);
        Assert.Equal(0.13, pot.HeightFilledBy(Volume.FromCubicInches(pot.BrimVolume.CubicInches)).Meters, 1e-12);
        Assert.Equal(0, pot.VolumeTo(Length.Zero).Liters);
        Assert.Equal(0, pot.FillVolume(Cm(13)).Liters, 1e-12);
    }

    // 39 pi, which a printed solution gets wrong by leaving out the middle term.
    [Fact]
    public void BrimVolume_TenFourThree_Is39Pi() =>
        Assert.Equal(39 * Math.PI, Container.RoundTapered(Cm(10), Cm(4), Cm(3)).BrimVolume.CubicCentimeters, 1e-9);

    // A base of other proportions than the brim: 60 by 20 above, 30 by 40 below, 12 high. By integration of the product of
    // the two sides: h/6 (2ab + 2cd + ad + bc) = 12/6 (2400 + 2400 + 2400 + 600) = 15 600 cm³.
    [Fact]
    public void BrimVolume_BaseOfOtherProportions_IsThePrismoid() =>
        Assert.Equal(15_600, Container.RectangularTapered(Cm(60), Cm(20), Cm(30), Cm(40), Cm(12)).BrimVolume.CubicCentimeters, 1e-9);

    [Fact]
    public void PottingMedium_ValuesOutOfRange_AreRefusedByName()
    {
        Container pot = Container.Round(Cm(10), Cm(20));
        Refused("perPot", "perPot was 0 L", () => PottingMedium.ForPots(L(0), 3, Ratio.Zero));
        Refused("pots", "pots was -1; allowed: 0 or more", () => PottingMedium.ForPots(L(1), -1, Ratio.Zero));
        Refused("compactionAllowance", "compactionAllowance was -1 %", () => PottingMedium.ForPots(L(1), 3, Ratio.FromPercent(-1)));
        Refused("headspace", "less than the height of the pot, 0.2 m", () => PottingMedium.ForPots(pot, Cm(20), 3, Ratio.Zero));
        Refused("available", "available was -1 L", () => PottingMedium.PotsFrom(L(-1), L(1), Ratio.Zero));
        Refused("available", "no more than 2147483647 pots", () => PottingMedium.PotsFrom(L(1e300), L(1e-10), Ratio.Zero));
        Assert.Equal("pot", Assert.Throws<ArgumentNullException>(() => PottingMedium.ForPots(null!, Cm(1), 3, Ratio.Zero)).ParamName);
    }

    [Fact]
    public void ForPots_NoPots_IsNoMedium() => Assert.Equal(0, PottingMedium.ForPots(L(2), 0, Ratio.FromPercent(15)).Liters);

    [Fact]
    public void PotsFrom_ThreeTenths_FillThreePotsOfATenth() =>
        Assert.Equal(3, PottingMedium.PotsFrom(L(0.3), L(0.1), Ratio.Zero).Pots);

    [Fact]
    public void PotsFrom_LessThanOnePot_FillsNoneAndLeavesAll()
    {
        PotYield yield = PottingMedium.PotsFrom(L(0.5), L(2), Ratio.Zero);
        Assert.Equal(0, yield.Pots);
        Assert.Equal(0.5, yield.LeftOver.Liters);
    }

    [Fact]
    public void MixRecipe_NotARecipe_IsRefused()
    {
        Refused("components", "components was 0; allowed: 1 or more", () => new MediumRecipe("x", [], Own));
        Refused("parts", "parts was 0 parts", () => new MediumComponent("peat", 0));
        ArgumentException twice = Assert.Throws<ArgumentException>(() => new MediumRecipe("x", [new("peat", 1), new("peat", 2)], Own));
        Assert.Equal("components", twice.ParamName);
        Assert.Contains("'peat' twice", twice.Message, StringComparison.Ordinal);
        ArgumentException unknown = Assert.Throws<ArgumentException>(() => MediumRecipes.JohnInnesPotting.ShareOf("coir"));
        Assert.Equal("material", unknown.ParamName);
        Assert.Contains("loam, peat, sand", unknown.Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(-1, "mixingLoss was -1 %; allowed: 0 % or more, below 100 %")]
    [InlineData(100, "mixingLoss was 100 %; allowed: 0 % or more, below 100 %")]
    public void ForBatch_LossOutOfRange_IsRefused(double percent, string message)
    {
        Refused("mixingLoss", message, () => MediumRecipes.JohnInnesPotting.ForBatch(L(10), Ratio.FromPercent(percent)));
        Refused("mixingLoss", message, () => MediumRecipes.JohnInnesPotting.BatchFrom("loam", L(10), Ratio.FromPercent(percent)));
    }

    [Fact]
    public void ForBatch_JohnInnes_IsSevenThreeTwoAndWarnsOfDust()
    {
        MediumBatch batch = MediumRecipes.JohnInnesPotting.ForBatch(L(120), Ratio.Zero);
        Assert.Equal("120 L of John Innes potting: 70 L loam, 30 L peat, 20 L sand; 1 caution", batch.ToString());
        Assert.Equal("medium.dust", Assert.Single(batch.Cautions).Code);
        Assert.Equal(CautionLevel.Danger, batch.Cautions[0].Level);
    }

    [Fact]
    public void Equals_OneSizeInOtherUnits_IsOneContainer()
    {
        Length inches = Length.FromInches(6);
        Length centimetres = Length.FromCentimeters(15.24);
        Assert.Equal(Container.Round(centimetres, centimetres), Container.Round(inches, inches));
        Assert.Equal(Container.SquareTapered(centimetres, centimetres, centimetres), Container.SquareTapered(inches, inches, inches));
        Assert.Equal(Container.Rectangular(centimetres, centimetres, centimetres), Container.Rectangular(inches, inches, inches));
        Assert.Equal(
            MediumRecipes.JohnInnesSeed.ForBatch(L(10), Ratio.FromPercent(7)), MediumRecipes.JohnInnesSeed.ForBatch(L(10), Ratio.FromDecimalFractions(0.07)));
    }

    [Fact]
    public void MediumPortion_ToString_IsVolumeAndMaterial() => Assert.Equal("70 L loam", new MediumPortion("loam", L(70)).ToString());

    [Fact]
    public void MediumRecipe_WithAComponentMissing_IsRefusedByItsPlace()
    {
        ArgumentException refused = Assert.Throws<ArgumentException>(() => new MediumRecipe("x", [new MediumComponent("peat", 1), null!], MediumRecipes.JohnInnesSeed.Source));
        Assert.Equal("components", refused.ParamName);
        Assert.Contains("no item at 1", refused.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void ToString_EveryShape_IsOneHonestLine()
    {
        Assert.Equal("round, 17 cm across the top, 12 cm at the base, 13 cm high, 2.17 L to the brim", Container.RoundTapered(Cm(17), Cm(12), Cm(13)).ToString());
        Assert.Equal("round, 10 cm across, 10 cm high, 785 mL to the brim", Container.Round(Cm(10), Cm(10)).ToString());
        Assert.Equal("square, 7 cm wide at the top, 5 cm at the base, 8 cm high, 291 mL to the brim", Container.SquareTapered(Cm(7), Cm(5), Cm(8)).ToString());
        Assert.Equal("rectangular, 60 cm by 20 cm, 20 cm high, 24 L to the brim", Container.Rectangular(Cm(60), Cm(20), Cm(20)).ToString());
        Assert.Equal("rectangular, 60 cm by 20 cm at the top, 50 cm by 15 cm at the base, 18 cm high, 17.4 L to the brim", Container.RectangularTapered(Cm(60), Cm(20), Cm(50), Cm(15), Cm(18)).ToString());
        Assert.Equal("29 pots of 2.4 L from 70 L, 400 mL left over", PottingMedium.PotsFrom(L(70), L(2), Ratio.FromPercent(20)).ToString());
        Assert.Equal("29 pots of 2,4 L from 70 L, 400 mL left over", PottingMedium.PotsFrom(L(70), L(2), Ratio.FromPercent(20)).ToString("M", CultureInfo.GetCultureInfo("de-DE")));
        Assert.Equal("John Innes seed: 2 loam, 1 peat, 1 sand, parts by volume [gardening text (UK), How to make John Innes compost (2011)]", MediumRecipes.JohnInnesSeed.ToString());
        Assert.Equal("#1: 2.8 L [nursery (US, Colorado), Nursery container names against true volume (no date)]", PotSizes.Named("us-true-volumes", "#1").ToString());
        Assert.Throws<FormatException>(() => MediumRecipes.JohnInnesSeed.ToString("X", null));
    }

    [Fact]
    public void Display_EveryResult_IsATitleAndRows()
    {
        static string Plain(IDisplayable shown) => DisplayText.Plain(shown.ToDisplay(TextStyle.Default));

        Assert.Equal("round, 10 cm across, 10 cm high\n  holds to the brim  785 mL", Plain(Container.Round(Cm(10), Cm(10))));
        Assert.Equal(
            "29 pots\n  loose medium  70 L\n  for one pot   2.4 L\n  left over     400 mL", Plain(PottingMedium.PotsFrom(L(70), L(2), Ratio.FromPercent(20))));
        Assert.StartsWith(
            "120 L of John Innes potting\n  loam            77.8 L\n  peat            33.3 L\n  sand            22.2 L\n  lost in mixing  10 %\n  danger          Potting medium can carry Legionella",
            Plain(MediumRecipes.JohnInnesPotting.ForBatch(L(120), Ratio.FromPercent(10))),
            StringComparison.Ordinal);
        Assert.StartsWith("John Innes seed\n  loam    2 parts\n  peat    1 part\n", Plain(MediumRecipes.JohnInnesSeed), StringComparison.Ordinal);
        Assert.Contains("\n  shape   round, 17 cm across the top", Plain(PotSizes.Named("uk-nursery-pots", "2 L")), StringComparison.Ordinal);
    }

    [Fact]
    public void Named_Unknown_IsRefusedWithWhatThereIs()
    {
        ArgumentException recipe = Assert.Throws<ArgumentException>(() => MediumRecipes.Named("moon dust"));
        Assert.Equal("name", recipe.ParamName);
        Assert.Contains("John Innes seed", recipe.Message, StringComparison.Ordinal);
        ArgumentException source = Assert.Throws<ArgumentException>(() => PotSizes.Named("nowhere", "#1"));
        Assert.Equal("sourceKey", source.ParamName);
        ArgumentException size = Assert.Throws<ArgumentException>(() => PotSizes.Named("us-true-volumes", "#4"));
        Assert.Equal("name", size.ParamName);
        Assert.Contains("#25", size.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Published_EveryName_IsThereOnce()
    {
        Assert.Equal(MediumRecipes.Published.Count, MediumRecipes.Published.Select(recipe => recipe.Name).Distinct().Count());
        Assert.Equal(PotSizes.Published.Count, PotSizes.Published.Select(size => (size.Source.Key, size.Name)).Distinct().Count());
        Assert.All(PotSizes.Published, size => Assert.Equal(size.Volume, size.ToEstimate().Value));
    }

    [Fact]
    public void Json_EveryInputAndResult_RoundTrips()
    {
        HortiCalcJsonContext json = HortiCalcJsonContext.Default;
        (string Kind, Container Container)[] containers =
        [
            ("round", Container.RoundTapered(Length.FromInches(6), Cm(12), Cm(13))),
            ("square", Container.SquareTapered(Cm(7), Cm(5), Cm(8))),
            ("rectangular", Container.RectangularTapered(Cm(60), Cm(20), Cm(50), Cm(15), Cm(18))),
        ];
        foreach ((string kind, Container container) in containers)
        {
            string text = JsonSerializer.Serialize(container, json.Container);
            Assert.StartsWith($"{{\"kind\":\"{kind}\",", text, StringComparison.Ordinal);
            Assert.Equal(container, JsonSerializer.Deserialize(text, json.Container));
        }

        PotYield yield = PottingMedium.PotsFrom(L(70), L(2), Ratio.FromPercent(20));
        MediumBatch batch = MediumRecipes.JohnInnesPotting.ForBatch(L(120), Ratio.FromPercent(10));
        PotSize size = PotSizes.Named("uk-nursery-pots", "2 L");
        Assert.Equal(yield, JsonSerializer.Deserialize(JsonSerializer.Serialize(yield, json.PotYield), json.PotYield));
        Assert.Equal(batch, JsonSerializer.Deserialize(JsonSerializer.Serialize(batch, json.MediumBatch), json.MediumBatch));
        Assert.Equal(batch.Recipe, JsonSerializer.Deserialize(JsonSerializer.Serialize(batch.Recipe, json.MediumRecipe), json.MediumRecipe));
        Assert.Equal(size, JsonSerializer.Deserialize(JsonSerializer.Serialize(size, json.PotSize), json.PotSize));
    }

    private static void Refused(string parameter, string message, Func<object> act)
    {
        ArgumentOutOfRangeException refused = Assert.Throws<ArgumentOutOfRangeException>(act);
        Assert.Equal(parameter, refused.ParamName);
        Assert.Contains(message, refused.Message, StringComparison.Ordinal);
    }
}
