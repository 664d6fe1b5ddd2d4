using HortiCalc.Evidence;
using HortiCalc.Mixes;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Tests.Mixes;

/// <summary>What acid in water refuses, what it warns of, and what it says at the edges.</summary>
public class AlkalinityEdges
{
    private static readonly SourceWater Well = new(
        WaterAlkalinity.FromCalciumCarbonate(MassConcentration.FromMilligramsPerLiter(250)), new Ph(7.6), Temperature.FromDegreesCelsius(20));

    private static void Refuses<T>(Func<object?> action, string parameter, params string[] parts)
        where T : ArgumentException
    {
        T refused = Assert.Throws<T>(action);
        Assert.Equal(parameter, refused.ParamName);
        Assert.All(parts, part => Assert.Contains(part, refused.Message, StringComparison.Ordinal));
    }

    private static VolumetricCharge Meq(double value) => VolumetricCharge.FromMilliequivalentsPerLitre(value);

    [Fact]
    public void SourceWater_ThatCannotBe_IsRefused()
    {
        Temperature warm = Temperature.FromDegreesCelsius(20);
        Refuses<ArgumentOutOfRangeException>(() => new SourceWater(Meq(0), new Ph(7), warm), "alkalinity", "0 meq/L", "greater than 0");
        Refuses<ArgumentOutOfRangeException>(() => new SourceWater(Meq(70), new Ph(7), warm), "alkalinity", "mol/L", "0.1");
        Refuses<ArgumentOutOfRangeException>(() => new SourceWater(Meq(3), new Ph(4.9), warm), "ph", "4.9 pH", "from 5 to 10");
        Refuses<ArgumentOutOfRangeException>(() => new SourceWater(Meq(0.01), new Ph(9.9), warm), "ph", "9.9", "hydroxide");
        Refuses<ArgumentOutOfRangeException>(
            () => new SourceWater(Meq(3), new Ph(7), Temperature.FromDegreesCelsius(51)), "temperature", "51 °C", "from 0 to 50 °C");
        Refuses<ArgumentOutOfRangeException>(
            () => new SourceWater(Meq(3), new Ph(7), warm, Molarity.FromMillimolesPerLiter(2)), "ionicStrength", "0.002 mol/L", "from 0.003");
        Refuses<ArgumentOutOfRangeException>(
            () => SourceWater.IonicStrengthFromConductivity(ElectricConductivity.FromMillisiemensPerCentimeter(-1)), "conductivity", "-1 mS/cm");
    }

    [Fact]
    public void WaterAlkalinity_BelowZero_IsRefused()
    {
        MassConcentration negative = MassConcentration.FromMilligramsPerLiter(-1);
        Refuses<ArgumentOutOfRangeException>(() => WaterAlkalinity.FromCarbonate(negative), "asCarbonate", "-1 mg/L", "0 mg/L or more");
        Refuses<ArgumentOutOfRangeException>(() => WaterAlkalinity.FromCalciumOxide(negative), "asCalciumOxide", "-1 mg/L", "0 mg/L or more");
        Volume cup = Volume.FromMilliliters(50);
        Refuses<ArgumentOutOfRangeException>(() => WaterAlkalinity.FromTitration(-cup, Meq(20), cup), "acid", "-0.05 L", "0 L or more");
        Refuses<ArgumentOutOfRangeException>(() => WaterAlkalinity.FromTitration(cup, Meq(20), Volume.Zero), "sample", "0 L", "greater than 0");
    }

    [Fact]
    public void ToPh_OfTwoWaters_NeedsAcidForAlkalinityNotForPh()
    {
        // Waters of a lecture of the University of Concepción: the one of higher pH needs less than a quarter of the acid of the other, to pH 5.8.
        Temperature warm = Temperature.FromDegreesCelsius(20);
        double MillimolesFor(double meq, double ph) => AcidInjection
            .ToPh(new SourceWater(Meq(meq), new Ph(ph), warm), AcidProducts.Nitric67, new Ph(5.8), GasExchange.Closed).Amount.MillimolesPerLiter;

        Assert.True(MillimolesFor(6.2, 8.3) > 4 * MillimolesFor(1.42, 9.3));
    }

    [Fact]
    public void ToAlkalinity_HalfAMilliequivalentLeft_IsNearTheSameLecturesPh()
    {
        // "5.3 to 5.5" for half a milliequivalent left, without saying of how much: so it is in waters of 5 to 6 meq/L, while the carbon dioxide stays.
        SourceWater hard = new(Meq(5), new Ph(8), Temperature.FromDegreesCelsius(20));
        Assert.InRange(AcidInjection.ToAlkalinity(hard, AcidProducts.Nitric67, Meq(0.5), GasExchange.Closed).Ph.Value, 5.3, 5.5);
    }

    [Fact]
    public void AcidProduct_ThatCannotBe_IsRefused()
    {
        Refuses<ArgumentOutOfRangeException>(() => new AcidProduct(WaterAcid.Nitric, MassFraction.FromPercent(101), null), "strength", "101", "100 % by mass");
        Refuses<ArgumentOutOfRangeException>(() => new AcidProduct(WaterAcid.Nitric, MassFraction.Zero, null), "strength", "greater than 0");
        Refuses<ArgumentOutOfRangeException>(() => new AcidProduct(WaterAcid.Nitric, MassFraction.FromPercent(60), Density.Zero), "density", "0 kg/m³");
        Refuses<ArgumentOutOfRangeException>(() => new AcidProduct((WaterAcid)9, MassFraction.FromPercent(60), null), "acid", "9", "Sulfuric");
    }

    [Theory]
    [InlineData(3.9)]
    [InlineData(10.1)]
    public void ToPh_OutsideTheMethod_IsRefused(double ph) => Refuses<ArgumentOutOfRangeException>(
        () => AcidInjection.ToPh(Well, AcidProducts.Citric50, new Ph(ph), GasExchange.Closed), "target", "from 4 to 10 pH");

    [Fact]
    public void Add_OutsideTheMethod_IsRefused()
    {
        Refuses<ArgumentOutOfRangeException>(
            () => AcidInjection.Add(Well, AcidProducts.Nitric67, Molarity.FromMolesPerLiter(0.11), GasExchange.Closed), "amount", "0.11 mol/L", "0.1 mol/L");
        Refuses<ArgumentOutOfRangeException>(
            () => AcidInjection.Add(Well, AcidProducts.Nitric67, Molarity.FromMolesPerLiter(-0.001), GasExchange.Closed), "amount", "-0.001 mol/L");
        Refuses<ArgumentException>(
            () => AcidInjection.AddVolume(Well, AcidProducts.CitricDry, VolumeConcentration.FromPercent(0.01), GasExchange.Closed), "acid", "no density");
        Refuses<ArgumentOutOfRangeException>(
            () => AcidInjection.Titration(Well, AcidProducts.Nitric67, Molarity.FromMillimolesPerLiter(5), 1, GasExchange.Closed), "points", "2 or more");
        Refuses<ArgumentOutOfRangeException>(
            () => AcidInjection.Add(Well, AcidProducts.Nitric67, Molarity.Zero, (GasExchange)7), "exchange", "7", "OpenToAir");
        Assert.Throws<InvalidOperationException>(
            () => AcidInjection.ToPh(Well, AcidProducts.CitricDry, new Ph(6), GasExchange.Closed).VolumeFor(Volume.FromLiters(1)));
    }

    [Fact]
    public void ToPh_WhereTheWaterIsThere_IsNothingWithACaution()
    {
        AcidDose dose = AcidInjection.ToPh(Well, AcidProducts.Sulfuric93, new Ph(7.8), GasExchange.Closed);
        Assert.Equal(0, dose.Amount.MolesPerLiter);
        Assert.Equal("acid.already-there", Assert.Single(dose.Cautions).Code);
        Assert.Equal(0, dose.EquivalentsPerMole);
        AcidDose other = AcidInjection.ToAlkalinity(Well, AcidProducts.Sulfuric93, Meq(5), GasExchange.Closed);
        Assert.Equal("acid.already-there", Assert.Single(other.Cautions).Code);
    }

    [Fact]
    public void ToPh_InAnOpenTank_TakesMoreThanInAPipe() => Assert.True(
        AcidInjection.ToPh(Well, AcidProducts.Sulfuric93, new Ph(6.5), GasExchange.OpenToAir).Amount
            > 1.5 * AcidInjection.ToPh(Well, AcidProducts.Sulfuric93, new Ph(6.5), GasExchange.Closed).Amount);

    [Fact]
    public void Add_TooMuch_LeavesFreeAcid()
    {
        AcidDose dose = AcidInjection.Add(Well, AcidProducts.Nitric67, Molarity.FromMillimolesPerLiter(7), GasExchange.Closed);
        Assert.Equal(0, dose.Alkalinity.MilliequivalentsPerLitre);
        Assert.Equal(7 - Well.Alkalinity.MilliequivalentsPerLitre, dose.FreeAcid.MilliequivalentsPerLitre, 1e-9);
        Assert.Equal(1, dose.EquivalentsPerMole, 1e-9);
    }

    [Fact]
    public void Dose_OfAnyAcid_WarnsOfWaterEyesAndTraining()
    {
        Assert.All(AcidProducts.All, acid =>
        {
            AcidDose dose = AcidInjection.ToPh(Well, acid, new Ph(6), GasExchange.Closed);
            Assert.Equal(CautionLevel.Danger, dose.Cautions[0].Level);
            Assert.Contains(dose.Cautions, caution => caution.Code == "acid.into-water");
            Assert.Contains(dose.Cautions, caution => caution.Code == "acid.eyes-and-skin");
            Assert.Contains(dose.Cautions, caution => caution.Code == "acid.trained-users");
            Assert.Equal(acid.Acid == WaterAcid.Sulfuric, dose.Cautions.Any(caution => caution.Code == "acid.sulfuric-licensed"));
            Assert.Equal(acid.Acid == WaterAcid.Nitric, dose.Cautions.Any(caution => caution.Code == "acid.nitric-fumes"));
        });
        Assert.Contains(
            AcidInjection.ToPh(Well, AcidProducts.Phosphoric75, new Ph(6), GasExchange.Closed).Cautions, caution => caution.Code == "acid.much-phosphorus");
        Assert.DoesNotContain(
            AcidInjection.ToPh(Well, AcidProducts.Phosphoric75, new Ph(7), GasExchange.Closed).Cautions, caution => caution.Code == "acid.much-phosphorus");
        Assert.DoesNotContain(
            AcidInjection.ToPh(Well, AcidProducts.Nitric67, new Ph(7), GasExchange.OpenToAir).Cautions, caution => caution.Code == "acid.ph-rises-in-air");
    }

    [Fact]
    public void PhosphoricAcid_ByPh_GivesUpOneHydrogenAndMoreAboveSix()
    {
        Temperature warm = Temperature.FromDegreesCelsius(25);
        double Of(double ph) => AcidProducts.Phosphoric75.HydrogensPerMole(new Ph(ph), warm, Molarity.Zero);
        Assert.Equal(1.0, Of(4.67), 0.006);
        Assert.Equal(1.5, Of(7.198), 0.001);
        Assert.Equal(2.0, Of(9.79), 0.006);
    }

    [Fact]
    public void Constants_AtTwentyFive_AreThoseOfTheDatabases()
    {
        EquilibriumConstants constants = new(25);
        Assert.Equal(1.988, constants.Bisulfate, 0.001);

        // The analytic expression; the same database prints 9.252 as log K, minteq.v4.dat 9.244.
        Assert.Equal(9.244, constants.Ammonium, 0.001);
        Assert.Equal(2.148, constants.FirstPhosphoric, 1e-9);
        Assert.Equal(7.198, constants.SecondPhosphoric, 1e-9);
        Assert.Equal(12.375, constants.ThirdPhosphoric, 1e-9);
        Assert.Equal(3.128, constants.FirstCitric, 1e-9);
        Assert.Equal(4.761, constants.SecondCitric, 1e-9);
        Assert.Equal(6.396, constants.ThirdCitric, 1e-9);
        Assert.Equal(0.51, Activity.DebyeHuckelSlope(25), 0.002);
    }

    [Fact]
    public void PhOf_OutsideTheMethod_IsRefused()
    {
        SolutionIons strong = new(
            new IonConcentration(SolutionIon.Sodium, Molarity.FromMolesPerLiter(0.8)), new IonConcentration(SolutionIon.Chloride, Molarity.FromMolesPerLiter(0.8)));
        Refuses<ArgumentOutOfRangeException>(
            () => WaterChemistry.PhOf(strong, Temperature.FromDegreesCelsius(25), GasExchange.Closed), "ionicStrength", "0.8 mol/L", "from 0 to 0.5 mol/L");
        Refuses<ArgumentOutOfRangeException>(
            () => WaterChemistry.PhOf(SolutionIons.None, Temperature.FromDegreesCelsius(-1), GasExchange.Closed), "temperature", "-1 °C");
        Refuses<ArgumentOutOfRangeException>(
            () => WaterChemistry.SharesOfCarbon(new Ph(7), Temperature.FromDegreesCelsius(20), Molarity.FromMolesPerLiter(0.6)), "ionicStrength", "0.6 mol/L");
    }

    [Fact]
    public void PhOf_PureWater_IsHalfThePkOfWater()
    {
        foreach (double celsius in new[] { 0.0, 10, 25, 50 })
        {
            Temperature temperature = Temperature.FromDegreesCelsius(celsius);
            Assert.Equal(
                WaterChemistry.PkOfWater(temperature) / 2, WaterChemistry.PhOf(SolutionIons.None, temperature, GasExchange.Closed).Value.Value, 1e-9);
        }

        // Rain in balance with the air.
        Assert.Equal(5.6, WaterChemistry.PhOf(SolutionIons.None, Temperature.FromDegreesCelsius(25), GasExchange.OpenToAir).Value.Value, 0.05);
    }

    [Fact]
    public void SourceWaterLimits_OfASaltyWater_NameWhatItBreaks()
    {
        SolutionIons salty = new(
            IonConcentration.FromMass(SolutionIon.Sodium, MassConcentration.FromMilligramsPerLiter(80)),
            IonConcentration.FromMass(SolutionIon.Chloride, MassConcentration.FromMilligramsPerLiter(123)));
        Assert.Equal(SolutionIon.Sodium, Assert.Single(SourceWaterLimits.BrokenBy(salty, SourceWaterLimits.Hydroponics)).Ion);
        Assert.Empty(SourceWaterLimits.BrokenBy(SolutionIons.None, SourceWaterLimits.Hydroponics));
        Assert.Throws<ArgumentNullException>(() => SourceWaterLimits.BrokenBy(null!, SourceWaterLimits.Hydroponics));
    }

    [Fact]
    public void Dose_AsText_IsOneHonestLine()
    {
        AcidDose dose = AcidInjection.ToAlkalinity(
            Well, AcidProducts.Sulfuric93, WaterAlkalinity.FromCalciumCarbonate(MassConcentration.FromMilligramsPerLiter(150)), GasExchange.Closed);
        Assert.StartsWith("sulfuric acid 93 %, 57.4 mL to 1 m³ of water: pH 6.46, alkalinity 3 meq/L; ", dose.ToString(), StringComparison.Ordinal);
        Assert.StartsWith(
            "sulfuric acid 93 %, 0.735 fl oz to 100 gal (US) of water: pH 6.46, alkalinity 150 ppm as calcium carbonate; ", dose.ToString("U", null), StringComparison.Ordinal);
        Assert.Throws<FormatException>(() => dose.ToString("Z", null));
    }
}
