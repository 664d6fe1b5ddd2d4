using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Soil;

/// <summary>How much of one product a plan takes.</summary>
/// <remarks>Immutable; equal when all members are equal.</remarks>
public sealed record FertilizerLine
{
    /// <summary>Holds a line.</summary>
    /// <param name="offer">The product as it is sold.</param>
    /// <param name="rate">Its mass per area; zero or more.</param>
    /// <exception cref="ArgumentNullException">The offer is <see langword="null"/>.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The rate is negative.</exception>
    public FertilizerLine(FertilizerOffer offer, AreaDensity rate)
    {
        Offer = Guard.NotNull(offer);
        Guard.NotNegative(Boundary.GramsPerSquareMetre(rate), "g/m²", nameof(rate));
        Rate = HouseUnits.Normalise(rate);
    }

    /// <summary>The product as it is sold.</summary>
    public FertilizerOffer Offer { get; }

    /// <summary>Its mass per area.</summary>
    public AreaDensity Rate { get; }

    /// <summary>The mass for an area.</summary>
    /// <param name="area">The area; zero or more.</param>
    /// <returns>The mass.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The area is negative.</exception>
    public Mass Over(Area area) => Mass.FromKilograms(
        Boundary.GramsPerSquareMetre(Rate) * Guard.NotNegative(Boundary.SquareMetres(area), "m²", nameof(area)) / 1000);

    /// <summary>The whole bags for an area.</summary>
    /// <param name="area">The area; zero or more.</param>
    /// <returns>The bags to buy, a part of one counted as one; <see langword="null"/> where the bag is not known.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The area is negative, or so large that the bags cannot be counted.</exception>
    public int? Bags(Area area)
    {
        double kilograms = Boundary.Kilograms(Over(area));
        if (Offer.Bag is not { } bag)
            return null;

        // A hair above a whole number of bags is rounding, not another bag.
        double bags = Math.Ceiling(kilograms / Boundary.Kilograms(bag) * (1 - 1e-12));
        return bags <= int.MaxValue ? (int)bags : throw Guard.Refused(nameof(area), Boundary.SquareMetres(area), "m²", "what fewer than two thousand million bags cover");
    }

    /// <summary>The product and its rate, in invariant culture.</summary>
    /// <returns>For instance <c>urea 17.4 g/m²</c>.</returns>
    public override string ToString() => $"{Offer.Product.Name} {Guard.Number(Math.Round(Boundary.GramsPerSquareMetre(Rate), 3, MidpointRounding.AwayFromZero))} g/m²";
}
