using FsCheck;
using FsCheck.Xunit;
using HortiCalc.Mixes;
using UnitsNet;

namespace HortiCalc.Tests.Mixes;

/// <summary>Laws of feeding by grade, rate and injector.</summary>
[Properties(EndSize = 1_000_000)]
public class FeedingProperties
{
    private static readonly NutrientElement[] Elements = [NutrientElement.Nitrogen, NutrientElement.Phosphorus, NutrientElement.Potassium];

    private static FeedGrade Grade(PositiveInt value) => new(
        MassFraction.FromPercent(1 + value.Get % 30), MassFraction.FromPercent(1 + value.Get % 31), MassFraction.FromPercent(1 + value.Get % 37));

    private static MassConcentration Milligrams(PositiveInt value) => MassConcentration.FromMilligramsPerLiter(1 + value.Get % 600);

    private static Volume Tank(PositiveInt value) => Volume.FromLiters(1 + value.Get % 500);

    private static MixRatio Injector(PositiveInt value) => MixRatio.OneIn(1 + value.Get % 400);

    [Property]
    public bool RateFor_AnyElement_GivesThatStrength(PositiveInt grade, PositiveInt strength) => Elements.All(element =>
    {
        FeedStrength feed = Feeding.StrengthOf(Grade(grade), Feeding.RateFor(Grade(grade), element, Milligrams(strength)));
        MassConcentration reached = element switch
        {
            NutrientElement.Nitrogen => feed.Nitrogen,
            NutrientElement.Phosphorus => feed.Phosphorus,
            _ => feed.Potassium,
        };
        return Near.Equal(reached.MilligramsPerLiter, Milligrams(strength).MilligramsPerLiter);
    });

    [Property]
    public bool StrengthOf_TwiceTheRate_IsTwiceTheStrength(PositiveInt grade, PositiveInt rate)
    {
        FeedStrength once = Feeding.StrengthOf(Grade(grade), Milligrams(rate));
        FeedStrength twice = Feeding.StrengthOf(Grade(grade), Milligrams(rate) * 2);
        return Near.Equal(twice.Nitrogen.MilligramsPerLiter, 2 * once.Nitrogen.MilligramsPerLiter)
            && Near.Equal(twice.Phosphate.MilligramsPerLiter, 2 * once.Phosphate.MilligramsPerLiter)
            && Near.Equal(twice.Potash.MilligramsPerLiter, 2 * once.Potash.MilligramsPerLiter);
    }

    [Property]
    public bool StrengthOf_OxidesOfTheFeed_AreThoseOfTheLabel(PositiveInt grade, PositiveInt rate)
    {
        FeedStrength feed = Feeding.StrengthOf(Grade(grade), Milligrams(rate));
        return Near.Equal(feed.Phosphate.MilligramsPerLiter, feed.Product.MilligramsPerLiter * Grade(grade).Phosphate.DecimalFractions)
            && Near.Equal(feed.Potash.MilligramsPerLiter, feed.Product.MilligramsPerLiter * Grade(grade).Potash.DecimalFractions);
    }

    [Property]
    public bool Oxides_ThereAndBack_AreTheSameShare(PositiveInt value)
    {
        double percent = 0.1 + value.Get % 400 / 10.0;
        return Enum.GetValues<NutrientOxide>().All(oxide => Near.Equal(
            NutrientOxides.ToElement(oxide, NutrientOxides.FromElement(oxide, MassFraction.FromPercent(percent))).Percent, percent));
    }

    [Property]
    public bool Stock_FedThroughItsInjector_GivesTheStrength(PositiveInt grade, PositiveInt strength, PositiveInt ratio, PositiveInt tank)
    {
        InjectorStock stock = Feeding.Stock(Grade(grade), NutrientElement.Nitrogen, Milligrams(strength), Injector(ratio), Tank(tank));
        FeedStrength feed = Feeding.StrengthFromStock(Grade(grade), stock.Product, Tank(tank), Injector(ratio));
        return Near.Equal(feed.Nitrogen.MilligramsPerLiter, Milligrams(strength).MilligramsPerLiter)
            && Near.Equal(feed.Potassium.MilligramsPerLiter, stock.Feed.Potassium.MilligramsPerLiter);
    }

    [Property]
    public bool Stock_TwiceTheRatio_TakesTwiceTheProduct(PositiveInt grade, PositiveInt strength, PositiveInt ratio, PositiveInt tank)
    {
        Mass once = Feeding.Stock(Grade(grade), NutrientElement.Nitrogen, Milligrams(strength), Injector(ratio), Tank(tank)).Product;
        MixRatio doubled = MixRatio.OneIn(2 * Injector(ratio).Factor);
        return Near.Equal(
            Feeding.Stock(Grade(grade), NutrientElement.Nitrogen, Milligrams(strength), doubled, Tank(tank)).Product.Grams, 2 * once.Grams);
    }

    [Property]
    public bool Stock_InOtherUnits_IsTheSame(PositiveInt grade, PositiveInt strength, PositiveInt ratio, PositiveInt tank)
    {
        MassConcentration ounces = Milligrams(strength).ToUnit(UnitsNet.Units.MassConcentrationUnit.GramPerLiter);
        Volume gallons = Volume.FromUsGallons(Tank(tank).UsGallons);
        return Near.Equal(
            Feeding.Stock(Grade(grade), NutrientElement.Nitrogen, ounces, Injector(ratio), gallons).Product.Grams,
            Feeding.Stock(Grade(grade), NutrientElement.Nitrogen, Milligrams(strength), Injector(ratio), Tank(tank)).Product.Grams);
    }

    [Property]
    public bool Stock_ComparedWithPowderOfDilution_IsTheSame(PositiveInt grade, PositiveInt strength, PositiveInt ratio, PositiveInt tank)
    {
        Mass powder = Dilution.PowderFor(
            Tank(tank),
            Strength.ByMass(Grade(grade).Nitrogen, ingredient: "nitrogen"),
            Strength.PerVolume(Milligrams(strength) * Injector(ratio).Factor, "nitrogen"));
        return Near.Equal(powder.Grams, Feeding.Stock(Grade(grade), NutrientElement.Nitrogen, Milligrams(strength), Injector(ratio), Tank(tank)).Product.Grams);
    }

    [Property]
    public bool StrongestInjector_OfAnyRate_SaturatesTheTank(PositiveInt grade, PositiveInt strength, PositiveInt most)
    {
        MassConcentration rate = Feeding.RateFor(Grade(grade), NutrientElement.Nitrogen, Milligrams(strength));
        MassConcentration solubility = rate * (1 + most.Get % 500);
        MixRatio injector = Feeding.StrongestInjector(rate, solubility);
        InjectorStock stock = Feeding.Stock(
            Grade(grade), NutrientElement.Nitrogen, Milligrams(strength), injector, Volume.FromLiters(10), solubility * 1.000001);
        return Near.Equal(stock.Strength.MilligramsPerLiter, solubility.MilligramsPerLiter) && stock.Dissolves == true;
    }

    [Property]
    public bool ConductivityOf_ReadBackFromTheMeter_IsTheNitrogen(PositiveInt factor, PositiveInt strength, PositiveInt water)
    {
        FeedConductivity label = new(
            MassConcentration.FromMilligramsPerLiter(100), ElectricConductivity.FromMillisiemensPerCentimeter(0.3 + factor.Get % 100 / 100.0));
        ElectricConductivity own = ElectricConductivity.FromMillisiemensPerCentimeter(water.Get % 20 / 10.0);
        ElectricConductivity reading = Feeding.ConductivityOf(label, Milligrams(strength), own).Value;
        return reading >= own && Near.Equal(Feeding.NitrogenFromConductivity(label, reading, own).Value.MilligramsPerLiter, Milligrams(strength).MilligramsPerLiter);
    }

    [Property]
    public bool Grade_FromElements_HoldsThem(PositiveInt value)
    {
        FeedGrade grade = FeedGrade.FromElements(
            MassFraction.FromPercent(1 + value.Get % 30), MassFraction.FromPercent(1 + value.Get % 11), MassFraction.FromPercent(1 + value.Get % 25));
        return Near.Equal(grade.Phosphorus.Percent, 1 + value.Get % 11) && Near.Equal(grade.Potassium.Percent, 1 + value.Get % 25);
    }
}
