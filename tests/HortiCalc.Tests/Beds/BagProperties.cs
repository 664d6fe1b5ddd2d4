using FsCheck;
using FsCheck.Xunit;
using HortiCalc.Beds;
using UnitsNet;
using static HortiCalc.Tests.Beds.Draw;

namespace HortiCalc.Tests.Beds;

/// <summary>What holds for every purchase of bags.</summary>
public class BagProperties
{
    [Property]
    public bool ToBuy_AnyNeed_IsCoveredAndOneBagFewerWouldNotDo(PositiveInt needed, PositiveInt bag)
    {
        BagPurchase bags = Bags.ToBuy(Amount(needed) * 7, Amount(bag));
        double noise = 1e-9 * bags.Needed.Liters;
        return bags.Bought.Liters >= bags.Needed.Liters - noise && (bags.Count - 1) * bags.Bag.Liters < bags.Needed.Liters - noise;
    }

    [Property]
    public bool ToBuy_AWholeNumberOfBags_IsThatNumber(PositiveInt count, PositiveInt bag)
    {
        int whole = 1 + count.Get % 500;
        return Bags.ToBuy(Amount(bag) * whole, Amount(bag)).Count == whole;
    }

    [Property]
    public bool ToBuy_AWholeNumberAddedUpBagByBag_IsThatNumber(PositiveInt count, PositiveInt tenths)
    {
        int whole = 1 + count.Get % 200;
        Volume bag = Volume.FromLiters((1 + tenths.Get % 99) / 10.0);
        Volume needed = Volume.Zero;
        for (int i = 0; i < whole; i++)
            needed += bag;
        BagPurchase bags = Bags.ToBuy(needed, bag);
        return bags.Count == whole && bags.LeftOver.Liters < 1e-9;
    }

    [Property]
    public bool ToBuy_AWholeNumberMeasuredInAnotherUnit_IsThatNumber(PositiveInt count, PositiveInt cubicFeet)
    {
        int whole = 1 + count.Get % 500;
        double bagCubicFeet = (1 + cubicFeet.Get % 8) / 2.0;
        Volume needed = Volume.FromCubicYards(whole * bagCubicFeet / 27);
        return Bags.ToBuy(needed, Volume.FromCubicFeet(bagCubicFeet)).Count == whole
            && Bags.ToBuy(Volume.FromLiters(needed.Liters), Volume.FromCubicFeet(bagCubicFeet)).Count == whole;
    }

    [Property]
    public bool ToBuy_JustAboveAWholeNumber_IsOneMore(PositiveInt count, PositiveInt bag)
    {
        int whole = 1 + count.Get % 500;
        return Bags.ToBuy(Amount(bag) * (whole + 1e-6), Amount(bag)).Count == whole + 1;
    }

    [Property]
    public bool LeftOver_OfAnyPurchase_IsLessThanABagAndMakesUpTheDifference(PositiveInt needed, PositiveInt bag)
    {
        BagPurchase bags = Bags.ToBuy(Amount(needed), Amount(bag));
        return bags.LeftOver.Liters < bags.Bag.Liters && Near(bags.Bought.Liters - bags.LeftOver.Liters, bags.Needed.Liters);
    }

    [Property]
    public bool ToBuy_AGreaterNeed_NeverTakesFewerBags(PositiveInt needed, PositiveInt more, PositiveInt bag) =>
        Bags.ToBuy(Amount(needed) + Amount(more), Amount(bag)).Count >= Bags.ToBuy(Amount(needed), Amount(bag)).Count;

    [Property]
    public bool ToBuy_LargerBags_NeverTakesMoreOfThem(PositiveInt needed, PositiveInt bag, PositiveInt more) =>
        Bags.ToBuy(Amount(needed), Amount(bag) + Amount(more)).Count <= Bags.ToBuy(Amount(needed), Amount(bag)).Count;
}
