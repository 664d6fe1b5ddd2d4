using HortiCalc.Display;
using HortiCalc.Evidence;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Beds;

/// <summary>The best choice among bags of several sizes for a need: an exact optimum, not a rule of thumb.</summary>
/// <remarks>
/// Immutable; equal when need, offers and aim are equal. Buying greedily, the cheapest per litre first and the rest as it comes, often costs
/// more: half an empty big bag instead of one small. Amounts are compared to a part in 10⁹, as in <see cref="BagPurchase"/>.
/// </remarks>
[TypeFormatterSource(typeof(DisplayFormatters))]
public sealed record BagSelection : IFormattable, IDisplayable
{
    /// <summary>Chooses the bags.</summary>
    /// <param name="needed">The volume needed; zero or more.</param>
    /// <param name="offers">The sizes to choose from, one at least, each name once; with prices where the aim is the cost.</param>
    /// <param name="aim">What the choice shall be best in.</param>
    /// <exception cref="ArgumentOutOfRangeException">The need is negative or beyond a thousand million litres, or there is no offer.</exception>
    /// <exception cref="ArgumentException">A name is there twice, a price is missing, or the sizes combine to more volumes than can be
    /// searched.</exception>
    public BagSelection(Volume needed, IReadOnlyList<BagOffer> offers, BagAim aim)
    {
        Guard.Within(Boundary.Litres(needed), 0, BagSearch.LargestLitres, "L", nameof(needed));
        Needed = HouseUnits.Normalise(needed);
        Guard.AtLeast(Guard.NotNull(offers).Count, 1, nameof(offers));
        Offers = ValueList<BagOffer>.Of(offers);
        Aim = Guard.Defined(aim);
        if (Offers.GroupBy(offer => offer.Name, StringComparer.Ordinal).FirstOrDefault(group => group.Count() > 1) is { } twice)
            throw new ArgumentException($"offers had '{twice.Key}' more than once; allowed: each name once.", nameof(offers));
        if (aim == BagAim.LeastCost && Offers.FirstOrDefault(offer => offer.Price is null) is BagOffer free)
            throw new ArgumentException($"offers had '{free.Name}' without a price; allowed: prices for all where the aim is the least cost.", nameof(offers));

        double[] bagLitres = [.. Offers.Select(offer => Boundary.Litres(offer.Volume))];
        decimal[] prices = [.. Offers.Select(offer => offer.Price ?? 0)];
        int[] counts = BagSearch.Best(Boundary.Litres(Needed), bagLitres, prices, aim)
            ?? throw new ArgumentException(
                $"offers had {Guard.Number(Offers.Count)} sizes that combine to too many volumes to search for this need; allowed: fewer sizes, or"
                + " sizes that are multiples of one.",
                nameof(offers));
        Bags = ValueList<BagCount>.Of(Offers.Zip(counts).Where(pair => pair.Second > 0).Select(pair => new BagCount(pair.First, pair.Second)));
        Count = counts.Sum();
        double boughtLitres = bagLitres.Zip(counts, (litres, count) => litres * count).Sum();
        Bought = Volume.FromLiters(boughtLitres);
        LeftOver = Volume.FromLiters(WholeCount.Rest(boughtLitres, Boundary.Litres(Needed)));
        Cost = Offers.All(offer => offer.Price is not null) ? prices.Zip(counts, (price, count) => price * count).Sum() : null;
    }

    /// <summary>The volume needed.</summary>
    public Volume Needed { get; }

    /// <summary>The sizes that could be chosen.</summary>
    public IReadOnlyList<BagOffer> Offers { get; }

    /// <summary>What the choice is best in.</summary>
    public BagAim Aim { get; }

    /// <summary>What to buy, in the order of the offers; empty where nothing is needed.</summary>
    public IReadOnlyList<BagCount> Bags { get; }

    /// <summary>How many bags together.</summary>
    public int Count { get; }

    /// <summary>What the bags hold together.</summary>
    public Volume Bought { get; }

    /// <summary>What is bought beyond the need.</summary>
    public Volume LeftOver { get; }

    /// <summary>What they cost together; <see langword="null"/> where an offer has no price.</summary>
    public decimal? Cost { get; }

    /// <summary>The choice in metric units and invariant culture.</summary>
    /// <returns>For instance <c>2 × 50 L, 1 × 20 L: 120 L for a need of 115 L, 5 L left over, 18 to pay</c>.</returns>
    public override string ToString() => ToString(TextStyle.Default);

    /// <summary>The choice as one line of text.</summary>
    /// <param name="format"><c>M</c> or nothing for metric units, <c>U</c> for US customary ones.</param>
    /// <param name="formatProvider">The culture, or <see langword="null"/> for the invariant one.</param>
    /// <returns>The bags, what they hold, what is left over and the cost.</returns>
    /// <exception cref="FormatException">The format is another one.</exception>
    public string ToString(string? format, IFormatProvider? formatProvider) => ToString(TextStyle.Parse(format, formatProvider));

    DisplayBlock IDisplayable.ToDisplay(TextStyle style) => new(Title(style))
    {
        Rows =
        [
            new DisplayRow("needed", QuantityText.Of(Needed, style)),
            new DisplayRow("bought", QuantityText.Of(Bought, style)),
            new DisplayRow("left over", QuantityText.Of(LeftOver, style)),
            .. Cost is decimal cost ? [new DisplayRow("cost", cost.ToString("0.##", style.Culture))] : (DisplayRow[])[],
        ],
    };

    private string Title(TextStyle style) => Count == 0
        ? "no bags"
        : string.Join(", ", Bags.Select(bag => $"{QuantityText.Of(bag.Count, style)} × {QuantityText.Of(bag.Offer.Volume, style)}"));

    private string ToString(TextStyle style) =>
        $"{Title(style)}: {QuantityText.Of(Bought, style)} for a need of {QuantityText.Of(Needed, style)},"
        + $" {QuantityText.Of(LeftOver, style)} left over{(Cost is decimal cost ? $", {cost.ToString("0.##", style.Culture)} to pay" : "")}";
}
