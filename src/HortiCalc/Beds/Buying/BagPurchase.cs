using HortiCalc.Display;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Beds;

/// <summary>Whole bags bought for a need.</summary>
/// <remarks>
/// Immutable; equal when need and bag are equal. A need that misses a whole number of bags only by the noise of binary
/// fractions (a part in 10⁹) is taken as that number: three times 0.1 is three bags of 0.1, not four.
/// </remarks>
[TypeFormatterSource(typeof(DisplayFormatters))]
public sealed record BagPurchase : IFormattable, IDisplayable
{
    /// <summary>Counts the fewest whole bags of one size that cover a need.</summary>
    /// <param name="needed">The volume needed; zero or more.</param>
    /// <param name="bag">The volume of one bag; greater than zero.</param>
    /// <exception cref="ArgumentOutOfRangeException">The need is negative, the bag is not greater than zero, or the count is
    /// beyond two thousand million.</exception>
    public BagPurchase(Volume needed, Volume bag)
    {
        Guard.NotNegative(Boundary.Litres(needed), "L", nameof(needed));
        Guard.Positive(Boundary.Litres(bag), "L", nameof(bag));
        Needed = HouseUnits.Normalise(needed);
        Bag = HouseUnits.Normalise(bag);
        double neededLitres = Boundary.Litres(Needed);
        double bagLitres = Boundary.Litres(Bag);
        Count = WholeCount.Covering(neededLitres / bagLitres, "bags", nameof(needed));
        Bought = Volume.FromLiters(Count * bagLitres);
        LeftOver = Volume.FromLiters(WholeCount.Rest(Count * bagLitres, neededLitres));
    }

    /// <summary>The volume needed.</summary>
    public Volume Needed { get; }

    /// <summary>The volume of one bag.</summary>
    public Volume Bag { get; }

    /// <summary>How many bags.</summary>
    public int Count { get; }

    /// <summary>What the bags hold together.</summary>
    public Volume Bought { get; }

    /// <summary>What is bought beyond the need.</summary>
    public Volume LeftOver { get; }

    /// <summary>The purchase in metric units and invariant culture.</summary>
    /// <returns>For instance <c>3 bags of 40 L: 120 L for a need of 115 L, 5 L left over</c>.</returns>
    public override string ToString() => ToString(TextStyle.Default);

    /// <summary>The purchase as one line of text.</summary>
    /// <param name="format"><c>M</c> or nothing for metric units, <c>U</c> for US customary ones.</param>
    /// <param name="formatProvider">The culture, or <see langword="null"/> for the invariant one.</param>
    /// <returns>The count, the bag, what is bought, needed and left over.</returns>
    /// <exception cref="FormatException">The format is another one.</exception>
    public string ToString(string? format, IFormatProvider? formatProvider) => ToString(TextStyle.Parse(format, formatProvider));

    DisplayBlock IDisplayable.ToDisplay(TextStyle style) => new(Title(style))
    {
        Rows =
        [
            new DisplayRow("needed", QuantityText.Of(Needed, style)),
            new DisplayRow("bought", QuantityText.Of(Bought, style)),
            new DisplayRow("left over", QuantityText.Of(LeftOver, style)),
        ],
    };

    private string Title(TextStyle style) =>
        $"{QuantityText.Of(Count, style)} {(Count == 1 ? "bag" : "bags")} of {QuantityText.Of(Bag, style)}";

    private string ToString(TextStyle style) =>
        $"{Title(style)}: {QuantityText.Of(Bought, style)} for a need of {QuantityText.Of(Needed, style)},"
        + $" {QuantityText.Of(LeftOver, style)} left over";
}
