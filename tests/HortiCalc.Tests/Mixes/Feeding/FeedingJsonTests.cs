using System.Text.Json;
using System.Text.Json.Serialization.Metadata;
using HortiCalc.Json;
using HortiCalc.Mixes;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Tests.Mixes;

/// <summary>Every input and result of feeding and of water survives storage.</summary>
public class FeedingJsonTests
{
    private static readonly SourceWater Well = new(
        WaterAlkalinity.FromCalciumCarbonate(MassConcentration.FromMilligramsPerLiter(250)), new Ph(7.6), Temperature.FromDegreesFahrenheit(68));

    private static void RoundTrips<T>(T value, JsonTypeInfo<T> type)
    {
        string json = JsonSerializer.Serialize(value, type);
        Assert.Equal(value, JsonSerializer.Deserialize(json, type));
    }

    [Fact]
    public void Solutions_SaltsAndFormulas_RoundTrip()
    {
        Assert.All(NutrientSalts.All, salt => RoundTrips(salt, HortiCalcJsonContext.Default.NutrientSalt));
        Assert.All(NutrientFormulas.TwelveStandard, solution => RoundTrips(solution, HortiCalcJsonContext.Default.SolutionIons));
        Assert.All(NutrientTargets.All, target => RoundTrips(target, HortiCalcJsonContext.Default.NutrientTarget));
        RoundTrips(NutrientFormulas.HoaglandOne, HortiCalcJsonContext.Default.NutrientFormula);
        RoundTrips(new SaltOffer(NutrientSalts.Urea.WithPurity(MassFraction.FromPercent(98)), 0.9m), HortiCalcJsonContext.Default.SaltOffer);
        RoundTrips(new IonConcentration(SolutionIon.Zinc, Molarity.FromMicromolesPerLiter(5)), HortiCalcJsonContext.Default.IonConcentration);
    }

    [Fact]
    public void Plans_AndTheirTanks_RoundTrip()
    {
        NutrientPlan plan = NutrientSolution.Plan(
            NutrientFormulas.HoaglandTwo.Macronutrients,
            [new SaltOffer(NutrientSalts.CalciumNitrate, 1.2m), new SaltOffer(NutrientSalts.PotassiumNitrate), new SaltOffer(NutrientSalts.MonoammoniumPhosphate)]);
        RoundTrips(plan, HortiCalcJsonContext.Default.NutrientPlan);
        RoundTrips(plan.InTanks(Volume.FromUsGallons(50), MixRatio.OneIn(100), Temperature.FromDegreesCelsius(12)), HortiCalcJsonContext.Default.StockPlan);
        RoundTrips(plan.Residuals[0], HortiCalcJsonContext.Default.IonResidual);
        RoundTrips(plan.Amounts[0], HortiCalcJsonContext.Default.SaltAmount);
    }

    [Fact]
    public void Feeds_RoundTrip()
    {
        FeedGrade grade = FeedGrade.Parse("20-10-20");
        RoundTrips(grade, HortiCalcJsonContext.Default.FeedGrade);
        InjectorStock stock = Feeding.Stock(
            grade, NutrientElement.Nitrogen, MassConcentration.FromMilligramsPerLiter(150), MixRatio.OneIn(128), Volume.FromUsGallons(5), MassConcentration.FromGramsPerLiter(400));
        RoundTrips(stock, HortiCalcJsonContext.Default.InjectorStock);
        RoundTrips(stock.Feed, HortiCalcJsonContext.Default.FeedStrength);
        FeedConductivity label = new(MassConcentration.FromMilligramsPerLiter(100), ElectricConductivity.FromMicrosiemensPerCentimeter(740));
        RoundTrips(label, HortiCalcJsonContext.Default.FeedConductivity);
        RoundTrips(
            Feeding.ConductivityOf(label, MassConcentration.FromMilligramsPerLiter(150), ElectricConductivity.FromMillisiemensPerCentimeter(0.4)),
            HortiCalcJsonContext.Default.EstimateElectricConductivity);
        Assert.All(ConductivityMethod.All, method => RoundTrips(method, HortiCalcJsonContext.Default.ConductivityMethod));
        Assert.All(FertiliserSolubilities.All, salt => RoundTrips(salt, HortiCalcJsonContext.Default.FertiliserSolubility));
        Assert.All(ConductivityTargets.Hydroponics, target => RoundTrips(target, HortiCalcJsonContext.Default.ConductivityTarget));
    }

    [Fact]
    public void Waters_AndDoses_RoundTrip()
    {
        RoundTrips(Well, HortiCalcJsonContext.Default.SourceWater);
        Assert.All(AcidProducts.All, acid =>
        {
            RoundTrips(acid, HortiCalcJsonContext.Default.AcidProduct);
            RoundTrips(AcidInjection.ToPh(Well, acid, new Ph(6), GasExchange.Closed), HortiCalcJsonContext.Default.AcidDose);
        });
        RoundTrips(
            AcidInjection.Titration(Well, AcidProducts.Citric50, Molarity.FromMillimolesPerLiter(2), 3, GasExchange.Closed)[1],
            HortiCalcJsonContext.Default.TitrationPoint);
        RoundTrips(
            WaterChemistry.SharesOfCarbon(new Ph(7), Temperature.FromDegreesCelsius(20), Molarity.Zero), HortiCalcJsonContext.Default.CarbonateShares);
        RoundTrips(
            WaterChemistry.PhOf(NutrientFormulas.HoaglandOne.Macronutrients, Temperature.FromDegreesCelsius(20), GasExchange.Closed),
            HortiCalcJsonContext.Default.EstimatePh);
        Assert.All(AlkalinityTargets.All, target => RoundTrips(target, HortiCalcJsonContext.Default.AlkalinityTarget));
        Assert.All(SourceWaterLimits.Hydroponics, limit => RoundTrips(limit, HortiCalcJsonContext.Default.SourceWaterLimit));
    }

    [Fact]
    public void Tanks_WithCalciumBesideSulfateInJson_AreRefused()
    {
        NutrientPlan plan = NutrientSolution.Plan(
            NutrientFormulas.HoaglandOne.Macronutrients, [new SaltOffer(NutrientSalts.CalciumNitrate), new SaltOffer(NutrientSalts.MagnesiumSulfate)]);
        string json = JsonSerializer.Serialize(
            plan.InTanks(Volume.FromLiters(10), MixRatio.OneIn(100), Temperature.FromDegreesCelsius(12)), HortiCalcJsonContext.Default.StockPlan);
        int end = json.IndexOf("],\"tankB\":[", StringComparison.Ordinal);
        string mixed = json.Remove(end, "],\"tankB\":[".Length).Insert(end, ",");
        int close = mixed.IndexOf("],\"cautions\"", StringComparison.Ordinal);
        mixed = mixed.Insert(close, "],\"tankB\":[");
        Assert.Throws<ArgumentException>(() => JsonSerializer.Deserialize(mixed, HortiCalcJsonContext.Default.StockPlan));
    }
}
