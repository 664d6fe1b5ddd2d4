namespace HortiCalc.Beds;

/// <summary>So many bags of one offer.</summary>
/// <param name="Offer">The offer.</param>
/// <param name="Count">How many of it; one or more.</param>
public sealed record BagCount(BagOffer Offer, int Count)
{
    /// <summary>Count and offer in metric units and invariant culture.</summary>
    /// <returns>For instance <c>2 of large, 50 L for 7.5</c>.</returns>
    public override string ToString() => FormattableString.Invariant($"{Count} of {Offer}");
}
