using System.Globalization;
using HortiCalc.Evidence;
using HortiCalc.Json;
using HortiCalc.Soil;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Tests.Soil;

/// <summary>What the arithmetic of nutrients refuses, warns of, says and stores.</summary>
public class NutrientEdges
{
    private static readonly NutrientNeed Nitrogen = NutrientNeed.WithSlack(Nutrient.Nitrogen, AreaDensity.FromGramsPerSquareMeter(10), Ratio.FromPercent(10));

    [Theory]
    [InlineData(0)]
    [InlineData(2651)]
    public void Layer_ImpossibleDensity_IsRefused(double density) => Assert.Contains(
        "above 0 and up to 2650 kg/m³",
        Assert.Throws<ArgumentOutOfRangeException>(
            "bulkDensity", () => new SoilLayer(Length.FromCentimeters(20), Density.FromKilogramsPerCubicMeter(density))).Message,
        StringComparison.Ordinal);

    [Fact]
    public void Layer_FurrowSlice_ImpliesThePublishedDensity()
    {
        Assert.Equal(1.32, SoilLayer.FurrowSlice.BulkDensity.GramsPerCubicCentimeter, 0.005);
        Assert.Equal(2_000_000, (SoilLayer.FurrowSlice.Soil * Area.FromAcres(1)).Pounds, 0.5);
        Assert.Equal("20 cm of soil at 1,200 kg/m³", new SoilLayer(Length.FromCentimeters(20), Density.FromGramsPerCubicCentimeter(1.2)).ToString());
    }

    [Fact]
    public void Layer_SixInchesAtOrdinaryDensity_IsNotTimesTwo()
    {
        SoilLayer layer = new(Length.FromInches(6), Density.FromGramsPerCubicCentimeter(1.33));
        Assert.Equal(1.81, (layer.PerArea(MassFraction.FromMilligramsPerKilogram(1)) * Area.FromAcres(1)).Pounds, 0.005);
    }

    [Fact]
    public void Oxides_WhatASourceDoesNotPrint_IsRefused()
    {
        ArgumentOutOfRangeException refused = Assert.Throws<ArgumentOutOfRangeException>("oxide", () => OxideFactors.Ifa.ElementPerOxide(Oxide.CalciumOxide));

        Assert.Contains("oxide was CalciumOxide; allowed: Phosphate, Potash", refused.Message, StringComparison.Ordinal);
        Assert.Throws<ArgumentOutOfRangeException>("oxide", () => OxideFactors.NorthCarolina.ElementPerOxide(Oxide.Potash));
        Assert.Throws<ArgumentOutOfRangeException>("oxide", () => OxideFactors.MolarMass.ElementPerOxide((Oxide)99));
        Assert.Throws<ArgumentOutOfRangeException>("amount", () => OxideFactors.MolarMass.ToElement(Oxide.Potash, Mass.FromKilograms(-1)));
    }

    [Fact]
    public void Fertilizer_WhatItCannotBe_IsRefused()
    {
        NutrientContent nitrogen = new(Nutrient.Nitrogen, MassFraction.FromPercent(46));
        Assert.Throws<ArgumentException>("contents", () => new Fertilizer("x", []));
        Assert.Throws<ArgumentException>("contents", () => new Fertilizer("x", [nitrogen, nitrogen]));
        Assert.Throws<ArgumentException>("contents", () => new Fertilizer("x", [nitrogen, new NutrientContent(Nutrient.Potassium, MassFraction.FromPercent(60))]));
        Assert.Throws<ArgumentOutOfRangeException>("nitrogenReleased", () => new Fertilizer("x", [nitrogen], nitrogenReleased: Ratio.FromPercent(0)));
        Assert.Throws<ArgumentOutOfRangeException>("share", () => new NutrientContent(Nutrient.Nitrogen, MassFraction.FromPercent(0)));
        Assert.Contains(
            "nutrient was Potassium; allowed: Nitrogen, which urea holds",
            Assert.Throws<ArgumentOutOfRangeException>(
                "nutrient", () => new Fertilizer("urea", [nitrogen]).For(Nutrient.Potassium, Mass.FromKilograms(1))).Message,
            StringComparison.Ordinal);
    }

    [Fact]
    public void OfGrade_Label_IsReadAsOxides()
    {
        Fertilizer complete = Fertilizer.OfGrade("15-15-15", MassFraction.FromPercent(15), MassFraction.FromPercent(15), MassFraction.FromPercent(15));

        Assert.Equal(6.546, complete.Available(Nutrient.Phosphorus).Percent, 5e-4);
        Assert.Equal(12.452, complete.Available(Nutrient.Potassium).Percent, 5e-4);
        Assert.Equal(0, complete.Available(Nutrient.Sulfur).Percent);
        Assert.Equal("product-label", complete.Source.Key);
    }

    [Fact]
    public void Plan_WhatCannotBeMet_IsRefusedAndTheClosestShowsWhatIsMissing()
    {
        FertilizerOffer[] map = [new(Fertilizers.Named("MAP"), Mass.FromKilograms(25), 30m)];
        NutrientNeed[] needs = [Nitrogen, NutrientNeed.WithSlack(Nutrient.Phosphorus, AreaDensity.FromGramsPerSquareMeter(2), Ratio.FromPercent(10))];

        Assert.False(Fertilizing.CanMeet(needs, map));
        Assert.Throws<ArgumentException>("needs", () => Fertilizing.Plan(needs, map, FertilizerGoal.LeastCost));
        FertilizerPlan closest = Fertilizing.Plan(needs, map, FertilizerGoal.Closest);

        // One product of 11 % N and 22.69 % P: the least of (0.011 x - 1)² + (0.11346 x - 1)².
        double phosphorus = 0.52 * OxideFactors.MolarMass.ElementPerOxide(Oxide.Phosphate);
        double grams = (0.11 / 10 + phosphorus / 2) / (Math.Pow(0.11 / 10, 2) + Math.Pow(phosphorus / 2, 2));
        Assert.Equal(grams * phosphorus, closest.Supplies[1].Given.GramsPerSquareMeter, 1e-6);
        Assert.True(closest.Supplies[0].Missing.GramsPerSquareMeter > 8);
        Assert.Contains(closest.Cautions, caution => caution.Code == "nutrient.shortfall");
    }

    [Fact]
    public void Plan_WrongInput_IsRefusedByName()
    {
        FertilizerOffer urea = new(Fertilizers.Named("Urea"));
        Assert.Throws<ArgumentException>("needs", () => Fertilizing.Plan([], [urea], FertilizerGoal.Closest));
        Assert.Throws<ArgumentException>("offers", () => Fertilizing.Plan([Nitrogen], [], FertilizerGoal.Closest));
        Assert.Throws<ArgumentException>("needs", () => Fertilizing.Plan([Nitrogen, Nitrogen], [urea], FertilizerGoal.Closest));
        Assert.Contains(
            "offers has no price of Urea",
            Assert.Throws<ArgumentException>("offers", () => Fertilizing.Plan([Nitrogen], [urea], FertilizerGoal.LeastCost)).Message,
            StringComparison.Ordinal);
        Assert.Throws<ArgumentOutOfRangeException>("goal", () => Fertilizing.Plan([Nitrogen], [urea], (FertilizerGoal)7));
        Assert.Throws<ArgumentException>("price", () => new FertilizerOffer(urea.Product, null, 3m));
        Assert.Throws<ArgumentOutOfRangeException>("most", () => new NutrientNeed(Nutrient.Nitrogen, AreaDensity.FromGramsPerSquareMeter(2), AreaDensity.FromGramsPerSquareMeter(1)));
        Assert.Throws<ArgumentOutOfRangeException>("slack", () => NutrientNeed.WithSlack(Nutrient.Nitrogen, AreaDensity.FromGramsPerSquareMeter(2), Ratio.FromPercent(-1)));
    }

    [Fact]
    public void Plan_LimitOnChloride_ChangesThePotashAndWarnsWhereSomeIsLeft()
    {
        NutrientNeed potassium = NutrientNeed.WithSlack(Nutrient.Potassium, AreaDensity.FromGramsPerSquareMeter(8), Ratio.FromPercent(1));
        FertilizerOffer[] offers =
        [
            new(Fertilizers.Named("Potassium chloride"), Mass.FromKilograms(25), 22m),
            new(Fertilizers.Named("Potassium sulphate"), Mass.FromKilograms(25), 35m),
        ];
        FertilizerPlan free = Fertilizing.Plan([potassium], offers, FertilizerGoal.LeastCost);
        FertilizerPlan limited = Fertilizing.Plan(
            [potassium, new NutrientNeed(Nutrient.Chloride, AreaDensity.Zero, AreaDensity.FromGramsPerSquareMeter(3))], offers, FertilizerGoal.LeastCost);

        Assert.Equal(0, free.Lines[1].Rate.GramsPerSquareMeter);
        Assert.Contains(free.Cautions, caution => caution.Code == "nutrient.chloride");
        Assert.Equal(3, limited.Supplies[1].Given.GramsPerSquareMeter, 1e-9);
        Assert.True(limited.Lines[1].Rate.GramsPerSquareMeter > 0);
        Assert.True(limited.Cost(Area.FromSquareMeters(100)) > free.Cost(Area.FromSquareMeters(100)));
    }

    [Fact]
    public void Plan_Bags_AreWholeAndAHairIsNotABag()
    {
        FertilizerOffer urea = new(Fertilizers.Named("Urea"), Mass.FromKilograms(25), 24m);
        FertilizerLine line = new(urea, AreaDensity.FromGramsPerSquareMeter(25));

        Assert.Equal(10, line.Bags(Area.FromSquareMeters(10_000)));
        Assert.Equal(11, line.Bags(Area.FromSquareMeters(10_001)));
        Assert.Equal(0, line.Bags(Area.Zero));
        Assert.Null(new FertilizerLine(new FertilizerOffer(urea.Product), AreaDensity.FromGramsPerSquareMeter(25)).Bags(Area.FromSquareMeters(1)));
        Assert.Throws<ArgumentOutOfRangeException>("area", () => line.Over(Area.FromSquareMeters(-1)));
        Assert.Null(new FertilizerPlan(FertilizerGoal.Closest, [new FertilizerLine(new FertilizerOffer(urea.Product), AreaDensity.FromGramsPerSquareMeter(1))], []).Cost(Area.FromSquareMeters(1)));
    }

    [Fact]
    public void Plan_Micronutrients_AreWarnedOf()
    {
        FertilizerPlan plan = Fertilizing.Plan(
            [new NutrientNeed(Nutrient.Zinc, AreaDensity.FromGramsPerSquareMeter(0.5), AreaDensity.FromGramsPerSquareMeter(0.6))],
            [new FertilizerOffer(Fertilizers.Named("Zinc sulphate heptahydrate"))],
            FertilizerGoal.LeastExcess);

        Assert.Contains(plan.Cautions, caution => caution.Code == "nutrient.micronutrient-toxic");
        Assert.Contains(plan.Cautions, caution => caution.Code == "nutrient.fertilizer-burn");
        Assert.DoesNotContain(plan.Cautions, caution => caution.Code == "nutrient.nitrate-leaching");
        Assert.StartsWith("Zinc sulphate heptahydrate 2.2 g/m²;", plan.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void Organic_WhatHasNoFigure_IsRefused()
    {
        Assert.Throws<ArgumentOutOfRangeException>("handling", () => OrganicNitrogen.ManureShare(ManureHandling.OldDugIn, ManureSeason.SummerGrass, false));
        Assert.Throws<ArgumentOutOfRangeException>("manure", () => OrganicNitrogen.ManureReadilyAvailable(FarmyardManure.Horse, true));
        Assert.Throws<ArgumentOutOfRangeException>("yearsAgo", () => OrganicNitrogen.OrganicReleased(ManureAnimal.Cow, Ratio.FromPercent(20), 3));
        Assert.Throws<ArgumentOutOfRangeException>("dryMatter", () => OrganicNitrogen.OrganicReleased(ManureAnimal.Cow, Ratio.FromPercent(101), 0));
        Assert.Throws<ArgumentOutOfRangeException>("year", () => OrganicNitrogen.CompostShare(0));
        Assert.Throws<ArgumentOutOfRangeException>("carbonToNitrogen", () => OrganicNitrogen.Effect(0));
        Assert.Throws<ArgumentOutOfRangeException>("time", () => NitrogenReleases.Kinetics[0].Released(Duration.FromDays(-1)));
        Assert.Contains(OrganicNitrogen.Effect(70).Cautions, caution => caution.Code == "nutrient.nitrogen-tied-up");
        Assert.Equal(NitrogenEffect.Either, OrganicNitrogen.Effect(25).Value);
    }

    [Fact]
    public void CompostShare_FirstYears_AreTheMiddleOfTheRuleAndItsEnds()
    {
        Estimate<Ratio> first = OrganicNitrogen.CompostShare(1);

        Assert.Equal((10, 12.5, 15), (first.Range!.Low.Percent, first.Value.Percent, first.Range.High.Percent));
        Assert.Equal(3.125, OrganicNitrogen.CompostShare(3).Value.Percent, 1e-12);
    }

    /// <summary>Masses of one equivalent from the abridged standard atomic weights, to four digits (IUPAC, Standard atomic weights, 2021).</summary>
    [Theory]
    [InlineData("calcium", 20.04)]
    [InlineData("magnesium", 12.15)]
    [InlineData("potassium", 39.10)]
    [InlineData("sodium", 22.99)]
    [InlineData("ammonium", 18.04)]
    [InlineData("hydrogen", 1.008)]
    [InlineData("aluminium", 8.994)]
    [InlineData("chloride", 35.45)]
    [InlineData("bicarbonate", 61.02)]
    [InlineData("carbonate", 30.00)]
    [InlineData("sulfate", 48.03)]
    [InlineData("nitrate", 62.00)]
    public void Ion_OneEquivalent_HasTheMassOfItsAtoms(string ion, double grams) =>
        Assert.Equal(grams, Ion.FromKey(ion).Mass(VolumetricCharge.FromCentimolesPerLitre(0.1)).MilligramsPerLiter, 0.0051);

    [Fact]
    public void FromManure_CattleInSpring_IsFifteenKilogramsForTwentyFiveTonnes()
    {
        Estimate<AreaDensity> nitrogen = OrganicNitrogen.FromManure(
            FarmyardManure.Cattle, AreaDensity.FromKilogramsPerSquareMeter(2.5), ManureHandling.Surface, ManureSeason.Spring, sandy: false);

        Assert.Equal(15, nitrogen.Value.KilogramsPerHectare, 1e-9);
        Assert.Contains(nitrogen.Cautions, caution => caution.Level == CautionLevel.Danger);
    }

    [Fact]
    public void Cations_NothingHeld_IsRefused()
    {
        ExchangeableCharge none = ExchangeableCharge.FromCentimolesPerKilogram(0);
        Assert.Throws<ArgumentOutOfRangeException>("calcium", () => new ExchangeableCations(none, none, none, none, none));
        ExchangeableCations some = new(ExchangeableCharge.FromCentimolesPerKilogram(1), none, none, none, none);
        Assert.Throws<ArgumentOutOfRangeException>("part", () => some.Share(ExchangeableCharge.FromCentimolesPerKilogram(2)));
    }

    [Fact]
    public void Fertilizers_EveryNutrientContent_IsOfItsSourceAndNamesAreUnique()
    {
        Assert.Equal(Fertilizers.All.Count, Fertilizers.All.Select(product => product.Name).Distinct().Count());
        Assert.Equal(47.5, Fertilizers.Named("potassium chloride").Available(Nutrient.Chloride).Percent + 2.4, 0.5);
        Assert.Contains("Urea", Assert.Throws<ArgumentException>("name", () => Fertilizers.Named("x")).Message, StringComparison.Ordinal);
        Assert.Equal(74.4, Assert.Single(SaltIndexes.Of("urea")).Value);
    }

    [Fact]
    public void Mineralization_PastTheIncubation_IsRefusedWithTheDomain()
    {
        NitrogenMineralization leaves = NitrogenReleases.Kinetics[0];

        Assert.Contains(
            "time was 64 d; allowed: from 0 to 63 d",
            Assert.Throws<ArgumentOutOfRangeException>("time", () => leaves.Released(Duration.FromDays(64))).Message,
            StringComparison.Ordinal);
        Assert.False(leaves.Method.Domain.Contains("time", 64));
        Assert.Equal(18.8 * (1 - Math.Exp(-6.363)), leaves.Released(Duration.FromDays(63)).Value.MilligramsPerKilogram, 1e-9);
    }

    [Fact]
    public void ManureShare_Ireland_CountsSpringAlone()
    {
        Assert.Equal(25, OrganicNitrogen.ManureShare(ManureGuide.Ireland, ManureHandling.OldDugIn, ManureSeason.Spring, sandy: true).Value.Percent);
        Assert.All(
            [ManureSeason.Autumn, ManureSeason.Winter, ManureSeason.SummerGrass],
            season => Assert.Equal(0, OrganicNitrogen.ManureShare(ManureGuide.Ireland, ManureHandling.Surface, season, sandy: false).Value.Percent));
        Assert.Equal(
            OrganicNitrogen.ManureShare(ManureHandling.FreshDugIn, ManureSeason.Spring, sandy: false),
            OrganicNitrogen.ManureShare(ManureGuide.EnglandAndWales, ManureHandling.FreshDugIn, ManureSeason.Spring, sandy: false));
        Assert.Throws<ArgumentOutOfRangeException>("guide", () => OrganicNitrogen.ManureShare((ManureGuide)9, ManureHandling.Surface, ManureSeason.Spring, false));
        Assert.Throws<ArgumentOutOfRangeException>("season", () => OrganicNitrogen.ManureShare(ManureGuide.Ireland, ManureHandling.Surface, (ManureSeason)9, false));
    }

    [Fact]
    public void NitrogenToAdd_WrongInput_IsRefusedByName()
    {
        MassFraction half = MassFraction.FromPercent(50);
        Assert.Throws<ArgumentOutOfRangeException>("carbon", () => OrganicNitrogen.NitrogenToAdd(MassFraction.FromPercent(101), half, 30));
        Assert.Throws<ArgumentOutOfRangeException>("nitrogen", () => OrganicNitrogen.NitrogenToAdd(half, MassFraction.FromPercent(-1), 30));
        Assert.Throws<ArgumentOutOfRangeException>("carbonToNitrogen", () => OrganicNitrogen.NitrogenToAdd(half, half, double.NaN));
        Assert.Equal(0, OrganicNitrogen.NitrogenToAdd(MassFraction.FromPercent(40), MassFraction.FromPercent(4), 30).Percent);
    }

    [Theory]
    [InlineData(29, false)]
    [InlineData(30.5, true)]
    public void Plan_StrawyProduct_WarnsOfNitrogenTiedUp(double ratio, bool warned)
    {
        Fertilizer bark = new("bark", [new NutrientContent(Nutrient.Potassium, MassFraction.FromPercent(1))], carbonToNitrogen: ratio);
        NutrientNeed potassium = NutrientNeed.WithSlack(Nutrient.Potassium, AreaDensity.FromGramsPerSquareMeter(5), Ratio.FromPercent(10));
        FertilizerPlan plan = Fertilizing.Plan([potassium], [new FertilizerOffer(bark)], FertilizerGoal.LeastExcess);

        Assert.Equal(warned, plan.Cautions.Any(caution => caution.Code == "nutrient.nitrogen-tied-up"));
        Assert.Equal([Nutrient.Potassium], plan.Limiting);
        Assert.Throws<ArgumentOutOfRangeException>("carbonToNitrogen", () => new Fertilizer("x", bark.Contents, carbonToNitrogen: 0));
        Assert.Equal(bark, HortiCalcJson.Deserialize<Fertilizer>(HortiCalcJson.Serialize(bark)));
    }

    [Fact]
    public void Plan_LimitAlone_LimitsNothing()
    {
        FertilizerPlan plan = Fertilizing.Plan(
            [new NutrientNeed(Nutrient.Chloride, AreaDensity.Zero, AreaDensity.FromGramsPerSquareMeter(3))],
            [new FertilizerOffer(Fertilizers.Named("Urea"))],
            FertilizerGoal.LeastExcess);

        Assert.Empty(plan.Limiting);
        Assert.Equal(3, plan.Supplies[0].Room.GramsPerSquareMeter, 1e-12);
    }

    [Fact]
    public void Layer_ByVolume_RefusesTheNegativeAndCationsPerVolumeTheAluminiumAboveTheAcidity()
    {
        Assert.Throws<ArgumentOutOfRangeException>("content", () => SoilLayer.FurrowSlice.PerArea(MassConcentration.FromMilligramsPerLiter(-1)));
        Assert.Throws<ArgumentOutOfRangeException>("content", () => SoilLayer.FurrowSlice.Content(MassConcentration.FromMilligramsPerLiter(-0.1)));
        Assert.Throws<ArgumentOutOfRangeException>("content", () => SoilLayer.FurrowSlice.PerVolume(MassFraction.FromPercent(101)));
        ExchangeableCharge one = ExchangeableCharge.FromCentimolesPerKilogram(1);
        ExchangeableCations cations = new(one, one, one, one, one);
        Assert.Throws<ArgumentOutOfRangeException>("aluminium", () => cations.PerVolume(Density.FromGramsPerCubicCentimeter(1.3), one * 2));
        Assert.Throws<ArgumentOutOfRangeException>("bulkDensity", () => cations.PerVolume(Density.Zero, one));
        Assert.Equal(2.6, cations.PerVolume(Density.FromGramsPerCubicCentimeter(1.3), one).Potassium.CentimolesPerLitre, 1e-12);
    }

    [Fact]
    public void Json_EveryType_ReadsBackAsItWas()
    {
        Assert.All(Ion.All, Same);
        Assert.All(OxideFactors.All, Same);
        Assert.All(Fertilizers.All, Same);
        Assert.All(SaltIndexes.All, Same);
        Assert.All(NitrogenReleases.All, Same);
        Assert.All(NitrogenReleases.Kinetics, Same);
        Same(SoilLayer.FurrowSlice);
        Same(new ExchangeableCations(
            ExchangeableCharge.FromCentimolesPerKilogram(8),
            ExchangeableCharge.FromCentimolesPerKilogram(2),
            ExchangeableCharge.FromCentimolesPerKilogram(0.5),
            ExchangeableCharge.FromCentimolesPerKilogram(0.1),
            ExchangeableCharge.FromCentimolesPerKilogram(1)));
        Same(Nitrogen);
        FertilizerOffer urea = new(Fertilizers.Named("Urea"), Mass.FromKilograms(25), 24.50m);
        Same(urea);
        FertilizerPlan plan = Fertilizing.Plan([Nitrogen], [urea, new FertilizerOffer(Fertilizers.Named("Blood"), Mass.FromKilograms(10), 30m)], FertilizerGoal.LeastCost);
        Same(plan);
        Assert.All(plan.Lines, Same);
        Assert.All(plan.Supplies, Same);
        Same(OrganicNitrogen.Effect(12));
        Assert.Equal("\"calcium\"", HortiCalcJson.Serialize(Ion.Calcium));

        static void Same<T>(T value) => Assert.Equal(value, HortiCalcJson.Deserialize<T>(HortiCalcJson.Serialize(value)));
    }

    [Fact]
    public void ToString_AnyCulture_IsTheSame()
    {
        CultureInfo before = CultureInfo.CurrentCulture;
        try
        {
            CultureInfo.CurrentCulture = new CultureInfo("de-DE");
            Assert.Equal("Nitrogen: 10 to 11 g/m²", Nitrogen.ToString());
            Assert.Equal("Urea, 25 kg for 24.5", new FertilizerOffer(Fertilizers.Named("Urea"), Mass.FromKilograms(25), 24.5m).ToString());
            Assert.StartsWith("composted kitchen garbage: 22.4 mg/kg, 3.92 days [", NitrogenReleases.Kinetics[2].ToString(), StringComparison.Ordinal);
            Assert.StartsWith("manure compost: 7 % of its organic nitrogen in 84 days [", NitrogenReleases.All[1].ToString(), StringComparison.Ordinal);
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }
    }
}
