using System.Text.Json;
using System.Text.Json.Serialization.Metadata;
using HortiCalc.Beds;
using HortiCalc.Evidence;
using HortiCalc.Json;
using UnitsNet;

namespace HortiCalc.Tests.Beds;

/// <summary>What purchases, hauls, composts and filled beds refuse, and how they show and store themselves.</summary>
public class BuyingEdges
{
    private static readonly BagOffer[] Shop = [new("big", L(50), 8m), new("small", L(20), 4m)];

    private static readonly CompostAnalysis Analysis = new(
        Density.FromPoundsPerCubicYard(1000),
        Ratio.FromPercent(50),
        MassFraction.FromPercent(50),
        MassFraction.FromPercent(1.5),
        MassFraction.FromPercent(0.4));

    private static Volume L(double litres) => Volume.FromLiters(litres);

    private static Length M(double metres) => Length.FromMeters(metres);

    private static Mass Kg(double kilograms) => Mass.FromKilograms(kilograms);

    [Fact]
    public void BagSelection_ToString_SaysWhatToBuyAndPay()
    {
        Assert.Equal("2 × 50 L, 1 × 20 L: 120 L for a need of 115 L, 5 L left over, 20 to pay", Bags.ToBuy(L(115), Shop, BagAim.LeastCost).ToString());
        Assert.Equal("no bags: 0 L for a need of 0 L, 0 L left over, 0 to pay", Bags.ToBuy(L(0), Shop, BagAim.LeastLeftOver).ToString());
        Assert.Null(Bags.ToBuy(L(115), [new BagOffer("big", L(50)), new BagOffer("small", L(20), 4m)], BagAim.FewestBags).Cost);
    }

    // Half an empty big bag: the greedy buyer takes two big ones for 70 L, and pays 16.
    [Fact]
    public void BagSelection_WhereGreedyWastes_BuysTheSmallBag()
    {
        BagSelection choice = Bags.ToBuy(L(70), Shop, BagAim.LeastCost);
        Assert.Equal(12m, choice.Cost);
        Assert.Equal([("big", 1), ("small", 1)], choice.Bags.Select(bag => (bag.Offer.Name, bag.Count)));
    }

    [Fact]
    public void BagSelection_ALargeNeed_IsAnsweredToo()
    {
        BagOffer[] offers = [.. Enumerable.Range(0, 6).Select(i => new BagOffer($"{i}", L(13 + 7 * i), 3m + 1.37m * i))];
        BagSelection choice = Bags.ToBuy(L(100_000), offers, BagAim.LeastCost);
        Assert.True(choice.Bought.Liters >= 100_000, choice.ToString());
        Assert.Equal(new BagPurchase(L(100_000), L(48)).Count, Bags.ToBuy(L(100_000), offers, BagAim.FewestBags).Count);
    }

    [Fact]
    public void BagSelection_SizesThatDoNotCombine_AreRefusedInsteadOfSearchedForEver()
    {
        BagOffer[] odd = [new("a", L(10.0000001)), new("b", L(11.0000003)), new("c", L(12.0000007)), new("d", L(13.0000013))];
        ArgumentException refused = Assert.Throws<ArgumentException>(() => Bags.ToBuy(L(5_000), odd, BagAim.LeastLeftOver));
        Assert.Equal("offers", refused.ParamName);
        Assert.Contains("allowed: fewer sizes", refused.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Purchases_ValuesOutOfRange_AreRefusedByName()
    {
        Refused("needed", "needed was -1 L; allowed: from 0 to 1000000000 L", () => Bags.ToBuy(L(-1), Shop, BagAim.LeastCost));
        Refused("offers", "offers was 0; allowed: 1 or more", () => Bags.ToBuy(L(1), [], BagAim.LeastCost));
        Refused("volume", "volume was 0 L", () => new BagOffer("x", L(0)));
        Refused("price", "price was -1", () => new BagOffer("x", L(1), -1m));
        Refused("step", "step was 0 L", () => new BulkPurchase(L(1), L(0), L(0)));
        Refused("least", "least was -1 L", () => new BulkPurchase(L(1), L(1), L(-1)));
        Refused("label", "label was 0 L", () => new CompressedBale(L(0), BaleExpansions.Arkansas));
        Refused("high", "high was 100 %; allowed: 150 % or more", () => new BaleExpansion(Ratio.FromPercent(150), Ratio.FromPercent(100), BaleExpansions.Arkansas.Source));
        Refused("pottingReference", "pottingReference was 101 %; allowed: greater than 0 %, up to 100 %", () => PackedVolume.Filled(L(1), Ratio.FromPercent(101)));
        Refused("density", "density was 0 kg/m³", () => PackedVolume.FromMass(Kg(1), Density.Zero));
        Refused("payload", "payload was 0 kg", () => new Vehicle(Mass.Zero));
        Refused("space", "space was 0 L", () => new Vehicle(Kg(1), L(0)));
        Refused("count", "count was -1; allowed: 0 or more", () => new HaulItem("x", -1, Kg(1), L(1)));
        Refused("items", "items was 30 kg; allowed: things up to the payload of 20 kg each", () => new HaulPlan([new HaulItem("x", 1, Kg(30), L(1))], new Vehicle(Kg(20))));
        Refused("items", "items was 30 L; allowed: things up to the space of 20 L each", () => new HaulPlan([new HaulItem("x", 1, Kg(3), L(30))], new Vehicle(Kg(20), L(20))));
        ArgumentException twice = Assert.Throws<ArgumentException>(() => Bags.ToBuy(L(1), [Shop[0], Shop[0]], BagAim.FewestBags));
        Assert.Contains("'big' more than once", twice.Message, StringComparison.Ordinal);
        ArgumentException free = Assert.Throws<ArgumentException>(() => Bags.ToBuy(L(1), [new BagOffer("big", L(1))], BagAim.LeastCost));
        Assert.Contains("'big' without a price", free.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void BulkPurchase_BelowAtAndAboveTheLeastLoad_IsOrderedInSteps()
    {
        double Bought(double needed) => new BulkPurchase(L(needed), L(500), L(1000)).Bought.Liters;
        Assert.Equal([0, 1000, 1000, 1500, 1500, 2000], ((double[])[0, 1, 1000, 1001, 1500, 1501]).Select(Bought));
        Assert.Equal("1.5 m³ loose for a need of 1.3 m³, 200 L left over", new BulkPurchase(L(1300), L(500), L(1000)).ToString());
    }

    [Fact]
    public void CompressedBale_OfTheExample_HasTheSpanOfItsSource()
    {
        CompressedBale bale = new(Volume.FromCubicFeet(3.8), BaleExpansions.Arkansas);
        Assert.Equal("bale of 108 L, 161 L to 215 L when loosened", bale.ToString());
        Assert.Equal(4, bale.ToBuy(L(500)).Count);
        Assert.Equal(1.0965, BaleExpansions.Nursery.Low.DecimalFractions, 1e-4);
    }

    [Fact]
    public void HaulPlan_OfTheExample_IsTwoTripsWithACautionForLifting()
    {
        HaulItem compost = HaulItem.Of(Bags.ToBuy(L(800), L(40)), BulkDensities.Named("massdep-recycling-weights", "finished compost"));
        HaulPlan plan = new([compost], new Vehicle(Kg(400), L(600)));
        Assert.Equal("2 trips for 641 kg", plan.ToString());
        Assert.Equal([12, 8], plan.Trips.Select(trip => trip.Items.Single().Count));
        Assert.Equal("load.heavy", plan.Cautions.Single().Code);
        Assert.Empty(new HaulPlan([], new Vehicle(Kg(1))).Trips);
    }

    [Fact]
    public void HaulItem_OfASpan_TakesTheHeavyEnd() => Assert.Equal(
        1600 / 27.0, HaulItem.Of(Bags.ToBuy(Volume.FromCubicFeet(5), Volume.FromCubicFeet(1)), BulkDensities.Named("wet-mulch-weights", "compost")).Mass.Pounds, 1e-6);

    [Fact]
    public void LooseHaul_LightAndHeavy_AreLimitedBySpaceAndByWeight()
    {
        Vehicle trailer = new(Kg(500), L(900));
        LooseHaul gravel = new(L(1000), BulkDensities.Named("uk-landscape-supplier", "decorative aggregate"), trailer);
        LooseHaul mulch = new(L(1000), BulkDensities.Named("texas-yard-saturated", "pine bark mulch"), trailer);
        Assert.Equal("4 trips of up to 313 L, limited by weight", gravel.ToString());
        Assert.Equal("2 trips of up to 900 L, limited by space", mulch.ToString());
        Assert.Contains("load.heavy", gravel.Mass.Cautions.Select(caution => caution.Code));
    }

    [Fact]
    public void BulkDensity_WithWaterOrOnARoof_SaysSo()
    {
        BulkDensity loam = BulkDensities.Named("soil-density-by-texture", "loam");
        Assert.Equal("water 20 % of the dry mass", loam.WithWater(Ratio.FromPercent(20), MoistureBasis.OfDryMass, MoistureState.Moist).Conditions);
        Assert.Contains("load.structure", loam.LoadOf(M(0.3)).Cautions.Select(caution => caution.Code));
        Assert.Throws<InvalidOperationException>(() => BulkDensities.Named("uk-landscape-supplier", "sand").WithWater(Ratio.FromPercent(20), MoistureBasis.OfDryMass, MoistureState.Wet));
        Refused("moisture", "moisture was Dry; allowed: Moist, Wet", () => loam.WithWater(Ratio.FromPercent(20), MoistureBasis.OfDryMass, MoistureState.Dry));
        Refused("water", "water was 100 %; allowed: 0 % or more and below 100 %, of the wet mass", () => WaterContent.DryMass(Kg(1), Ratio.FromPercent(100), MoistureBasis.OfWetMass));
        Refused("depth", "depth was -1 m", () => loam.LoadOf(M(-1)));
        Refused("wet", "wet was 1 kg; allowed: 2 kg or more", () => WaterContent.FromMasses(Kg(1), Kg(2), MoistureBasis.OfDryMass));
        Assert.Equal(9.80665, BedLoads.PressureOf(AreaDensity.FromKilogramsPerSquareMeter(1000)).Kilopascals, 1e-9);
    }

    [Fact]
    public void Compost_ValuesOutOfRange_AreRefusedByName()
    {
        AreaDensity some = AreaDensity.FromGramsPerSquareMeter(10);
        Density soil = Density.FromKilogramsPerCubicMeter(1300);
        Refused("water", "water was 100 %", () => new CompostAnalysis(soil, Ratio.FromPercent(100), MassFraction.Zero, MassFraction.Zero, MassFraction.Zero));
        Refused("nitrogen", "nitrogen was 101 %; allowed: from 0 to 100 %", () => new CompostAnalysis(soil, Ratio.Zero, MassFraction.Zero, MassFraction.FromPercent(101), MassFraction.Zero));
        Refused("depth", "depth was -1 m", () => new CompostDose(Analysis, M(-1)));
        Refused("wanted", "wanted was 50 %; allowed: below the compost's own, 50 %", () => CompostDose.ForOrganicMatter(Analysis, M(0.15), soil, MassFraction.FromPercent(2), MassFraction.FromPercent(50)));
        Refused("wanted", "wanted was 1 %; allowed: 2 % or more", () => CompostDose.ForOrganicMatter(Analysis, M(0.15), soil, MassFraction.FromPercent(2), MassFraction.FromPercent(1)));
        Refused("analysis", "allowed: a compost with phosphorus", () => CompostDose.ForPhosphorus(new CompostAnalysis(soil, Ratio.Zero, MassFraction.Zero, MassFraction.Zero, MassFraction.Zero), some));
        Refused("time", "time was 64 days; allowed: from 0 to 63 days, which is what 'first-order release of nitrogen from composted tea leaves' was published for", () => CompostNitrogen.After(some, Duration.FromDays(64), CompostReleases.TeaLeaves));
        Refused("year", "year was 0; allowed: 1 or more", () => CompostNitrogen.InYear(some, 0));
        Refused("ammoniumKept", "ammoniumKept was 120 %", () => CompostNitrogen.PlantAvailable(MassFraction.Zero, MassFraction.Zero, MassFraction.Zero, Ratio.Zero, Ratio.FromPercent(120)));
        Refused("loss", "loss was 100 %; allowed: 0 % or more, below 100 %", () => Settling.LooseFor(M(1), Ratio.FromPercent(100)));
        Refused("lossPerYear", "lossPerYear was 101 %", () => Settling.DepthAfter(M(1), Ratio.FromPercent(101)));
        Refused("years", "years was -1", () => Settling.TopUp(M(1), Ratio.FromPercent(10), -1));
    }

    [Fact]
    public void CompostDose_OfTheExample_IsAsTheExampleSays()
    {
        CompostDose dose = new(Analysis, Length.FromCentimeters(2));
        Assert.Equal("compost 2 cm deep: 11,866 g/m², of it 89 g/m² nitrogen and 23.7 g/m² phosphorus", dose.ToString());
        Assert.Equal(3.4, dose.OrganicMatterAfter(M(0.15), Density.FromKilogramsPerCubicMeter(1300), MassFraction.FromPercent(2)).Percent, 0.05);
        Assert.Equal(2.2914, dose.Phosphate / dose.Phosphorus, 5e-4);
        Assert.Equal(["compost.salts", "compost.dust"], dose.Cautions.Select(caution => caution.Code));
    }

    [Fact]
    public void CompostDose_KnownToBeLowInSalts_DoesNotWarnOfThem()
    {
        CompostAnalysis WithSalts(double decisiemens) => new(
            Analysis.Density, Analysis.Water, Analysis.OrganicMatter, Analysis.Nitrogen, Analysis.Phosphorus, ElectricConductivity.FromMillisiemensPerCentimeter(decisiemens));
        Assert.DoesNotContain("compost.salts", new CompostDose(WithSalts(8), M(0.1)).Cautions.Select(caution => caution.Code));
        Assert.Contains("compost.salts-above-desired", new CompostDose(WithSalts(3.9), M(0.1)).Cautions.Select(caution => caution.Code));
        Assert.Equal(["compost.dust"], new CompostDose(WithSalts(1.5), M(0.1)).Cautions.Select(caution => caution.Code));
        Assert.Contains("compost.salts", new CompostDose(WithSalts(8.1), M(0.1)).Cautions.Select(caution => caution.Code));
    }

    [Fact]
    public void LayeredBed_Cautions_FollowMaterialsAndEdging()
    {
        LayeredBed Of(BulkMaterial material, BedEdging edging) =>
            new(Bed.Circle(M(2)), M(0.3), M(0.1), [new BedLayer("fill", material, AmendmentLayer.LooseOnTop(M(0.3), Ratio.Zero))], edging);
        Assert.Equal(["bed.treated-timber", "fill.contaminated", "compost.dust"], Of(BulkMaterial.Soil, BedEdging.TreatedTimber).Cautions.Select(caution => caution.Code));
        Assert.Equal(["compost.salts", "compost.dust"], Of(BulkMaterial.Compost, BedEdging.Timber).Cautions.Select(caution => caution.Code));
        Assert.Empty(Of(BulkMaterial.Stone, BedEdging.Masonry).Cautions);
        Assert.Equal("circle 2 m across with 1 layer, 40 cm high, 10 cm above the rim", Of(BulkMaterial.Stone, BedEdging.None).ToString());
        Assert.All(
            (Caution[])[BedCautions.StructuralLoad, BedCautions.TreatedTimber, BedCautions.ContaminatedFill],
            caution => Assert.Equal(CautionLevel.Danger, caution.Level));
    }

    [Fact]
    public void SoilDepths_ForACropInSeveralSources_ShowsTheirDisagreement()
    {
        double[] inches = [.. SoilDepths.For("cucumber").Where(depth => depth.Kind == SoilDepthKind.RaisedBed).Select(depth => depth.Low.Inches)];
        Assert.True(inches.Max() >= 2 * inches.Min(), "The sources differ by a factor of two.");
        Assert.Empty(SoilDepths.For("banana"));
    }

    [Fact]
    public void Json_EveryInputAndResult_RoundTrips()
    {
        HortiCalcJsonContext json = HortiCalcJsonContext.Default;
        AmendmentLayer layer = AmendmentLayer.LooseOnTop(M(0.2), Ratio.FromPercent(10));
        RoundTrips(new LayeredBed(Bed.Circle(M(2)), M(0.3), M(0.1), [new BedLayer("topsoil", BulkMaterial.Soil, layer)], BedEdging.TreatedTimber), json.LayeredBed);
        RoundTrips(Bags.ToBuy(L(115), Shop, BagAim.LeastCost), json.BagSelection);
        RoundTrips(new BulkPurchase(L(1300), L(500), L(1000)), json.BulkPurchase);
        RoundTrips(new CompressedBale(L(108), BaleExpansions.Arkansas), json.CompressedBale);
        RoundTrips(new HaulPlan([new HaulItem("compost", 7, Kg(20), L(40))], new Vehicle(Kg(60), L(500))), json.HaulPlan);
        RoundTrips(new LooseHaul(L(900), BulkDensities.Published[0], new Vehicle(Kg(60))), json.LooseHaul);
        RoundTrips(new CompostDose(Analysis, M(0.02)), json.CompostDose);
        RoundTrips(SettlingRanges.Published[4], json.SettlingRange);
        RoundTrips(LayerAdvices.Published[0], json.LayerAdvice);
        RoundTrips(SoilDepths.Published[0], json.CropSoilDepth);
        RoundTrips(SaltLimits.Published[0], json.SaltLimit);
        RoundTrips(CompostNutrients.Published[0], json.CompostNutrients);
        RoundTrips(CompostReleases.TeaLeaves, json.CompostRelease);
        RoundTrips(NitrogenShares.Published[0], json.NitrogenShare);
    }

    private static void RoundTrips<T>(T value, JsonTypeInfo<T> type) =>
        Assert.Equal(value, JsonSerializer.Deserialize(JsonSerializer.Serialize(value, type), type));

    private static void Refused(string parameter, string message, Func<object> act)
    {
        ArgumentOutOfRangeException refused = Assert.Throws<ArgumentOutOfRangeException>(act);
        Assert.Equal(parameter, refused.ParamName);
        Assert.Contains(message, refused.Message, StringComparison.Ordinal);
    }
}
