using FsCheck;
using FsCheck.Xunit;
using HortiCalc.Mixes;
using UnitsNet;

namespace HortiCalc.Tests.Mixes;

/// <summary>Laws that every dilution obeys.</summary>
public class DilutionProperties
{
    private static Volume Litres(PositiveInt value) => Volume.FromLiters(0.05 + (value.Get % 20_000 / 10.0));

    private static MixRatio Ratio(PositiveInt value) => MixRatio.PartsToParts(1 + (value.Get % 7), 0.5 + (value.Get % 997));

    private static StrengthPerVolume Concentrate(PositiveInt value) => Strength.PerVolume(MassConcentration.FromGramsPerLiter(100 + (value.Get % 900)));

    private static StrengthPerVolume Weaker(PositiveInt value) => Strength.PerVolume(MassConcentration.FromMilligramsPerLiter(1 + (value.Get % 90_000)));

    [Property]
    public bool MakeUpTo_AnyRatio_FillsTheVolume(PositiveInt volume, PositiveInt ratio)
    {
        MixBatch batch = Dilution.MakeUpTo(Litres(volume), Ratio(ratio));
        return Near.Equal(batch.Total.Liters, Litres(volume).Liters) && Near.Equal(batch.Concentrate.Liters + batch.Water.Liters, batch.Total.Liters);
    }

    [Property]
    public bool AddTo_AnyRatio_KeepsTheWaterAndMakesMore(PositiveInt volume, PositiveInt ratio)
    {
        MixBatch batch = Dilution.AddTo(Litres(volume), Ratio(ratio));
        return Near.Equal(batch.Water.Liters, Litres(volume).Liters) && batch.Total > batch.Water;
    }

    [Property]
    public bool AddTo_ComparedWithMakeUpTo_TakesMoreConcentrate(PositiveInt volume, PositiveInt ratio) =>
        Dilution.AddTo(Litres(volume), Ratio(ratio)).Concentrate > Dilution.MakeUpTo(Litres(volume), Ratio(ratio)).Concentrate;

    [Property]
    public bool UseUp_OfWhatABatchTakes_GivesThatBatch(PositiveInt volume, PositiveInt ratio)
    {
        MixBatch batch = Dilution.MakeUpTo(Litres(volume), Ratio(ratio));
        return Near.Equal(Dilution.UseUp(batch.Concentrate, Ratio(ratio)).Total.Liters, batch.Total.Liters);
    }

    [Property]
    public bool AddTo_TheWaterOfABatch_GivesThatBatch(PositiveInt volume, PositiveInt ratio)
    {
        MixBatch batch = Dilution.MakeUpTo(Litres(volume), Ratio(ratio));
        return Near.Equal(Dilution.AddTo(batch.Water, Ratio(ratio)).Concentrate.Liters, batch.Concentrate.Liters);
    }

    [Property]
    public bool MakeUpTo_AnyStrength_ConservesTheIngredient(PositiveInt volume, PositiveInt ratio, PositiveInt strength)
    {
        StrengthPerVolume concentrate = Concentrate(strength);
        MixBatch batch = Dilution.MakeUpTo(Litres(volume), Ratio(ratio), concentrate);
        double before = batch.Concentrate.Liters * concentrate.Concentration.GramsPerLiter;
        double after = batch.Total.Liters * ((StrengthPerVolume)batch.Strength!).Concentration.GramsPerLiter;
        return Near.Equal(before, after);
    }

    [Property]
    public bool MakeUpTo_ATarget_ReachesIt(PositiveInt volume, PositiveInt strength, PositiveInt target)
    {
        MixBatch batch = Dilution.MakeUpTo(Litres(volume), Concentrate(strength), Weaker(target));
        return Near.Equal(((StrengthPerVolume)batch.Strength!).Concentration.MilligramsPerLiter, Weaker(target).Concentration.MilligramsPerLiter);
    }

    [Property]
    public bool Combine_TheAmountsOfABatch_GivesItsStrength(PositiveInt volume, PositiveInt strength, PositiveInt target)
    {
        MixBatch batch = Dilution.MakeUpTo(Litres(volume), Concentrate(strength), Weaker(target));
        Strength result = Dilution.Combine(batch.Concentrate, batch.Water, Concentrate(strength)).Strength!;
        return Near.Equal(((StrengthPerVolume)result).Concentration.MilligramsPerLiter, Weaker(target).Concentration.MilligramsPerLiter);
    }

    [Property]
    public bool MakeUpTo_TwiceTheVolume_TakesTwiceOfEach(PositiveInt volume, PositiveInt ratio)
    {
        MixBatch one = Dilution.MakeUpTo(Litres(volume), Ratio(ratio));
        MixBatch two = Dilution.MakeUpTo(Litres(volume) * 2, Ratio(ratio));
        return Near.Equal(two.Concentrate.Liters, 2 * one.Concentrate.Liters) && Near.Equal(two.Water.Liters, 2 * one.Water.Liters);
    }

    [Property]
    public bool MakeUpTo_StrongerTarget_TakesMoreConcentrate(PositiveInt strength, PositiveInt target, PositiveInt more)
    {
        StrengthPerVolume stronger = Strength.PerVolume(Weaker(target).Concentration + MassConcentration.FromMilligramsPerLiter(1 + (more.Get % 9_000)));
        Volume total = Volume.FromLiters(10);
        return Dilution.MakeUpTo(total, Concentrate(strength), stronger).Concentrate
            > Dilution.MakeUpTo(total, Concentrate(strength), Weaker(target)).Concentrate;
    }

    [Property]
    public bool RatioFor_AndStrengthOf_AreInverse(PositiveInt strength, PositiveInt ratio)
    {
        Strength concentrate = Concentrate(strength);
        return Near.Equal(Dilution.RatioFor(concentrate, Dilution.StrengthOf(Ratio(ratio), concentrate)).Factor, Ratio(ratio).Factor);
    }

    [Property]
    public bool StockFor_AndStrengthOf_AreInverse(PositiveInt target, PositiveInt ratio)
    {
        StrengthPerVolume stock = Dilution.StockFor(Weaker(target), Ratio(ratio));
        StrengthPerVolume back = (StrengthPerVolume)Dilution.StrengthOf(Ratio(ratio), stock);
        return Near.Equal(back.Concentration.MilligramsPerLiter, Weaker(target).Concentration.MilligramsPerLiter);
    }

    [Property]
    public bool PowderFor_AndStrengthOfPowder_AreInverse(PositiveInt volume, PositiveInt target, PositiveInt percent)
    {
        StrengthByMass powder = Strength.ByMass(MassFraction.FromPercent(1 + (percent.Get % 100)));
        Mass mass = Dilution.PowderFor(Litres(volume), powder, Weaker(target));
        StrengthPerVolume back = Dilution.StrengthOfPowder(mass, powder, Litres(volume));
        return Near.Equal(back.Concentration.MilligramsPerLiter, Weaker(target).Concentration.MilligramsPerLiter);
    }

    [Property]
    public bool ProductHolding_ItsOwnActiveIngredient_IsTheProduct(PositiveInt volume, PositiveInt strength)
    {
        Mass active = Mass.FromGrams(Litres(volume).Liters * Concentrate(strength).Concentration.GramsPerLiter);
        return Near.Equal(Dilution.ProductHolding(active, Concentrate(strength)).Liters, Litres(volume).Liters);
    }

    [Property]
    public bool ProductFor_TheVolumeOfTheRate_IsTheProduct(PositiveInt product, PositiveInt per)
    {
        Volume amount = Volume.FromMilliliters(1 + (product.Get % 5_000));
        Mass mass = Mass.FromGrams(1 + (product.Get % 5_000));
        return Near.Equal(Dilution.ProductFor(Dilution.RateOf(amount, Litres(per)), Litres(per)).Liters, amount.Liters)
            && Near.Equal(Dilution.ProductFor(Dilution.RateOf(mass, Litres(per)), Litres(per)).Grams, mass.Grams);
    }

    [Property]
    public bool MakeUpTo_InGallonsOrLitres_IsTheSameBatch(PositiveInt volume, PositiveInt ratio)
    {
        Volume litres = Litres(volume);
        Volume gallons = Volume.FromUsGallons(litres.Liters / 3.785411784);
        return Near.Equal(Dilution.MakeUpTo(litres, Ratio(ratio)).Concentrate.Liters, Dilution.MakeUpTo(gallons, Ratio(ratio)).Concentrate.Liters);
    }

    [Property]
    public bool Then_InAnyOrder_IsTheSameMix(PositiveInt first, PositiveInt second, PositiveInt third) =>
        Near.Equal(Ratio(first).Then(Ratio(second)).Factor, Ratio(second).Then(Ratio(first)).Factor)
        && Near.Equal(Ratio(first).Then(Ratio(second)).Then(Ratio(third)).Factor, Ratio(first).Then(Ratio(second).Then(Ratio(third))).Factor);

    [Property]
    public bool Then_OnAStrength_DilutesTwice(PositiveInt first, PositiveInt second, PositiveInt strength)
    {
        Strength twice = Dilution.StrengthOf(Ratio(second), Dilution.StrengthOf(Ratio(first), Concentrate(strength)));
        Strength once = Dilution.StrengthOf(Ratio(first).Then(Ratio(second)), Concentrate(strength));
        return Near.Equal(((StrengthPerVolume)twice).Concentration.MilligramsPerLiter, ((StrengthPerVolume)once).Concentration.MilligramsPerLiter);
    }

    [Property]
    public bool Ratios_OfTheSameNumber_DifferInTheTwoMeaningsAndMeetOneApart(PositiveInt value)
    {
        int number = 1 + (value.Get % 5_000);
        return MixRatio.PartsToParts(1, number) != MixRatio.OneIn(number)
            && MixRatio.PartsToParts(1, number) == MixRatio.OneIn(number + 1);
    }

    [Property]
    public bool Ratios_Scaled_AreTheSameMix(PositiveInt concentrate, PositiveInt diluent, PositiveInt scale)
    {
        double parts = 1 + (concentrate.Get % 50);
        double water = diluent.Get % 5_000;
        double times = 1 + (scale.Get % 1_000 / 7.0);
        return MixRatio.PartsToParts(parts, water) == MixRatio.PartsToParts(parts * times, water * times);
    }

    [Property]
    public bool FromShare_AndShareOfConcentrate_AreInverse(PositiveInt value)
    {
        MixRatio ratio = Ratio(value);
        return MixRatio.FromShare(ratio.ShareOfConcentrate) == ratio;
    }

    [Property]
    public bool Strengths_ThroughADensityAndBack_AreUnchanged(PositiveInt strength, PositiveInt density)
    {
        Density whole = Density.FromKilogramsPerCubicMeter(1_000 + (density.Get % 800));
        StrengthPerVolume back = Concentrate(strength).ToMassFraction(whole).ToMassPerVolume();
        return Near.Equal(back.Concentration.GramsPerLiter, Concentrate(strength).Concentration.GramsPerLiter);
    }

    [Property]
    public bool DilutionByMassBasis_WithADensity_EqualsTheSameStrengthPerVolume(PositiveInt strength, PositiveInt ratio, PositiveInt volume)
    {
        StrengthByMass byMass = Concentrate(strength).ToMassFraction(Density.FromKilogramsPerCubicMeter(1_200));
        MixBatch one = Dilution.MakeUpTo(Litres(volume), Ratio(ratio), byMass);
        MixBatch other = Dilution.MakeUpTo(Litres(volume), Ratio(ratio), Concentrate(strength));
        return Near.Equal(
            ((StrengthPerVolume)one.Strength!).Concentration.MilligramsPerLiter, ((StrengthPerVolume)other.Strength!).Concentration.MilligramsPerLiter);
    }
}
