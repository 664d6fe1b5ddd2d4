using FsCheck;
using FsCheck.Xunit;
using HortiCalc.Beds;
using UnitsNet;
using static HortiCalc.Tests.Beds.Draw;

namespace HortiCalc.Tests.Beds;

/// <summary>What holds for every choice among bags of several sizes, and for loose loads, bales and hauls.</summary>
public class BagSelectionProperties
{
    // Every combination that could be best, one after the other.
    [Property]
    public bool ToBuy_EveryAim_IsTheBestOfAllCombinations(PositiveInt seed)
    {
        (Volume needed, BagOffer[] offers) = Shop(seed);
        List<int[]> all = [.. Combinations(needed, offers)];
        decimal Cost(int[] counts) => counts.Zip(offers, (count, offer) => count * offer.Price!.Value).Sum();
        double Over(int[] counts) => Math.Round(counts.Zip(offers, (count, offer) => count * offer.Volume.Liters).Sum() - needed.Liters, 6);
        BagSelection cheapest = Bags.ToBuy(needed, offers, BagAim.LeastCost);
        BagSelection fewest = Bags.ToBuy(needed, offers, BagAim.FewestBags);
        BagSelection closest = Bags.ToBuy(needed, offers, BagAim.LeastLeftOver);
        return (cheapest.Cost, cheapest.Count) == all.Select(counts => (Cost(counts), counts.Sum())).Min()
            && (fewest.Count, Math.Round(fewest.LeftOver.Liters, 6)) == all.Select(counts => (counts.Sum(), Over(counts))).Min()
            && (Math.Round(closest.LeftOver.Liters, 6), closest.Count) == all.Select(counts => (Over(counts), counts.Sum())).Min();
    }

    [Property]
    public bool ToBuy_LeastCost_IsNeverAboveTheGreedyChoice(PositiveInt seed, PositiveInt much)
    {
        (_, BagOffer[] offers) = Shop(seed);
        Volume needed = Volume.FromLiters(1 + much.Get % 5_000);
        return Bags.ToBuy(needed, offers, BagAim.LeastCost).Cost <= Greedy(needed, offers);
    }

    [Property]
    public bool ToBuy_LeastCost_CoversTheNeedAndWithoutAnyOneBagDoesNot(PositiveInt seed, PositiveInt much)
    {
        (_, BagOffer[] offers) = Shop(seed);
        Volume needed = Volume.FromLiters(1 + much.Get % 3_000);
        BagSelection choice = Bags.ToBuy(needed, offers, BagAim.LeastCost);
        double bought = choice.Bags.Sum(bag => bag.Count * bag.Offer.Volume.Liters);
        return bought >= needed.Liters * (1 - 1e-9) && choice.Bags.All(bag => bought - bag.Offer.Volume.Liters < needed.Liters);
    }

    [Property]
    public bool ToBuy_OneSizeOnly_IsTheFewestBagsOfIt(PositiveInt needed, PositiveInt bag, NonNegativeInt aim)
    {
        BagSelection choice = Bags.ToBuy(Amount(needed) * 7, [new BagOffer("bag", Amount(bag) + Volume.FromLiters(5), 3m)], (BagAim)(aim.Get % 3));
        BagPurchase bags = Bags.ToBuy(Amount(needed) * 7, Amount(bag) + Volume.FromLiters(5));
        return choice.Count == bags.Count && Near(choice.LeftOver.Liters, bags.LeftOver.Liters) && choice.Cost == 3m * bags.Count;
    }

    [Property]
    public bool ToBuy_EachAim_IsBestInItsOwn(PositiveInt seed, PositiveInt much)
    {
        (_, BagOffer[] offers) = Shop(seed);
        Volume needed = Volume.FromLiters(1 + much.Get % 2_000);
        BagSelection[] choices = [.. Enum.GetValues<BagAim>().Select(aim => Bags.ToBuy(needed, offers, aim))];
        return choices[0].Cost == choices.Min(choice => choice.Cost)
            && choices[1].Count == choices.Min(choice => choice.Count)
            && choices[2].LeftOver.Liters <= choices.Min(choice => choice.LeftOver.Liters) + 1e-6;
    }

    [Property]
    public bool ToBuy_ASumOfItsBags_LeavesNothing(PositiveInt first, PositiveInt second)
    {
        BagOffer[] offers = [new("cubic foot", Volume.FromCubicFeet(1)), new("two", Volume.FromCubicFeet(2)), new("litres", Volume.FromLiters(40))];
        Volume needed = Volume.FromCubicFeet(first.Get % 50) + Volume.FromLiters(40 * (second.Get % 50));
        return Bags.ToBuy(needed, offers, BagAim.LeastLeftOver).LeftOver.Liters < 1e-6;
    }

    [Property]
    public bool BulkPurchase_AnyNeed_IsCoveredAndOneStepFewerIsNot(PositiveInt needed, PositiveInt step, NonNegativeInt least)
    {
        BulkPurchase load = new(Amount(needed) * 20, Amount(step), Volume.FromLiters(least.Get % 2000));
        double noise = 1e-9 * load.Needed.Liters;
        return load.Bought.Liters >= load.Needed.Liters - noise
            && load.Bought.Liters >= load.Least.Liters
            && (load.Bought.Liters <= load.Least.Liters + noise || load.Bought.Liters - load.Step.Liters < load.Needed.Liters - noise);
    }

    [Property]
    public bool CompressedBale_ToBuy_CoversTheNeedEvenWhereBalesExpandLeast(PositiveInt needed, PositiveInt label, NonNegativeInt which)
    {
        BaleExpansion expansion = BaleExpansions.Published[which.Get % BaleExpansions.Published.Count];
        CompressedBale bale = new(Amount(label), expansion);
        BagPurchase bales = bale.ToBuy(Amount(needed) * 5);
        return bales.Count * bale.Label.Liters * expansion.Low.DecimalFractions >= Amount(needed).Liters * 5 * (1 - 1e-9)
            && (bale.Loose.Range is null || (bale.Loose.Range.Low < bale.Loose.Value && bale.Loose.Value < bale.Loose.Range.High));
    }

    [Property]
    public bool HaulPlan_AnyItems_AreAllCarriedAndNoTripIsOverloaded(PositiveInt seed)
    {
        (HaulItem[] items, Vehicle vehicle) = Load(seed);
        HaulPlan plan = new(items, vehicle);
        return items.All(item => plan.Trips.SelectMany(trip => trip.Items).Where(carried => carried.Name == item.Name).Sum(carried => carried.Count) == item.Count)
            && plan.Trips.All(trip => trip.Mass.Kilograms <= vehicle.Payload.Kilograms * (1 + 1e-6) && trip.Volume.Liters <= vehicle.Space!.Value.Liters * (1 + 1e-6))
            && plan.Trips.Count >= plan.FewestPossible;
    }

    // Two trips in a row that are both half empty by weight and by room would have been one.
    [Property]
    public bool HaulPlan_NoTwoTrips_WouldFitIntoOne(PositiveInt seed)
    {
        (HaulItem[] items, Vehicle vehicle) = Load(seed);
        HaulPlan plan = new(items, vehicle);
        return plan.Trips.Zip(plan.Trips.Skip(1)).All(pair =>
            pair.First.Mass.Kilograms + pair.Second.Mass.Kilograms > vehicle.Payload.Kilograms
            || pair.First.Volume.Liters + pair.Second.Volume.Liters > vehicle.Space!.Value.Liters);
    }

    [Property]
    public bool LooseHaul_AnyVolume_IsCarriedAndOneTripFewerWouldNotDo(PositiveInt volume, PositiveInt payload, PositiveInt space, NonNegativeInt which)
    {
        BulkDensity density = BulkDensities.Published[which.Get % BulkDensities.Published.Count];
        LooseHaul haul = new(Amount(volume) * 30, density, new Vehicle(Mass.FromKilograms(50 + payload.Get % 1000), Volume.FromLiters(50 + space.Get % 2000)));
        double noise = 1e-9 * haul.Volume.Liters;
        return haul.Trips * haul.AtOnce.Liters >= haul.Volume.Liters - noise
            && (haul.Trips - 1) * haul.AtOnce.Liters < haul.Volume.Liters
            && haul.AtOnce.CubicMeters * density.High.KilogramsPerCubicMeter <= haul.Vehicle.Payload.Kilograms * (1 + 1e-9)
            && haul.AtOnce.Liters <= haul.Vehicle.Space!.Value.Liters * (1 + 1e-9);
    }

    [Property]
    public bool PackedVolume_ToFill_IsTheInverseOfFilled(PositiveInt volume, PositiveInt reference)
    {
        Ratio share = Ratio.FromPercent(1 + reference.Get % 100);
        return Near(PackedVolume.Filled(PackedVolume.ToFill(Amount(volume), share), share).Liters, Amount(volume).Liters)
            && PackedVolume.Filled(Amount(volume), share).Liters <= Amount(volume).Liters * (1 + 1e-12);
    }

    private static (Volume Needed, BagOffer[] Offers) Shop(PositiveInt seed)
    {
        Random random = new(seed.Get);
        BagOffer[] offers = [.. Enumerable.Range(0, random.Next(1, 5)).Select(i =>
            new BagOffer($"bag {i}", Volume.FromLiters(5 * random.Next(2, 15)), random.Next(100, 1500) / 100m))];
        return (Volume.FromLiters(random.Next(1, 200)), offers);
    }

    private static IEnumerable<int[]> Combinations(Volume needed, BagOffer[] offers)
    {
        IEnumerable<int[]> partial = [[]];
        foreach (BagOffer offer in offers)
        {
            int most = (int)Math.Ceiling(needed.Liters / offer.Volume.Liters);
            partial = [.. partial.SelectMany(counts => Enumerable.Range(0, most + 1).Select(count => (int[])[.. counts, count]))];
        }

        return partial.Where(counts => counts.Zip(offers, (count, offer) => count * offer.Volume.Liters).Sum() >= needed.Liters);
    }

    /// <summary>As people buy: of the cheapest per litre as many as fit, then of the next, and one more of the last to cover the rest.</summary>
    private static decimal Greedy(Volume needed, BagOffer[] offers)
    {
        decimal cost = 0;
        double left = needed.Liters;
        foreach (BagOffer offer in offers.OrderBy(offer => (double)offer.Price!.Value / offer.Volume.Liters))
        {
            int count = (int)Math.Floor(left / offer.Volume.Liters);
            cost += count * offer.Price!.Value;
            left -= count * offer.Volume.Liters;
        }

        return left <= 0 ? cost : cost + offers.Min(offer => offer.Price!.Value * (int)Math.Ceiling(left / offer.Volume.Liters));
    }

    private static (HaulItem[] Items, Vehicle Vehicle) Load(PositiveInt seed)
    {
        Random random = new(seed.Get);
        HaulItem[] items = [.. Enumerable.Range(0, random.Next(1, 5)).Select(i =>
            new HaulItem($"item {i}", random.Next(0, 40), Mass.FromKilograms(random.Next(2, 45)), Volume.FromLiters(random.Next(5, 90))))];
        return (items, new Vehicle(Mass.FromKilograms(random.Next(50, 600)), Volume.FromLiters(random.Next(100, 1500))));
    }
}
