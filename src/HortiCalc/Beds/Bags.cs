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
}
