using HortiCalc.Beds;
using HortiCalc.Display;
using HortiCalc.Evidence;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Season;

/// <summary>The medium that fills a number of like pots.</summary>
public sealed record MediumSupply : SupplyLine
{
    /// <summary>Describes the medium for pots.</summary>
    /// <param name="place">The pots.</param>
    /// <param name="item">The medium.</param>
    /// <param name="volume">The volume for all pots, the allowance included.</param>
    /// <param name="pots">How many pots.</param>
    /// <param name="perPot">What one pot holds.</param>
    /// <param name="compactionAllowance">What was added because the medium packs.</param>
    /// <param name="evidence">The methods it rests on; at least one.</param>
    /// <param name="purchase">The bags to buy, or <see langword="null"/> where it comes loose.</param>
    public MediumSupply(
        string place,
        string item,
        Volume volume,
        int pots,
        Volume perPot,
        Ratio compactionAllowance,
        IReadOnlyList<Method> evidence,
        BagPurchase? purchase = null)
        : base(place, evidence)
    {
        Item = Guard.NotBlank(item);
        Volume = HouseUnits.Normalise(volume);
        Pots = Guard.AtLeast(pots, 1);
        PerPot = HouseUnits.Normalise(perPot);
        CompactionAllowance = HouseUnits.Normalise(compactionAllowance);
        Purchase = purchase;
    }

    /// <inheritdoc/>
    public override string Item { get; }

    /// <summary>The volume for all pots, the allowance included.</summary>
    public Volume Volume { get; }

    /// <summary>How many pots.</summary>
    public int Pots { get; }

    /// <summary>What one pot holds.</summary>
    public Volume PerPot { get; }

    /// <summary>What was added because the medium packs.</summary>
    public Ratio CompactionAllowance { get; }

    /// <summary>The bags to buy, or <see langword="null"/>.</summary>
    public BagPurchase? Purchase { get; }

    private protected override string Amount(TextStyle style) => QuantityText.Of(Volume, style);

    private protected override string Bags(TextStyle style) => Purchase is null ? "" : BagText(Purchase.Count, Purchase.Bag, style);

    private protected override string Note(TextStyle style)
    {
        string packing = Boundary.Fraction(CompactionAllowance) > 0 ? $"; {QuantityText.Of(CompactionAllowance, style)} for packing" : "";
        return $"{QuantityText.Of(Pots, style)} {(Pots == 1 ? "pot" : "pots")} of {QuantityText.Of(PerPot, style)}{packing}";
    }
}
