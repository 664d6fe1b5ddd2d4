using HortiCalc.Beds;
using HortiCalc.Display;
using HortiCalc.Evidence;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Season;

/// <summary>What is spread on a bed.</summary>
public sealed record AmendmentSupply : SupplyLine
{
    /// <summary>Describes what is spread on a bed.</summary>
    /// <param name="place">The bed.</param>
    /// <param name="item">The material.</param>
    /// <param name="volume">The volume to buy.</param>
    /// <param name="layer">How deep it is spread and worked in.</param>
    /// <param name="evidence">The methods it rests on; at least one.</param>
    /// <param name="purchase">The bags to buy, or <see langword="null"/> where it comes loose.</param>
    public AmendmentSupply(
        string place, string item, Volume volume, AmendmentLayer layer, IReadOnlyList<Method> evidence, BagPurchase? purchase = null)
        : base(place, evidence)
    {
        Item = Guard.NotBlank(item);
        Volume = HouseUnits.Normalise(volume);
        Layer = Guard.NotNull(layer);
        Purchase = purchase;
    }

    /// <inheritdoc/>
    public override string Item { get; }

    /// <summary>The volume to buy.</summary>
    public Volume Volume { get; }

    /// <summary>How deep it is spread and worked in.</summary>
    public AmendmentLayer Layer { get; }

    /// <summary>The bags to buy, or <see langword="null"/>.</summary>
    public BagPurchase? Purchase { get; }

    private protected override string Amount(TextStyle style) => QuantityText.Of(Volume, style);

    private protected override string Bags(TextStyle style) => Purchase is null ? "" : BagText(Purchase.Count, Purchase.Bag, style);

    private protected override string Note(TextStyle style)
    {
        string worked = Layer.MixedDepth is Length depth ? $", worked in to {QuantityText.Of(depth, style)}" : ", left on top";
        string settling = Boundary.Fraction(Layer.SettlingAllowance) > 0 ? $"; {QuantityText.Of(Layer.SettlingAllowance, style)} for settling" : "";
        return $"{QuantityText.Of(Layer.LooseDepth, style)} layer{worked}{settling}";
    }
}
