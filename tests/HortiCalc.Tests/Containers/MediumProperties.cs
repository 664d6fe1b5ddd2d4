using FsCheck;
using FsCheck.Xunit;
using HortiCalc.Containers;
using UnitsNet;
using static HortiCalc.Tests.Containers.Draw;

namespace HortiCalc.Tests.Containers;

/// <summary>What holds for medium and pots, and for mixes.</summary>
public class MediumProperties
{
    [Property]
    public bool PotsFrom_TheMediumForANumberOfPots_IsThatNumber(PositiveInt perPot, PositiveInt pots, NonNegativeInt allowance)
    {
        int count = 1 + pots.Get % 2_000;
        Volume medium = PottingMedium.ForPots(Amount(perPot), count, Allowance(allowance));
        PotYield yield = PottingMedium.PotsFrom(medium, Amount(perPot), Allowance(allowance));
        return yield.Pots == count && yield.LeftOver.Liters < 1e-6;
    }

    [Property]
    public bool PotsFrom_TheMediumForPotsOfAShape_IsThatNumber(PositiveInt top, PositiveInt bottom, PositiveInt height, PositiveInt pots)
    {
        int count = 1 + pots.Get % 500;
        return OneOfEach(top, bottom, height).All(container =>
        {
            Length headspace = container.Height / 10;
            Volume medium = PottingMedium.ForPots(container, headspace, count, Ratio.FromPercent(15));
            return PottingMedium.PotsFrom(medium, container, headspace, Ratio.FromPercent(15)).Pots == count;
        });
    }

    [Property]
    public bool PotsFrom_AnyVolume_FillsThosePotsAndNotOneMore(PositiveInt available, PositiveInt perPot, NonNegativeInt allowance)
    {
        PotYield yield = PottingMedium.PotsFrom(Amount(available) * 10, Amount(perPot), Allowance(allowance));
        double noise = 1e-9 * yield.Available.Liters;
        return yield.Pots * yield.MediumPerPot.Liters <= yield.Available.Liters + noise
            && (yield.Pots + 1) * yield.MediumPerPot.Liters > yield.Available.Liters + noise
            && Near(yield.Pots * yield.MediumPerPot.Liters + yield.LeftOver.Liters, yield.Available.Liters);
    }

    [Property]
    public bool ForPots_TwoBatches_IsTheSumOfBoth(PositiveInt perPot, NonNegativeInt first, NonNegativeInt second)
    {
        int one = first.Get % 1_000;
        int two = second.Get % 1_000;
        return Near(
            PottingMedium.ForPots(Amount(perPot), one + two, Ratio.FromPercent(20)).Liters,
            PottingMedium.ForPots(Amount(perPot), one, Ratio.FromPercent(20)).Liters + PottingMedium.ForPots(Amount(perPot), two, Ratio.FromPercent(20)).Liters);
    }

    [Property]
    public bool ForPots_AnAllowance_AddsThatShare(PositiveInt perPot, PositiveInt pots, NonNegativeInt allowance)
    {
        int count = 1 + pots.Get % 1_000;
        return Near(
            PottingMedium.ForPots(Amount(perPot), count, Allowance(allowance)).Liters,
            Amount(perPot).Liters * count * (1 + Allowance(allowance).DecimalFractions));
    }

    [Property]
    public bool PotsFrom_MoreAllowance_NeverFillsMorePots(PositiveInt available, PositiveInt perPot, NonNegativeInt first, NonNegativeInt more) =>
        PottingMedium.PotsFrom(Amount(available), Amount(perPot), Allowance(first) + Allowance(more)).Pots
        <= PottingMedium.PotsFrom(Amount(available), Amount(perPot), Allowance(first)).Pots;

    [Property]
    public bool ForBatch_TheComponentsAfterTheLoss_AreTheBatch(PositiveInt seed, PositiveInt batch, NonNegativeInt loss)
    {
        MediumBatch mix = Recipe(seed).ForBatch(Amount(batch), Allowance(loss));
        return Near(mix.Portions.Sum(portion => portion.Volume.Liters) * (1 - Allowance(loss).DecimalFractions), Amount(batch).Liters);
    }

    [Property]
    public bool ForBatch_AnyTwoComponents_StandAsTheirParts(PositiveInt seed, PositiveInt batch)
    {
        MediumRecipe recipe = Recipe(seed);
        MediumBatch mix = recipe.ForBatch(Amount(batch), Ratio.FromPercent(10));
        return recipe.Components.All(component => Near(
            mix.VolumeOf(component.Material).Liters * recipe.Components[0].Parts,
            mix.Portions[0].Volume.Liters * component.Parts));
    }

    [Property]
    public bool BatchFrom_AComponentOfABatch_IsThatBatch(PositiveInt seed, PositiveInt batch, NonNegativeInt loss)
    {
        MediumRecipe recipe = Recipe(seed);
        MediumBatch mix = recipe.ForBatch(Amount(batch), Allowance(loss));
        return mix.Portions.All(portion => Near(
            recipe.BatchFrom(portion.Material, portion.Volume, Allowance(loss)).Volume.Liters, Amount(batch).Liters));
    }

    [Property]
    public bool ShareOf_AllComponents_IsTheWhole(PositiveInt seed)
    {
        MediumRecipe recipe = Recipe(seed);
        return Near(recipe.Components.Sum(component => recipe.ShareOf(component.Material).Percent), 100);
    }

    [Property]
    public bool ForBatch_AllPartsMultiplied_IsTheSameBatch(PositiveInt seed, PositiveInt batch, PositiveInt times)
    {
        MediumRecipe recipe = Recipe(seed);
        double factor = (1 + times.Get % 30) / 3.0;
        MediumRecipe multiplied = new(
            recipe.Name, [.. recipe.Components.Select(component => new MediumComponent(component.Material, component.Parts * factor))], recipe.Source);
        return recipe.Components.All(component => Near(
            recipe.ForBatch(Amount(batch), Ratio.Zero).VolumeOf(component.Material).Liters,
            multiplied.ForBatch(Amount(batch), Ratio.Zero).VolumeOf(component.Material).Liters));
    }

    [Property]
    public bool ForBatch_MoreLoss_NeverTakesLessOfAnything(PositiveInt seed, PositiveInt batch, NonNegativeInt first, NonNegativeInt second)
    {
        Ratio low = Ratio.FromPercent(Math.Min(first.Get % 51, second.Get % 51));
        Ratio high = Ratio.FromPercent(Math.Max(first.Get % 51, second.Get % 51));
        MediumRecipe recipe = Recipe(seed);
        return recipe.Components.All(component =>
            recipe.ForBatch(Amount(batch), low).VolumeOf(component.Material).Liters
            <= recipe.ForBatch(Amount(batch), high).VolumeOf(component.Material).Liters);
    }
}
