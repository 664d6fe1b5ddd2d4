using HortiCalc.Mixes;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Tests.Mixes;

/// <summary>The examples in the documentation comments of feeding and water, with what they promise.</summary>
public class FeedingExampleTests
{
    private static readonly SourceWater Well = new(
        WaterAlkalinity.FromCalciumCarbonate(MassConcentration.FromMilligramsPerLiter(250)), new Ph(7.6), Temperature.FromDegreesCelsius(20));

    [Fact]
    public void Example_OfSolutionIons_MakesHoagland()
    {
        SolutionIons hoagland = NutrientFormulas.HoaglandOne.Macronutrients;
        Assert.Equal(210, hoagland.Element(NutrientElement.Nitrogen).MilligramsPerLiter, 0.5);
        Assert.Equal(20, hoagland.Cations.MilliequivalentsPerLitre, 1e-9);
        Assert.Equal(2.14, SolutionConductivity.Of(hoagland).Value.MillisiemensPerCentimeter, 0.005);
    }

    [Fact]
    public void Example_OfPlan_WeighsHoagland()
    {
        NutrientPlan plan = NutrientSolution.Plan(
            NutrientFormulas.HoaglandOne.Macronutrients,
            [
                new SaltOffer(NutrientSalts.CalciumNitrate), new SaltOffer(NutrientSalts.PotassiumNitrate),
                new SaltOffer(NutrientSalts.MonopotassiumPhosphate), new SaltOffer(NutrientSalts.MagnesiumSulfate),
            ]);
        Assert.StartsWith("calcium nitrate tetrahydrate 1.18 g/L, potassium nitrate 506 mg/L, ", plan.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void Example_OfIonsOf_CountsCalcium()
    {
        SolutionIons ions = NutrientSolution.IonsOf(
        [
            new SaltAmount(NutrientSalts.GreenhouseCalciumNitrate, MassConcentration.FromGramsPerLiter(0.8)),
            new SaltAmount(NutrientSalts.MagnesiumSulfate, MassConcentration.FromGramsPerLiter(0.4)),
        ]);
        Assert.Equal(148, ions.Element(NutrientElement.Calcium).MilligramsPerLiter, 0.5);
    }

    [Fact]
    public void Example_OfGradesAndRates_Feeds()
    {
        FeedStrength feed = Feeding.StrengthOf(FeedGrade.Parse("20-10-20"), MassConcentration.FromGramsPerLiter(1));
        Assert.Equal(200, feed.Nitrogen.MilligramsPerLiter, 9);
        Assert.Equal(43.6, feed.Phosphorus.MilligramsPerLiter, 0.05);
        Assert.Equal(
            1, Feeding.RateFor(FeedGrade.Parse("15-5-15"), NutrientElement.Nitrogen, MassConcentration.FromMilligramsPerLiter(150)).GramsPerLiter, 9);
        InjectorStock tank = Feeding.Stock(
            FeedGrade.Parse("15-5-15"), NutrientElement.Nitrogen, MassConcentration.FromMilligramsPerLiter(200), MixRatio.OneIn(100), Volume.FromUsGallons(5));
        Assert.Equal(89, tank.Product.Ounces, 0.5);
        Assert.Equal(37.9, NutrientSalts.PotassiumNitrate.WithPurity(MassFraction.FromPercent(98)).Share(NutrientElement.Potassium).Percent, 0.05);
        Assert.Equal(22.7, NutrientOxides.ToElement(NutrientOxide.Phosphate, MassFraction.FromPercent(52)).Percent, 0.05);
        FeedConductivity label = new(MassConcentration.FromMilligramsPerLiter(100), ElectricConductivity.FromMillisiemensPerCentimeter(0.74));
        Assert.Equal(
            1.78,
            Feeding.ConductivityOf(label, MassConcentration.FromMilligramsPerLiter(200), ElectricConductivity.FromMillisiemensPerCentimeter(0.3))
                .Value.MillisiemensPerCentimeter,
            9);
    }

    [Fact]
    public void Example_OfAcid_TreatsAWell()
    {
        AcidDose phosphoric = AcidInjection.ToPh(Well, AcidProducts.Phosphoric75, new Ph(6), GasExchange.Closed);
        Assert.Equal(258, phosphoric.VolumeFor(Volume.FromCubicMeters(1)).Milliliters, 0.5);
        Assert.Equal(97, phosphoric.Phosphorus.MilligramsPerLiter, 0.5);
        AcidDose sulfuric = AcidInjection.ToAlkalinity(
            Well, AcidProducts.Sulfuric93, WaterAlkalinity.FromCalciumCarbonate(MassConcentration.FromMilligramsPerLiter(150)), GasExchange.Closed);
        Assert.Equal(21.7, sulfuric.VolumeFor(Volume.FromUsGallons(100)).Milliliters, 0.05);
        Assert.Equal(4.50, AcidProducts.Sulfuric35.Molarity!.Value.MolesPerLiter, 0.005);
    }

    [Fact]
    public void Example_OfChemistry_KnowsSodaAndShares()
    {
        SolutionIons soda = new(
            new IonConcentration(SolutionIon.Sodium, Molarity.FromMillimolesPerLiter(10)),
            new IonConcentration(SolutionIon.Bicarbonate, Molarity.FromMillimolesPerLiter(10)));
        Assert.Equal(8.25, WaterChemistry.PhOf(soda, Temperature.FromDegreesCelsius(25), GasExchange.Closed).Value.Value, 0.005);
        Assert.Equal(42, WaterChemistry.SharesOfCarbon(new Ph(6.5), Temperature.FromDegreesCelsius(25), Molarity.Zero).CarbonDioxide.Percent, 0.5);
        Assert.Equal(5, WaterAlkalinity.FromCalciumCarbonate(MassConcentration.FromMilligramsPerLiter(250)).MilliequivalentsPerLitre, 0.01);
        Assert.Equal(209, FertiliserSolubilities.PotassiumNitrate.At(Temperature.FromDegreesCelsius(20)).Value.GramsPerLiter, 9);
        Assert.Equal(2.3, AcidProducts.CitricDry.HydrogensPerMole(new Ph(6), Temperature.FromDegreesCelsius(25), Molarity.FromMillimolesPerLiter(4)), 0.05);
    }
}
