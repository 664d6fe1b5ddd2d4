using UnitsNet;

namespace HortiCalc.Beds;

/// <summary>Whole bags for a volume: of compost for a bed, of medium for pots, of anything sold by volume.</summary>
/// <remarks>
/// It asks for nothing but two volumes and so serves every room. A volume printed on a bag is that at packing (EN 12580 in
/// Europe); transport packs the material, and what fills a bed can be less. Add an allowance to the need where that matters.
/// </remarks>
/// <example><code>
/// BagPurchase bags = Bags.ToBuy(needed: Volume.FromLiters(115), bag: Volume.FromLiters(40));
/// Console.WriteLine(bags); // 3 bags of 40 L: 120 L for a need of 115 L, 5 L left over
///
/// BagOffer[] shop = [new("big", Volume.FromLiters(50), 8m), new("small", Volume.FromLiters(20), 4m)];
/// BagSelection cheapest = Bags.ToBuy(Volume.FromLiters(115), shop, BagAim.LeastCost);
/// Console.WriteLine(cheapest); // 2 × 50 L, 1 × 20 L: 120 L for a need of 115 L, 5 L left over, 20 to pay
/// </code></example>
public static class Bags
{
    /// <summary>The fewest whole bags of one size that cover a need.</summary>
    /// <param name="needed">The volume needed; zero or more. None needed is no bag.</param>
    /// <param name="bag">The volume of one bag; greater than zero.</param>
    /// <returns>How many, what they hold and what is left over.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The need is negative, the bag is not greater than zero, or the count is
    /// beyond two thousand million.</exception>
    public static BagPurchase ToBuy(Volume needed, Volume bag) => new(needed, bag);

    /// <summary>The best choice among bags of several sizes: the cheapest, the fewest, or with the least left over.</summary>
    /// <param name="needed">The volume needed; zero or more.</param>
    /// <param name="offers">The sizes to choose from, each name once; with prices where the aim is the cost.</param>
    /// <param name="aim">What the choice shall be best in.</param>
    /// <returns>How many of each; an exact optimum.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The need is negative or beyond a thousand million litres, or there is no offer.</exception>
    /// <exception cref="ArgumentException">A name is there twice, a price is missing, or the sizes combine to more volumes than can be
    /// searched.</exception>
    public static BagSelection ToBuy(Volume needed, IReadOnlyList<BagOffer> offers, BagAim aim) => new(needed, offers, aim);
}
