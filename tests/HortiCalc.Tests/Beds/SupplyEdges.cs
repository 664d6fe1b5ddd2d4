using System.Globalization;
using System.Text.Json;
using HortiCalc.Beds;
using HortiCalc.Display;
using HortiCalc.Evidence;
using HortiCalc.Json;
using UnitsNet;

namespace HortiCalc.Tests.Beds;

/// <summary>What layers, bags and bulk densities refuse, and how they show and store themselves.</summary>
public class SupplyEdges
{
    private static readonly Source Own = new("bucket", "a bucket weighed in the yard", "the grower", 2026, null);

    private static Length M(double metres) => Length.FromMeters(metres);

    private static Volume L(double litres) => Volume.FromLiters(litres);

    [Fact]
    public void Amendment_ValuesOutOfRange_AreRefusedByName()
    {
        Refused("area", "area was 0 m²; allowed: greater than 0 m²", () => Amendment.VolumeFor(Area.Zero, M(0.1)));
        Refused("depth", "depth was -0.1 m", () => Amendment.VolumeFor(Area.FromSquareMeters(1), M(-0.1)));
        Refused("volume", "volume was -1 L; allowed: 0 L or more", () => Amendment.Coverage(L(-1), M(0.1)));
        Refused("depth", "depth was 0 m; allowed: greater than 0 m", () => Amendment.Coverage(L(1), Length.Zero));
        Refused("volume", "volume was -1 L", () => Amendment.Depth(L(-1), Area.FromSquareMeters(1)));
        Refused("area", "area was 0 m²", () => Amendment.Depth(L(1), Area.Zero));
    }

    [Fact]
    public void AmendmentLayer_ValuesOutOfRange_AreRefusedByName()
    {
        AmendmentLayer layer = AmendmentLayer.LooseOnTop(M(0.1), Ratio.Zero);
        Refused("settlingAllowance", "settlingAllowance was -5 %", () => AmendmentLayer.LooseOnTop(M(0.1), Ratio.FromPercent(-5)));
        Refused("looseDepth", "looseDepth was -0.1 m", () => AmendmentLayer.LooseOnTop(M(-0.1), Ratio.Zero));
        Refused("share", "share was 101 %; allowed: from 0 to 100 %", () => AmendmentLayer.ShareOfMixedDepth(Ratio.FromPercent(101), M(0.2), Ratio.Zero));
        Refused("mixedDepth", "mixedDepth was 0.05 m; allowed: 0.1 m or more", () => layer.WorkedToTotalDepth(M(0.05)));
        Refused("soilDepth", "soilDepth was 0 m", () => layer.WorkedIntoSoil(Length.Zero));
        Refused("volume", "volume was -1 L", () => layer.AreaCoveredBy(L(-1)));
        Refused("area", "area was 0 m²", () => layer.VolumeOver(Area.Zero));
    }

    [Fact]
    public void AreaCoveredBy_LayerWithoutDepth_HasNoAnswer()
    {
        InvalidOperationException refused =
            Assert.Throws<InvalidOperationException>(() => AmendmentLayer.LooseOnTop(Length.Zero, Ratio.Zero).AreaCoveredBy(L(1)));
        Assert.Contains("0 m", refused.Message, StringComparison.Ordinal);
    }

    // The custom of the trade: a 4 inch layer worked into 6 to 8 inches.
    [Fact]
    public void WorkedIntoSoil_FourInchesIntoEight_IsAThirdAndToATotalOfEightAHalf()
    {
        AmendmentLayer layer = AmendmentLayer.LooseOnTop(Length.FromInches(4), Ratio.Zero);
        Assert.Equal(100 / 3.0, layer.WorkedIntoSoil(Length.FromInches(8)).ShareOfMix!.Value.Percent, 1e-9);
        Assert.Equal(50, layer.WorkedToTotalDepth(Length.FromInches(8)).ShareOfMix!.Value.Percent, 1e-9);
        Assert.Null(layer.ShareOfMix);
    }

    [Fact]
    public void AmendmentLayer_ToString_SaysWhatBecomesOfIt()
    {
        AmendmentLayer layer = AmendmentLayer.LooseOnTop(M(0.05), Ratio.FromPercent(10));
        Assert.Equal("layer 5 cm deep, left on top, 10 % added for settling", layer.ToString());
        Assert.Equal(
            "layer 5 cm deep, worked in to 20 cm (25 % of the mix), 10 % added for settling", layer.WorkedIntoSoil(M(0.15)).ToString());
        Assert.Equal("layer 1,97 in deep, left on top, 10 % added for settling", layer.ToString("U", CultureInfo.GetCultureInfo("de-DE")));
    }

    [Fact]
    public void ToBuy_ThreeTimesATenth_IsThreeBags()
    {
        Assert.Equal(3, Bags.ToBuy(L(0.1 + 0.1 + 0.1), L(0.1)).Count);
        Assert.Equal(3, Bags.ToBuy(L(0.3), L(0.1)).Count);
        Assert.Equal(0, Bags.ToBuy(L(0.3), L(0.1)).LeftOver.Liters, 1e-12);
        Assert.Equal(27, Bags.ToBuy(Volume.FromCubicYards(1), Volume.FromCubicFeet(1)).Count);
    }

    [Fact]
    public void ToBuy_NothingNeeded_IsNoBag()
    {
        BagPurchase bags = Bags.ToBuy(Volume.Zero, L(40));
        Assert.Equal(0, bags.Count);
        Assert.Equal(0, bags.LeftOver.Liters);
    }

    [Fact]
    public void ToBuy_TheLeastNeed_IsOneBag() => Assert.Equal(1, Bags.ToBuy(L(1e-9), L(40)).Count);

    [Fact]
    public void ToBuy_ValuesOutOfRange_AreRefusedByName()
    {
        Refused("needed", "needed was -1 L; allowed: 0 L or more", () => Bags.ToBuy(L(-1), L(40)));
        Refused("bag", "bag was 0 L; allowed: greater than 0 L", () => Bags.ToBuy(L(1), L(0)));
        Refused("needed", "allowed: no more than 2147483647 bags", () => Bags.ToBuy(L(1e300), L(1e-10)));
    }

    [Fact]
    public void BagPurchase_ToString_SaysCountNeedAndRest()
    {
        Assert.Equal("3 bags of 40 L: 120 L for a need of 115 L, 5 L left over", Bags.ToBuy(L(115), L(40)).ToString());
        Assert.Equal("1 bag of 40 L: 40 L for a need of 40 L, 0 L left over", Bags.ToBuy(L(40), L(40)).ToString());
        Assert.Equal(
            "2 bags of 15 gal (US): 29.9 gal (US) for a need of 20 gal (US), 9.92 gal (US) left over",
            Bags.ToBuy(Volume.FromUsGallons(20), Volume.FromCubicFeet(2)).ToString("U", null));
    }

    [Fact]
    public void BulkDensity_ValuesOutOfRange_AreRefusedByName()
    {
        Density some = Density.FromKilogramsPerCubicMeter(600);
        Refused("density", "density was 0 kg/m³", () => new BulkDensity("x", BulkMaterial.Soil, MoistureState.Dry, Density.Zero, Own));
        Refused("low", "low was -1 kg/m³", () => new BulkDensity("x", BulkMaterial.Soil, MoistureState.Dry, Density.FromKilogramsPerCubicMeter(-1), some, Own));
        Refused("high", "high was 500 kg/m³; allowed: 600 kg/m³ or more", () => new BulkDensity("x", BulkMaterial.Soil, MoistureState.Dry, some, Density.FromKilogramsPerCubicMeter(500), Own));
        Refused("moisture", "moisture was 9", () => new BulkDensity("x", BulkMaterial.Soil, (MoistureState)9, some, Own));
        BulkDensity density = new("x", BulkMaterial.Soil, MoistureState.Dry, some, Own);
        Refused("volume", "volume was -1 L", () => density.MassOf(L(-1)));
        Refused("mass", "mass was -1 kg", () => density.VolumeOf(Mass.FromKilograms(-1)));
    }

    [Fact]
    public void MassOf_ASpan_CarriesItWithItsMeaning()
    {
        Estimate<Mass> mass = BulkDensities.Named("wet-mulch-weights", "compost").MassOf(Volume.FromCubicYards(2));
        Assert.Equal(2600, mass.Value.Pounds, 1e-9);
        Assert.Equal(2000, mass.Range!.Low.Pounds, 1e-9);
        Assert.Equal(3200, mass.Range.High.Pounds, 1e-9);
        Assert.Equal("range printed by the source", mass.Range.Meaning);
        Assert.Contains("middle of the printed range", mass.Method.Name, StringComparison.Ordinal);
    }

    [Fact]
    public void MassOf_Compost_WarnsOfSaltsDustAndLiftingAndWater()
    {
        BulkDensity compost = BulkDensities.Named("massdep-recycling-weights", "finished compost");
        Assert.Equal(["load.moisture", "compost.salts", "compost.dust", "load.heavy"], compost.MassOf(L(40)).Cautions.Select(caution => caution.Code));
        Assert.DoesNotContain("load.heavy", compost.MassOf(L(10)).Cautions.Select(caution => caution.Code));
    }

    [Fact]
    public void MassOf_AtTheLiftingGuideline_WarnsFromThereOn()
    {
        BulkDensity water = new("x", BulkMaterial.Sand, MoistureState.Wet, Density.FromKilogramsPerCubicMeter(1000), Own);
        Assert.Empty(water.MassOf(L(15.9)).Cautions);
        Caution lifting = Assert.Single(water.MassOf(L(16)).Cautions);
        Assert.Equal(("load.heavy", CautionLevel.Danger), (lifting.Code, lifting.Level));
    }

    [Fact]
    public void Cautions_WhereSomebodyCanBeHurt_AreDangers() => Assert.Equal(
        [CautionLevel.Danger, CautionLevel.Note, CautionLevel.Care, CautionLevel.Danger],
        [BedCautions.HeavyLoad.Level, BedCautions.WeightOfWater.Level, BedCautions.Salts.Level, BedCautions.Dust.Level]);

    [Fact]
    public void For_WoodByMoisture_GivesWhatTheSourcesCallDryAndGreen()
    {
        Assert.Equal(["wood chips, shredded", "dry wood chips"], BulkDensities.For(BulkMaterial.Wood, MoistureState.Dry).Select(wood => wood.Name));
        Assert.Equal(["green wood chips"], BulkDensities.For(BulkMaterial.Wood, MoistureState.Moist).Select(wood => wood.Name));
    }

    [Fact]
    public void ToBuy_NeedThatExceedsItsBagsByAHair_LeavesExactlyNothing() =>
        Assert.Equal(0, Bags.ToBuy(L(0.1 + 0.2), L(0.1)).LeftOver.Liters);

    [Fact]
    public void For_EveryMaterial_HasAtLeastOneFigure() =>
        Assert.All(Enum.GetValues<BulkMaterial>(), material => Assert.NotEmpty(BulkDensities.For(material)));

    [Fact]
    public void For_AMoisture_GivesThatMoistureOnly()
    {
        Assert.All(BulkDensities.For(BulkMaterial.Sand, MoistureState.Dry), density => Assert.Equal(MoistureState.Dry, density.Moisture));
        Assert.Empty(BulkDensities.For(BulkMaterial.Ash, MoistureState.Wet));
    }

    [Fact]
    public void Named_Unknown_IsRefusedWithWhatThereIs()
    {
        ArgumentException source = Assert.Throws<ArgumentException>(() => BulkDensities.Named("nowhere", "compost"));
        Assert.Equal("sourceKey", source.ParamName);
        Assert.Contains("nofa-bulk-weights", source.Message, StringComparison.Ordinal);
        ArgumentException name = Assert.Throws<ArgumentException>(() => BulkDensities.Named("nofa-bulk-weights", "feathers"));
        Assert.Equal("name", name.ParamName);
        Assert.Contains("sawdust", name.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Published_EveryName_IsThereOncePerSource() =>
        Assert.Equal(BulkDensities.Published.Count, BulkDensities.Published.Select(density => (density.Source.Key, density.Name)).Distinct().Count());

    [Fact]
    public void BulkDensity_ToString_NamesMoistureAndSource() => Assert.Equal(
        "sawdust, as delivered: 193 kg/m³ [Northeast Organic Farming Association, Weight of organic materials per bushel and per cubic yard (no date)]",
        BulkDensities.Named("nofa-bulk-weights", "sawdust").ToString());

    [Fact]
    public void Display_EveryResult_IsATitleAndRows()
    {
        static string Plain(IDisplayable shown) => DisplayText.Plain(shown.ToDisplay(TextStyle.Default));

        AmendmentLayer layer = AmendmentLayer.LooseOnTop(M(0.05), Ratio.FromPercent(10));
        Assert.Equal("rectangle 1 m by 2 m\n  area       2 m²\n  perimeter  6 m", Plain(Bed.Rectangle(M(1), M(2))));
        Assert.Equal("layer 5 cm deep\n  worked in to        stays on top\n  added for settling  10 %", Plain(layer));
        Assert.Equal(
            "layer 5 cm deep\n  worked in to        20 cm\n  share of the mix    25 %\n  added for settling  10 %", Plain(layer.WorkedToTotalDepth(M(0.2))));
        Assert.Equal("3 bags of 40 L\n  needed     115 L\n  bought     120 L\n  left over  5 L", Plain(Bags.ToBuy(L(115), L(40))));
        Assert.StartsWith(
            "earth, loose, dry: 1,246 kg/m³\n  conditions  30 % more when compacted\n  source      CalRecycle",
            Plain(BulkDensities.Named("calrecycle-debris-weights", "earth, loose")),
            StringComparison.Ordinal);
    }

    [Fact]
    public void ToBuy_MeasuredInTheRoundedCubicYardOfUnitsNet_IsStillWhole() =>
        Assert.Equal(27, Bags.ToBuy(Volume.FromLiters(Volume.FromCubicYards(1).Liters), Volume.FromCubicFeet(1)).Count);

    [Fact]
    public void Json_EveryInputAndResult_RoundTrips()
    {
        AmendmentLayer mulch = AmendmentLayer.LooseOnTop(Length.FromInches(3), Ratio.FromPercent(10));
        AmendmentLayer worked = mulch.WorkedIntoSoil(M(0.15));
        BagPurchase bags = Bags.ToBuy(L(115), Volume.FromCubicFeet(1.5));
        BulkDensity density = new("my compost", BulkMaterial.Compost, MoistureState.Moist, Density.FromPoundsPerCubicYard(1000), Density.FromPoundsPerCubicYard(1100), Own, "sieved");
        HortiCalcJsonContext json = HortiCalcJsonContext.Default;
        Assert.Equal(mulch, JsonSerializer.Deserialize(JsonSerializer.Serialize(mulch, json.AmendmentLayer), json.AmendmentLayer));
        Assert.Equal(worked, JsonSerializer.Deserialize(JsonSerializer.Serialize(worked, json.AmendmentLayer), json.AmendmentLayer));
        Assert.Equal(bags, JsonSerializer.Deserialize(JsonSerializer.Serialize(bags, json.BagPurchase), json.BagPurchase));
        Assert.Equal(density, JsonSerializer.Deserialize(JsonSerializer.Serialize(density, json.BulkDensity), json.BulkDensity));
        Assert.Contains("\"count\":3", JsonSerializer.Serialize(bags, json.BagPurchase), StringComparison.Ordinal);
        Estimate<Density> estimate = density.ToEstimate();
        Assert.Equal(estimate, JsonSerializer.Deserialize(JsonSerializer.Serialize(estimate, json.EstimateDensity), json.EstimateDensity));
    }

    private static void Refused(string parameter, string message, Func<object> act)
    {
        ArgumentOutOfRangeException refused = Assert.Throws<ArgumentOutOfRangeException>(act);
        Assert.Equal(parameter, refused.ParamName);
        Assert.Contains(message, refused.Message, StringComparison.Ordinal);
    }
}
