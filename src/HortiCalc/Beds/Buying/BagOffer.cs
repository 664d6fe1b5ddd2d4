using HortiCalc.Display;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Beds;

/// <summary>A size of bag as a shop offers it.</summary>
/// <remarks>Immutable; equal when name, volume and price are equal.</remarks>
[TypeFormatterSource(typeof(DisplayFormatters))]
public sealed record BagOffer : IFormattable, IDisplayable
{
    /// <summary>Describes an offer.</summary>
    /// <param name="name">What it is called in the shop; each offer has its own.</param>
    /// <param name="volume">What one bag holds; greater than zero.</param>
    /// <param name="price">What one costs, in any currency, the same for all offers; zero or more; <see langword="null"/> where it does not
    /// matter.</param>
    /// <exception cref="ArgumentException">The name is empty.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The volume is not greater than zero, or the price is negative.</exception>
    public BagOffer(string name, Volume volume, decimal? price = null)
    {
        Name = Guard.NotBlank(name);
        Guard.Positive(Boundary.Litres(volume), "L", nameof(volume));
        Volume = HouseUnits.Normalise(volume);
        if (price is decimal asked)
            Guard.NotNegative((double)asked, "", nameof(price));
        Price = price;
    }

    /// <summary>What it is called in the shop.</summary>
    public string Name { get; }

    /// <summary>What one bag holds.</summary>
    public Volume Volume { get; }

    /// <summary>What one costs; <see langword="null"/> where it does not matter.</summary>
    public decimal? Price { get; }

    /// <summary>The offer in metric units and invariant culture.</summary>
    /// <returns>For instance <c>large, 50 L for 7.5</c>.</returns>
    public override string ToString() => ToString(TextStyle.Default);

    /// <summary>The offer as one line of text.</summary>
    /// <param name="format"><c>M</c> or nothing for metric units, <c>U</c> for US customary ones.</param>
    /// <param name="formatProvider">The culture, or <see langword="null"/> for the invariant one.</param>
    /// <returns>Name, volume and price.</returns>
    /// <exception cref="FormatException">The format is another one.</exception>
    public string ToString(string? format, IFormatProvider? formatProvider) => ToString(TextStyle.Parse(format, formatProvider));

    DisplayBlock IDisplayable.ToDisplay(TextStyle style) => new(Name)
    {
        Rows =
        [
            new DisplayRow("volume", QuantityText.Of(Volume, style)),
            .. Price is decimal price ? [new DisplayRow("price", price.ToString("0.##", style.Culture))] : (DisplayRow[])[],
        ],
    };

    private string ToString(TextStyle style) =>
        $"{Name}, {QuantityText.Of(Volume, style)}{(Price is decimal price ? " for " + price.ToString("0.##", style.Culture) : "")}";
}
