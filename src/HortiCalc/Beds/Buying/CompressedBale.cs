using System.Text.Json.Serialization;
using HortiCalc.Display;
using HortiCalc.Evidence;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Beds;

/// <summary>A bale of compressed peat or coir: less on the label than it gives when it is loosened.</summary>
/// <remarks>Immutable; equal when label and expansion are equal.</remarks>
/// <example><code>
/// CompressedBale bale = new(Volume.FromCubicFeet(3.8), BaleExpansions.Arkansas);
/// Estimate&lt;Volume&gt; loose = bale.Loose; // 188 L (161 to 215 L)
/// BagPurchase bales = bale.ToBuy(Volume.FromLiters(500)); // 4, to be sure
/// </code></example>
[TypeFormatterSource(typeof(DisplayFormatters))]
public sealed record CompressedBale : IFormattable, IDisplayable
{
    /// <summary>Describes a bale.</summary>
    /// <param name="label">The volume on the label; greater than zero.</param>
    /// <param name="expansion">What it becomes when loosened: one of <see cref="BaleExpansions"/>, or one's own.</param>
    /// <exception cref="ArgumentOutOfRangeException">The volume is not greater than zero.</exception>
    public CompressedBale(Volume label, BaleExpansion expansion)
    {
        Guard.Positive(Boundary.Litres(label), "L", nameof(label));
        Label = HouseUnits.Normalise(label);
        Expansion = Guard.NotNull(expansion);
    }

    /// <summary>The volume on the label.</summary>
    public Volume Label { get; }

    /// <summary>What it becomes when loosened.</summary>
    public BaleExpansion Expansion { get; }

    /// <summary>The loose volume: the middle, with the span where the source prints one.</summary>
    [JsonIgnore]
    public Estimate<Volume> Loose
    {
        get
        {
            double low = Boundary.Litres(Label) * Boundary.Fraction(Expansion.Low);
            double high = Boundary.Litres(Label) * Boundary.Fraction(Expansion.High);
            Method method = new(
                "bale-expansion." + Expansion.Source.Key, "loose volume of a compressed bale", Expansion.Source, new Domain("compressed peat, fluffed dry to moist"));
            return new Estimate<Volume>(
                Volume.FromLiters((low + high) / 2),
                method,
                low < high ? new EstimateRange<Volume>(Volume.FromLiters(low), Volume.FromLiters(high), "range printed by the source") : null,
                cautions: [BedCautions.Dust]);
        }
    }

    /// <summary>The whole bales that cover a need even where they expand least.</summary>
    /// <param name="needed">The loose volume needed; zero or more.</param>
    /// <returns>The purchase, a bag being the least loose volume of a bale.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The need is negative.</exception>
    public BagPurchase ToBuy(Volume needed) => new(needed, Volume.FromLiters(Boundary.Litres(Label) * Boundary.Fraction(Expansion.Low)));

    /// <summary>The bale in metric units and invariant culture.</summary>
    /// <returns>For instance <c>bale of 108 L, 161 L to 215 L when loosened</c>.</returns>
    public override string ToString() => ToString(TextStyle.Default);

    /// <summary>The bale as one line of text.</summary>
    /// <param name="format"><c>M</c> or nothing for metric units, <c>U</c> for US customary ones.</param>
    /// <param name="formatProvider">The culture, or <see langword="null"/> for the invariant one.</param>
    /// <returns>Label and loose volume.</returns>
    /// <exception cref="FormatException">The format is another one.</exception>
    public string ToString(string? format, IFormatProvider? formatProvider) => ToString(TextStyle.Parse(format, formatProvider));

    DisplayBlock IDisplayable.ToDisplay(TextStyle style) => new($"bale of {QuantityText.Of(Label, style)}")
    {
        Rows = [new DisplayRow("loose", Figure(style)), new DisplayRow("source", Expansion.Source.ToString())],
    };

    private string Figure(TextStyle style)
    {
        Estimate<Volume> loose = Loose;
        return loose.Range is EstimateRange<Volume> range ? range.ToString(style) : QuantityText.Of(loose.Value, style);
    }

    private string ToString(TextStyle style) => $"bale of {QuantityText.Of(Label, style)}, {Figure(style)} when loosened";
}
