using HortiCalc.Display;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Beds;

/// <summary>Loose material ordered by volume, where the supplier has a least load and sells beyond it in steps.</summary>
/// <remarks>Immutable; equal when need, step and least load are equal.</remarks>
/// <example><code>
/// BulkPurchase load = new(
///     needed: Volume.FromCubicMeters(1.3), step: Volume.FromCubicMeters(0.5), least: Volume.FromCubicMeters(1));
/// Volume ordered = load.Bought; // 1500 L
/// </code></example>
[TypeFormatterSource(typeof(DisplayFormatters))]
public sealed record BulkPurchase : IFormattable, IDisplayable
{
    /// <summary>Counts the steps that cover a need.</summary>
    /// <param name="needed">The volume needed; zero or more. None needed is nothing ordered.</param>
    /// <param name="step">What the order rises by; greater than zero.</param>
    /// <param name="least">The least load; zero where the first step will do.</param>
    /// <exception cref="ArgumentOutOfRangeException">The need or the least load is negative, or the step is not greater than zero.</exception>
    public BulkPurchase(Volume needed, Volume step, Volume least)
    {
        double neededLitres = Guard.NotNegative(Boundary.Litres(needed), "L", nameof(needed));
        double stepLitres = Guard.Positive(Boundary.Litres(step), "L", nameof(step));
        double leastLitres = Guard.NotNegative(Boundary.Litres(least), "L", nameof(least));
        Needed = HouseUnits.Normalise(needed);
        Step = HouseUnits.Normalise(step);
        Least = HouseUnits.Normalise(least);
        double beyondLitres = WholeCount.Rest(neededLitres, leastLitres);
        double boughtLitres = neededLitres == 0 ? 0
            : leastLitres + (beyondLitres > 0 ? WholeCount.Covering(beyondLitres / stepLitres, "steps", nameof(needed)) * stepLitres : 0);
        Bought = Volume.FromLiters(boughtLitres);
        LeftOver = Volume.FromLiters(WholeCount.Rest(boughtLitres, neededLitres));
    }

    /// <summary>The volume needed.</summary>
    public Volume Needed { get; }

    /// <summary>What the order rises by.</summary>
    public Volume Step { get; }

    /// <summary>The least load.</summary>
    public Volume Least { get; }

    /// <summary>What to order.</summary>
    public Volume Bought { get; }

    /// <summary>What is bought beyond the need.</summary>
    public Volume LeftOver { get; }

    /// <summary>The order in metric units and invariant culture.</summary>
    /// <returns>For instance <c>1.5 m³ loose for a need of 1.3 m³, 200 L left over</c>.</returns>
    public override string ToString() => ToString(TextStyle.Default);

    /// <summary>The order as one line of text.</summary>
    /// <param name="format"><c>M</c> or nothing for metric units, <c>U</c> for US customary ones.</param>
    /// <param name="formatProvider">The culture, or <see langword="null"/> for the invariant one.</param>
    /// <returns>What is ordered, needed and left over.</returns>
    /// <exception cref="FormatException">The format is another one.</exception>
    public string ToString(string? format, IFormatProvider? formatProvider) => ToString(TextStyle.Parse(format, formatProvider));

    DisplayBlock IDisplayable.ToDisplay(TextStyle style) => new($"{QuantityText.Of(Bought, style)} loose")
    {
        Rows =
        [
            new DisplayRow("needed", QuantityText.Of(Needed, style)),
            new DisplayRow("least load", QuantityText.Of(Least, style)),
            new DisplayRow("steps of", QuantityText.Of(Step, style)),
            new DisplayRow("left over", QuantityText.Of(LeftOver, style)),
        ],
    };

    private string ToString(TextStyle style) =>
        $"{QuantityText.Of(Bought, style)} loose for a need of {QuantityText.Of(Needed, style)}, {QuantityText.Of(LeftOver, style)} left over";
}
