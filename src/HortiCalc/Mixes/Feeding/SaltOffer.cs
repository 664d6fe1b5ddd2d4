using HortiCalc.Units;

namespace HortiCalc.Mixes;

/// <summary>A salt that is at hand for a nutrient solution, and what it costs.</summary>
public sealed record SaltOffer
{
    /// <summary>Names a salt that is at hand.</summary>
    /// <param name="salt">The salt, with the purity of the product.</param>
    /// <param name="pricePerKilogram">What a kilogram costs, in any currency; 0 or more, <see langword="null"/> where it is not known.</param>
    /// <exception cref="ArgumentOutOfRangeException">The price is negative.</exception>
    public SaltOffer(NutrientSalt salt, decimal? pricePerKilogram = null)
    {
        Salt = Guard.NotNull(salt);
        if (pricePerKilogram is decimal price)
            Guard.NotNegative((double)price, "per kg", nameof(pricePerKilogram));
        PricePerKilogram = pricePerKilogram;
    }

    /// <summary>The salt.</summary>
    public NutrientSalt Salt { get; }

    /// <summary>What a kilogram costs, or <see langword="null"/>.</summary>
    public decimal? PricePerKilogram { get; }
}
