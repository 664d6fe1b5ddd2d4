using System.Globalization;
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

    /// <summary>One line of text in metric units and invariant culture.</summary>
    /// <returns>For instance <c>potassium nitrate at 1.5 per kg</c>.</returns>
    public override string ToString() => PricePerKilogram is decimal price ? $"{Salt.Name} at {price.ToString(CultureInfo.InvariantCulture)} per kg" : Salt.Name;
}
