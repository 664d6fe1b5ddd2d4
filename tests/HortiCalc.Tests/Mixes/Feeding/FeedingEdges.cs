using System.Globalization;
using HortiCalc.Evidence;
using HortiCalc.Mixes;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Tests.Mixes;

/// <summary>What feeding refuses, and what it says at the edges.</summary>
public class FeedingEdges
{
    private static readonly SaltOffer Nitrate = new(NutrientSalts.PotassiumNitrate);

    private static IonConcentration Millimoles(SolutionIon ion, double value) => new(ion, Molarity.FromMillimolesPerLiter(value));

    private static void Refuses<T>(Func<object?> action, string parameter, params string[] parts)
        where T : ArgumentException
    {
        T refused = Assert.Throws<T>(action);
        Assert.Equal(parameter, refused.ParamName);
        Assert.All(parts, part => Assert.Contains(part, refused.Message, StringComparison.Ordinal));
    }

    [Theory]
    [InlineData(-1)]
    [InlineData(-1e-9)]
    public void IonConcentration_Impossible_IsRefused(double millimoles) => Refuses<ArgumentOutOfRangeException>(
        () => Millimoles(SolutionIon.Nitrate, millimoles), "concentration", "mmol/L", "0 mmol/L or more");

    [Fact]
    public void IonConcentration_ByWhatItLacks_IsRefused()
    {
        Refuses<ArgumentException>(() => IonConcentration.FromElement(SolutionIon.Bicarbonate, MassConcentration.FromMilligramsPerLiter(1)), "ion", "Bicarbonate");
        Refuses<ArgumentException>(() => IonConcentration.FromCharge(SolutionIon.BoricAcid, VolumetricCharge.FromMilliequivalentsPerLitre(1)), "ion", "BoricAcid");
        Refuses<ArgumentOutOfRangeException>(() => Millimoles((SolutionIon)99, 1), "ion", "99", "Nitrate");
    }

    [Fact]
    public void NutrientPlan_ForNothing_IsRefused() => Refuses<ArgumentException>(
        () => new NutrientPlan(SolutionIons.None, SolutionIons.None, []), "target", "names no ion");

    [Fact]
    public void InTanks_WithGypsum_IsRefused()
    {
        SolutionIons wanted = new(Millimoles(SolutionIon.Calcium, 1), Millimoles(SolutionIon.Sulfate, 1));
        NutrientPlan plan = NutrientSolution.Plan(wanted, [new SaltOffer(NutrientSalts.CalciumSulfate)]);

        Assert.Equal(172.2, plan.Amounts[0].Concentration.MilligramsPerLiter, 0.05);
        Refuses<ArgumentException>(
            () => plan.InTanks(Volume.FromLiters(10), MixRatio.OneIn(100), Temperature.FromDegreesCelsius(20)),
            "tankA",
            "calcium sulfate dihydrate, which hardly dissolves");
    }

    [Fact]
    public void SolutionIons_NamingAnIonTwice_AreRefused() => Refuses<ArgumentException>(
        () => new SolutionIons(Millimoles(SolutionIon.Nitrate, 1), Millimoles(SolutionIon.Nitrate, 2)), "concentrations", "Nitrate", "each ion once");

    [Fact]
    public void SolutionIons_OfPureWater_AreNothing()
    {
        SolutionIons none = new(Millimoles(SolutionIon.Nitrate, 0));
        Assert.Equal(SolutionIons.None, none);
        Assert.Equal(0, none.ChargeImbalance.Percent);
        Assert.Equal(0, none.IonicStrength.MolesPerLiter);
        Assert.Equal("nothing dissolved", none.ToString());
        Assert.Equal(0, SolutionConductivity.Of(none).Value.MillisiemensPerCentimeter);
    }

    [Fact]
    public void NutrientSalt_ThatCannotBe_IsRefused()
    {
        MassFraction pure = MassFraction.FromPercent(100);
        SaltIon potassium = new(SolutionIon.Potassium, 1);
        SaltIon nitrate = new(SolutionIon.Nitrate, 1);
        Refuses<ArgumentException>(() => new NutrientSalt("x", "x", "KNO3", [potassium], pure), "ions", "charge of 1");
        Refuses<ArgumentException>(() => new NutrientSalt("x", "x", "KNO3", [potassium, nitrate, potassium], pure), "ions", "twice");
        Refuses<ArgumentException>(() => new NutrientSalt("x", "x", "NaNO3", [potassium, nitrate], pure), "ions", "Potassium", "NaNO3");
        Refuses<ArgumentException>(() => new NutrientSalt("x", "x", "Kno3", [potassium, nitrate], pure), "formula", "Kno3");
        Refuses<ArgumentOutOfRangeException>(
            () => NutrientSalts.PotassiumNitrate.WithPurity(MassFraction.FromPercent(101)), "purity", "101 % by mass", "from 0 to 100 % by mass");
        Refuses<ArgumentOutOfRangeException>(() => NutrientSalts.PotassiumNitrate.WithPurity(MassFraction.Zero), "purity", "0 % by mass", "greater than 0");
        Refuses<ArgumentException>(() => NutrientSalts.FromKey("saltpetre"), "key", "saltpetre", "potassium-nitrate");
    }

    [Theory]
    [InlineData("Ca(NO3)2.4H2O", 236.146)]
    [InlineData("5Ca(NO3)2.NH4NO3.10H2O", 1080.623)]
    [InlineData("CO(NH2)2", 60.056)]
    [InlineData("Na2MoO4·2H2O", 241.956)]
    public void ChemicalFormula_OfHydrates_AddsUpByHand(string formula, double gramsPerMole) =>
        Assert.Equal(gramsPerMole, ChemicalFormula.GramsPerMole(formula), 0.002);

    [Theory]
    [InlineData("")]
    [InlineData("Ca(NO3")]
    [InlineData("CaNO3)2")]
    [InlineData("Xx2")]
    [InlineData("2")]
    [InlineData("K NO3")]
    public void ChemicalFormula_Unreadable_IsRefused(string formula) =>
        Assert.Contains("formula", Assert.Throws<FormatException>(() => ChemicalFormula.GramsPerMole(formula.Length == 0 ? "?" : formula)).Message, StringComparison.Ordinal);

    [Fact]
    public void Plan_WithoutTargetOrOffers_IsRefused()
    {
        SolutionIons target = new(Millimoles(SolutionIon.Nitrate, 5));
        Refuses<ArgumentException>(() => NutrientSolution.Plan(SolutionIons.None, [Nitrate]), "target", "names no ion");
        Refuses<ArgumentException>(() => NutrientSolution.Plan(target, []), "offers", "is empty");
        Refuses<ArgumentException>(() => NutrientSolution.Plan(target, [Nitrate, Nitrate]), "offers", "twice");
        Refuses<ArgumentException>(() => NutrientSolution.PlanAtLeastCost(target, [Nitrate], Ratio.FromPercent(5)), "offers", "no price for potassium nitrate");
        Refuses<ArgumentOutOfRangeException>(
            () => NutrientSolution.PlanAtLeastCost(target, [new SaltOffer(NutrientSalts.PotassiumNitrate, 1)], Ratio.FromPercent(101)), "tolerance", "101 %", "from 0 to 100 %");
        Refuses<ArgumentOutOfRangeException>(() => new SaltOffer(NutrientSalts.PotassiumNitrate, -1), "pricePerKilogram", "-1");
    }

    [Fact]
    public void PlanAtLeastCost_OutOfReach_IsNull()
    {
        SolutionIons target = new(Millimoles(SolutionIon.Nitrate, 5), Millimoles(SolutionIon.Potassium, 1), Millimoles(SolutionIon.Calcium, 2));
        Assert.Null(NutrientSolution.PlanAtLeastCost(target, [new SaltOffer(NutrientSalts.PotassiumNitrate, 1)], Ratio.FromPercent(5)));
    }

    [Fact]
    public void Plan_WhoseTargetDoesNotBalance_SaysSoAndStatesTheResidual()
    {
        SolutionIons target = new(Millimoles(SolutionIon.Nitrate, 5), Millimoles(SolutionIon.Potassium, 3));
        NutrientPlan plan = NutrientSolution.Plan(target, [Nitrate]);

        Assert.Contains(plan.Cautions, caution => caution.Code == "feed.target-unbalanced");
        Assert.Contains(plan.Cautions, caution => caution.Code == "feed.not-reached");
        Assert.All(plan.Residuals, ion => Assert.NotEqual(0, ion.Difference.MolesPerLiter));

        // Least squares of (x/5 - 1)² + (x/3 - 1)²: x = (1/5 + 1/3)/(1/25 + 1/9).
        Assert.Equal((1 / 5.0 + 1 / 3.0) / (1 / 25.0 + 1 / 9.0), plan.Ions[SolutionIon.Potassium].MillimolesPerLiter, 1e-9);
    }

    [Fact]
    public void Plan_WithMoreInTheWaterThanWanted_StatesTheExcess()
    {
        SolutionIons target = new(Millimoles(SolutionIon.Calcium, 2), Millimoles(SolutionIon.Nitrate, 4));
        SolutionIons water = new(Millimoles(SolutionIon.Calcium, 3), Millimoles(SolutionIon.Chloride, 6));
        NutrientPlan plan = NutrientSolution.Plan(target, [new SaltOffer(NutrientSalts.CalciumNitrate), Nitrate], water);

        IonResidual calcium = plan.Residuals.Single(ion => ion.Ion == SolutionIon.Calcium);
        Assert.True(calcium.Difference.MillimolesPerLiter >= 1 - 1e-9);
        Assert.All(plan.Amounts, amount => Assert.True(amount.Concentration.MilligramsPerLiter >= 0));
        Assert.Contains(plan.Residuals, ion => ion.Ion == SolutionIon.Chloride && ion.Wanted.MolesPerLiter == 0);
    }

    [Fact]
    public void Plan_WithoutPrices_HasNoCost()
    {
        NutrientPlan plan = NutrientSolution.Plan(NutrientFormulas.HoaglandOne.Macronutrients, [new SaltOffer(NutrientSalts.CalciumNitrate, 2m), Nitrate]);
        Assert.Null(plan.CostFor(Volume.FromCubicMeters(1)));
        Assert.Equal(0m, plan.CostFor(Volume.Zero));
        NutrientPlan priced = new(plan.Target, plan.Water, [new SaltAmount(NutrientSalts.PotassiumNitrate, MassConcentration.FromGramsPerLiter(0.5), 3m)]);
        Assert.Equal(1.5m, priced.CostFor(Volume.FromCubicMeters(1))!.Value, 9);
    }

    [Fact]
    public void StockPlan_WithCalciumBesideSulfate_IsRefused()
    {
        StockSalt Salt(NutrientSalt salt) => new(salt, Mass.FromKilograms(1), MassConcentration.FromGramsPerLiter(10), null);
        Refuses<ArgumentException>(
            () => new StockPlan(Volume.FromLiters(100), MixRatio.OneIn(100), [Salt(NutrientSalts.CalciumNitrate), Salt(NutrientSalts.MagnesiumSulfate)], [], []),
            "tankA",
            "sludge");
        Refuses<ArgumentException>(
            () => new StockPlan(
                Volume.FromLiters(100), MixRatio.OneIn(100), [], [Salt(NutrientSalts.MonopotassiumPhosphate), Salt(NutrientSalts.CalciumChloride)], []),
            "tankB",
            "calcium apart");
    }

    [Fact]
    public void InTanks_TooStrongToDissolve_SaysSo()
    {
        NutrientPlan plan = NutrientSolution.Plan(
            NutrientFormulas.HoaglandOne.Macronutrients,
            [
                new SaltOffer(NutrientSalts.CalciumNitrate), Nitrate, new SaltOffer(NutrientSalts.MonopotassiumPhosphate),
                new SaltOffer(NutrientSalts.MagnesiumSulfate),
            ]);
        StockPlan mild = plan.InTanks(Volume.FromLiters(50), MixRatio.OneIn(100), Temperature.FromDegreesCelsius(10));
        StockPlan strong = plan.InTanks(Volume.FromLiters(50), MixRatio.OneIn(500), Temperature.FromDegreesCelsius(10));

        Assert.True(mild.Dissolves);
        Assert.False(strong.Dissolves);
        Assert.Contains(strong.Cautions, caution => caution.Code == "feed.too-strong");
        Assert.Contains("too strong to dissolve", strong.ToString(), StringComparison.Ordinal);
        Assert.Null(strong.TankB.Single(salt => salt.Salt == NutrientSalts.MagnesiumSulfate).ShareOfSolubility);
        Refuses<ArgumentOutOfRangeException>(() => plan.InTanks(Volume.Zero, MixRatio.OneIn(100), Temperature.FromDegreesCelsius(10)), "stock", "0 L");
    }

    [Theory]
    [InlineData(4.9)]
    [InlineData(40.1)]
    public void Solubility_OutsideTheTable_IsRefused(double celsius)
    {
        Refuses<ArgumentOutOfRangeException>(
            () => FertiliserSolubilities.PotassiumNitrate.At(Temperature.FromDegreesCelsius(celsius)),
            "temperature",
            celsius.ToString(CultureInfo.InvariantCulture),
            "from 5 to 40 °C");
        Assert.Contains(
            FertiliserSolubilities.PotassiumNitrate.At(Temperature.FromDegreesCelsius(20)).Cautions, caution => caution.Code == "feed.solubility-printed-low");
    }

    [Fact]
    public void FeedGrade_ThatIsNone_IsRefused()
    {
        foreach (string text in new[] { "20-10", "20-10-20-5", "a-b-c", "-1-2-3", "0-0-0", "120-0-0", "40-40-40", "20,5-10-20" })
            Assert.Contains("grade", Assert.Throws<FormatException>(() => FeedGrade.Parse(text)).Message, StringComparison.Ordinal);
        Refuses<ArgumentOutOfRangeException>(
            () => new FeedGrade(MassFraction.FromPercent(10), MassFraction.FromPercent(101), MassFraction.Zero), "phosphate", "101 % by mass");
        Refuses<ArgumentOutOfRangeException>(
            () => new FeedGrade(MassFraction.FromPercent(40), MassFraction.FromPercent(40), MassFraction.FromPercent(40)), "nitrogen", "120 %", "100 % or less");
        Assert.Equal("12.5-0-44", FeedGrade.Parse("12.5-0-44").ToString());
        Assert.Equal("12,5-0-44", FeedGrade.Parse("12.5-0-44").ToString(null, CultureInfo.GetCultureInfo("de-DE")));
    }

    [Fact]
    public void RateFor_WhatTheProductLacks_IsRefused()
    {
        FeedGrade calciumNitrate = FeedGrade.Parse("15.5-0-0");
        MassConcentration wanted = MassConcentration.FromMilligramsPerLiter(30);
        Refuses<ArgumentException>(() => Feeding.RateFor(calciumNitrate, NutrientElement.Potassium, wanted), "grade", "0 % of Potassium");
        Refuses<ArgumentException>(() => Feeding.RateFor(calciumNitrate, NutrientElement.Calcium, wanted), "element", "Calcium");
        Refuses<ArgumentOutOfRangeException>(() => Feeding.RateFor(calciumNitrate, NutrientElement.Nitrogen, -wanted), "wanted", "-30 mg/L");
        Refuses<ArgumentOutOfRangeException>(() => Feeding.StrengthOf(calciumNitrate, -wanted), "rate", "-30 mg/L", "0 mg/L or more");
        Refuses<ArgumentOutOfRangeException>(
            () => Feeding.NitrogenFromConductivity(
                new FeedConductivity(wanted, ElectricConductivity.FromMillisiemensPerCentimeter(1)),
                ElectricConductivity.FromMillisiemensPerCentimeter(0.2),
                ElectricConductivity.FromMillisiemensPerCentimeter(0.5)),
            "reading",
            "0.2 mS/cm",
            "0.5 mS/cm or more");
    }

    [Fact]
    public void Conductivity_OutsideTheMethod_IsRefused()
    {
        SolutionIons strong = new(Millimoles(SolutionIon.Potassium, 150), Millimoles(SolutionIon.Chloride, 150));
        SolutionIons ammonium = new(Millimoles(SolutionIon.Ammonium, 2), Millimoles(SolutionIon.Nitrate, 2));
        Refuses<ArgumentOutOfRangeException>(() => SolutionConductivity.Of(strong), "ionicStrength", "0.15 mol/L", "from 0 to 0.1 mol/L");
        Refuses<ArgumentOutOfRangeException>(
            () => SolutionConductivity.Of(ammonium, ConductivityMethod.IonFactors), "solution", "ammonium", "no factor");
        Refuses<ArgumentOutOfRangeException>(
            () => SolutionConductivity.Of(ammonium, ConductivityMethod.CationSum), "cations", "2 meq/L", "from 10 to 50 meq/L");
        Assert.False(ConductivityMethod.DiffusionCoefficients.Evidence.Domain.Contains("ionicStrength", 0.15));
        Refuses<ArgumentException>(() => ConductivityMethod.FromKey("by-taste"), "key", "by-taste", "conductivity.cation-sum");
        Assert.Null(SolutionConductivity.LimitingPerMillimole(SolutionIon.BoricAcid));
    }

    [Fact]
    public void Conductivity_OfAMeterStandard_IsWithinAThirdOfAPerCent()
    {
        // 0.01 mol/kg of potassium chloride: 1408.23 µS/cm by the National Institute of Standards and Technology.
        SolutionIons standard = new(Millimoles(SolutionIon.Potassium, 9.967), Millimoles(SolutionIon.Chloride, 9.967));
        Assert.Equal(1, SolutionConductivity.Of(standard).Value.MicrosiemensPerCentimeter / 1408.23, 0.0033);
    }

    [Fact]
    public void Conductivity_OfSulfates_IsLessThanOfChloridesAtTheSameCharge()
    {
        SolutionIons epsom = new(Millimoles(SolutionIon.Magnesium, 5), Millimoles(SolutionIon.Sulfate, 5));
        SolutionIons chloride = new(Millimoles(SolutionIon.Magnesium, 5), Millimoles(SolutionIon.Chloride, 10));
        Assert.True(SolutionConductivity.Of(epsom).Value.MillisiemensPerCentimeter < 0.8 * SolutionConductivity.Of(chloride).Value.MillisiemensPerCentimeter);
    }

    [Fact]
    public void TwelveStandard_Solutions_BalanceApartFromTheFirst()
    {
        Assert.True(Math.Abs(NutrientFormulas.TwelveStandard[0].ChargeImbalance.Percent) > 5);
        Assert.All(NutrientFormulas.TwelveStandard.Skip(1), solution => Assert.InRange(solution.ChargeImbalance.Percent, -1.5, 1.5));
    }

    [Fact]
    public void TwelveStandard_Solutions_CanBeMadeFromSalts() => Assert.All(NutrientFormulas.TwelveStandard.Skip(1), target =>
    {
        NutrientPlan plan = NutrientSolution.Plan(target, [.. NutrientSalts.All.Select(salt => new SaltOffer(salt))]);

        // The iron chelate brings its sodium, and where the printed ions do not balance something must give: the main ions keep within 4 %.
        SolutionIon[] main = [SolutionIon.Potassium, SolutionIon.Calcium, SolutionIon.Magnesium, SolutionIon.Nitrate, SolutionIon.DihydrogenPhosphate, SolutionIon.Sulfate];
        Assert.All(main, ion => Assert.Equal(1, plan.Ions[ion] / target[ion], 0.04));
    });

    [Fact]
    public void Cornell_LeafyGreens_AreMetByHoagland()
    {
        IReadOnlyList<NutrientRange> missed = NutrientTargets.LeafyGreensObserved.MissedBy(NutrientFormulas.HoaglandTwo.Macronutrients);
        Assert.DoesNotContain(missed, range => range.Element is NutrientElement.Phosphorus or NutrientElement.Potassium or NutrientElement.Magnesium);
        Assert.Contains(missed, range => range.Element == NutrientElement.Iron);
    }

    [Fact]
    public void Texts_InMetricAndUsUnits_AreOneHonestLine()
    {
        InjectorStock tank = Feeding.Stock(
            FeedGrade.Parse("15-5-15"), NutrientElement.Nitrogen, MassConcentration.FromMilligramsPerLiter(200), MixRatio.OneIn(100), Volume.FromUsGallons(5));
        Assert.Equal(
            "2.52 kg in 18.9 L, one in 100 of the feed; 1.33 g/L of product: nitrogen 200 mg/L, phosphorus 29.1 mg/L, potassium 166 mg/L", tank.ToString());
        Assert.StartsWith("5.56 lb in 640 fl oz", tank.ToString("U", null).Replace("5 gal (US)", "640 fl oz", StringComparison.Ordinal), StringComparison.Ordinal);
        Assert.Throws<FormatException>(() => tank.ToString("Z", null));
        NutrientPlan plan = NutrientSolution.Plan(NutrientFormulas.HoaglandOne.Macronutrients, [new SaltOffer(NutrientSalts.CalciumNitrate), Nitrate]);
        Assert.Contains("calcium nitrate tetrahydrate", plan.ToString(), StringComparison.Ordinal);
        Assert.Contains("from what was wanted", plan.ToString(), StringComparison.Ordinal);
        Assert.Contains("cations 20, anions 20 meq/L", NutrientFormulas.HoaglandOne.Macronutrients.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void Feeding_InACultureWithCommas_IsTheSame()
    {
        CultureInfo before = CultureInfo.CurrentCulture;
        string invariant = NutrientFormulas.HoaglandOne.Ions.ToString();
        try
        {
            CultureInfo.CurrentCulture = CultureInfo.GetCultureInfo("de-DE");
            Assert.Equal(invariant, NutrientFormulas.HoaglandOne.Ions.ToString());
            Assert.Equal("20-10-20", FeedGrade.Parse("20-10-20").ToString());
            Assert.Equal(101.102, ChemicalFormula.GramsPerMole("KNO3"), 0.001);
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }
    }

    [Fact]
    public void Cautions_WithAcid_StateTheDangersFirst()
    {
        NutrientPlan plan = NutrientSolution.Plan(
            new SolutionIons(Millimoles(SolutionIon.Nitrate, 2)),
            [new SaltOffer(NutrientSalts.NitricAcid)],
            new SolutionIons(Millimoles(SolutionIon.Sodium, 2), Millimoles(SolutionIon.Bicarbonate, 2)));
        Assert.Equal(CautionLevel.Danger, plan.Cautions[0].Level);
        Assert.Contains(plan.Cautions, caution => caution.Code == "bleach.never-with-acid");
    }
}
