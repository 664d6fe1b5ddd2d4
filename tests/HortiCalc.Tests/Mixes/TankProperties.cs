using FsCheck;
using FsCheck.Xunit;
using HortiCalc.Mixes;
using UnitsNet;

namespace HortiCalc.Tests.Mixes;

/// <summary>Laws of tanks that are not empty: what is in them is kept, volumes add up, and each question has its inverse.</summary>
public class TankProperties
{
    private static Volume Litres(PositiveInt value) => Volume.FromLiters(0.5 + (value.Get % 2000 / 10.0));

    private static StrengthPerVolume Weak(PositiveInt value) => Strength.PerVolume(MassConcentration.FromMilligramsPerLiter(1 + (value.Get % 5000)));

    private static StrengthPerVolume Bottle(PositiveInt value) => Strength.PerVolume(MassConcentration.FromMilligramsPerLiter(6000 + (value.Get % 90_000)));

    private static double Figure(Strength strength) => ((StrengthPerVolume)strength).Concentration.MilligramsPerLiter;

    [Property]
    public bool Correct_AnyTank_KeepsTheIngredientAndReachesTheTarget(PositiveInt tank, PositiveInt now, PositiveInt target, PositiveInt bottle)
    {
        MixBlend mended = TankMix.Correct(Litres(tank), Weak(now), Weak(target), Bottle(bottle));
        double held = (Litres(tank).Liters * Figure(Weak(now))) + (mended.Concentrate.Liters * Figure(Bottle(bottle)));
        return Near.Equal(held, mended.Total.Liters * Figure(Weak(target)));
    }

    [Property]
    public bool Correct_AnyTank_AddsEitherWaterOrConcentrate(PositiveInt tank, PositiveInt now, PositiveInt target, PositiveInt bottle)
    {
        MixBlend mended = TankMix.Correct(Litres(tank), Weak(now), Weak(target), Bottle(bottle));
        return (mended.Water.Liters == 0 || mended.Concentrate.Liters == 0) && mended.Total >= Litres(tank) * (1 - 1e-12);
    }

    [Property]
    public bool Correct_AtTheTarget_AddsNothing(PositiveInt tank, PositiveInt now, PositiveInt bottle)
    {
        MixBlend mended = TankMix.Correct(Litres(tank), Weak(now), Weak(now), Bottle(bottle));
        return mended.Water.Liters == 0 && mended.Concentrate.Liters == 0;
    }

    [Property]
    public bool FillUp_OfAnEmptyTank_IsTheBatch(PositiveInt full, PositiveInt target, PositiveInt bottle)
    {
        MixBlend filled = TankMix.FillUp(Volume.Zero, Weak(target), Litres(full), Weak(target), Bottle(bottle));
        return Near.Equal(filled.Concentrate.Liters, Dilution.MakeUpTo(Litres(full), Bottle(bottle), Weak(target)).Concentrate.Liters);
    }

    [Property]
    public bool FillUp_OfAHalfFullTank_FillsItAndKeepsTheIngredient(PositiveInt full, PositiveInt target, PositiveInt bottle)
    {
        MixBlend filled = TankMix.FillUp(Litres(full) / 2, Weak(target), Litres(full), Weak(target), Bottle(bottle));
        double held = (filled.Present.Liters * Figure(Weak(target))) + (filled.Concentrate.Liters * Figure(Bottle(bottle)));
        return Near.Equal(filled.Total.Liters, Litres(full).Liters) && Near.Equal(held, filled.Total.Liters * Figure(Weak(target)));
    }

    [Property]
    public bool Blend_OfTwo_LiesBetweenThemAndDoesNotKnowTheOrder(PositiveInt first, PositiveInt second, PositiveInt one, PositiveInt other)
    {
        double mixed = Figure(TankMix.Blend(Litres(first), Weak(one), Litres(second), Weak(other)).Strength);
        double turned = Figure(TankMix.Blend(Litres(second), Weak(other), Litres(first), Weak(one)).Strength);
        double low = Math.Min(Figure(Weak(one)), Figure(Weak(other)));
        double high = Math.Max(Figure(Weak(one)), Figure(Weak(other)));
        return Near.Equal(mixed, turned) && mixed >= low * (1 - 1e-12) && mixed <= high * (1 + 1e-12);
    }

    [Property]
    public bool BlendTo_TheStrengthOfABlend_GivesItsVolumes(PositiveInt first, PositiveInt second, PositiveInt one, PositiveInt bottle)
    {
        MixBlend blend = TankMix.Blend(Litres(first), Weak(one), Litres(second), Bottle(bottle));
        MixBlend again = TankMix.BlendTo(blend.Total, Weak(one), Bottle(bottle), blend.Strength);

        // The strength is kept to fifteen digits and the volumes are differences of it, so that six digits are what can be asked.
        return Math.Abs(again.Present.Liters - Litres(first).Liters) <= 1e-6 * blend.Total.Liters
            && Math.Abs(again.Concentrate.Liters - Litres(second).Liters) <= 1e-6 * blend.Total.Liters;
    }

    [Property]
    public bool InSteps_AnyChain_IsTheRatioOfAllSteps(PositiveInt total, PositiveInt bottle, PositiveInt one, PositiveInt other)
    {
        MixRatio first = MixRatio.OneIn(1.5 + (one.Get % 50));
        MixRatio second = MixRatio.OneIn(1.5 + (other.Get % 50));
        IReadOnlyList<MixBatch> chain = TankMix.InSteps(Litres(total), Bottle(bottle), first, second);
        return Near.Equal(chain[1].Concentrate.Liters, chain[0].Total.Liters)
            && Near.Equal(chain[0].Concentrate.Liters, Dilution.MakeUpTo(Litres(total), first.Then(second)).Concentrate.Liters)
            && Near.Equal(Figure(chain[1].Strength!), Figure(Bottle(bottle)) / first.Then(second).Factor);
    }

    [Property]
    public bool AfterRinsing_InTwoGoes_IsTheSameAsInOne(PositiveInt residue, PositiveInt water, PositiveInt bottle, byte rinses)
    {
        int more = rinses % 8;
        Strength once = TankMix.AfterRinsing(Bottle(bottle), Litres(residue), Litres(water), more);
        return Near.Equal(
            Figure(TankMix.AfterRinsing(once, Litres(residue), Litres(water), 2)),
            Figure(TankMix.AfterRinsing(Bottle(bottle), Litres(residue), Litres(water), more + 2)));
    }

    [Property]
    public bool RinsesTo_ATarget_IsTheLeastNumberThatReachesIt(PositiveInt residue, PositiveInt water, PositiveInt bottle, PositiveInt target)
    {
        int rinses = TankMix.RinsesTo(Bottle(bottle), Weak(target), Litres(residue), Litres(water));
        double reached = Figure(TankMix.AfterRinsing(Bottle(bottle), Litres(residue), Litres(water), rinses));
        double before = Figure(TankMix.AfterRinsing(Bottle(bottle), Litres(residue), Litres(water), Math.Max(0, rinses - 1)));
        return reached <= Figure(Weak(target)) * (1 + 1e-9) && (rinses == 0 || before > Figure(Weak(target)) * (1 - 1e-9));
    }

    [Property]
    public bool Ratio_OneToN_NeverEqualsOneInN(PositiveInt parts)
    {
        double n = 1 + (parts.Get % 100_000 / 7.0);
        return MixRatio.PartsToParts(1, n) != MixRatio.OneIn(n) && MixRatio.PartsToParts(1, n) == MixRatio.OneIn(n + 1);
    }

    [Property]
    public bool Correct_InAnyUnit_IsTheSame(PositiveInt tank, PositiveInt now, PositiveInt target, PositiveInt bottle)
    {
        MixBlend litres = TankMix.Correct(Litres(tank), Weak(now), Weak(target), Bottle(bottle));
        MixBlend gallons = TankMix.Correct(
            Volume.FromUsGallons(Litres(tank).UsGallons),
            Strength.PerVolume(MassConcentration.FromGramsPerLiter(Figure(Weak(now)) / 1000)),
            Weak(target),
            Bottle(bottle));
        double scale = litres.Total.Liters;
        return Math.Abs(litres.Water.Liters - gallons.Water.Liters) <= 1e-9 * scale
            && Math.Abs(litres.Concentrate.Liters - gallons.Concentrate.Liters) <= 1e-9 * scale;
    }
}
