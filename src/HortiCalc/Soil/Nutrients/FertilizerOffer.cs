using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Soil;

/// <summary>A product as it is sold: in bags of a mass, at a price in whatever money.</summary>
/// <remarks>Immutable; equal when all members are equal.</remarks>
public sealed record FertilizerOffer
{
    /// <summary>Describes an offer.</summary>
    /// <param name="product">The product.</param>
    /// <param name="bag">The mass of one bag, or <see langword="null"/> where it is not known; above zero.</param>
    /// <param name="price">The price of one bag, or <see langword="null"/> where it is not known; zero or more, and only with a bag.</param>
    /// <exception cref="ArgumentNullException">The product is <see langword="null"/>.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The bag is not above zero, or the price is negative.</exception>
    /// <exception cref="ArgumentException">There is a price without a bag.</exception>
    public FertilizerOffer(Fertilizer product, Mass? bag = null, decimal? price = null)
    {
        Product = Guard.NotNull(product);
        if (bag is { } given)
        {
            Guard.Positive(Boundary.Kilograms(given), "kg", nameof(bag));
            Bag = HouseUnits.Normalise(given);
        }

        if (price is { } asked)
        {
            Guard.NotNegative((double)asked, "", nameof(price));
            if (bag is null)
                throw new ArgumentException("price was given without bag; allowed: a price of a bag of known mass.", nameof(price));
        }

        Price = price;
    }

    /// <summary>The product.</summary>
    public Fertilizer Product { get; }

    /// <summary>The mass of one bag, or <see langword="null"/> where it is not known.</summary>
    public Mass? Bag { get; }

    /// <summary>The price of one bag, or <see langword="null"/> where it is not known.</summary>
    public decimal? Price { get; }

    internal double? PricePerKilogram => Price is { } asked && Bag is { } bag ? (double)asked / Boundary.Kilograms(bag) : null;

    /// <summary>The product and its bag, in invariant culture.</summary>
    /// <returns>For instance <c>urea, 25 kg for 30</c>.</returns>
    public override string ToString()
    {
        string bag = Bag is { } mass ? $", {Guard.Number(Boundary.Kilograms(mass))} kg" : "";
        string price = Price is { } asked ? $" for {asked.ToString(System.Globalization.CultureInfo.InvariantCulture)}" : "";
        return Product.Name + bag + price;
    }
}
