using System.Text.Json.Serialization;
using HortiCalc.Display;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Mixes;

/// <summary>What a feed holds: nitrogen, and phosphorus and potassium as elements with the oxides beside them.</summary>
/// <remarks>Immutable; equal by value. Milligrams per litre are what the trade calls parts per million.</remarks>
[TypeFormatterSource(typeof(DisplayFormatters))]
public sealed record FeedStrength : IFormattable, IDisplayable
{
    /// <summary>States what a feed holds.</summary>
    /// <param name="product">The mass of the product per volume of feed; 0 or more.</param>
    /// <param name="nitrogen">Nitrogen; 0 or more.</param>
    /// <param name="phosphorus">Phosphorus as the element; 0 or more.</param>
    /// <param name="potassium">Potassium as the element; 0 or more.</param>
    /// <exception cref="ArgumentOutOfRangeException">A concentration is negative.</exception>
    public FeedStrength(MassConcentration product, MassConcentration nitrogen, MassConcentration phosphorus, MassConcentration potassium)
    {
        Guard.NotNegative(Boundary.MilligramsPerLitre(product), "mg/L", nameof(product));
        Guard.NotNegative(Boundary.MilligramsPerLitre(nitrogen), "mg/L", nameof(nitrogen));
        Guard.NotNegative(Boundary.MilligramsPerLitre(phosphorus), "mg/L", nameof(phosphorus));
        Guard.NotNegative(Boundary.MilligramsPerLitre(potassium), "mg/L", nameof(potassium));
        Product = HouseUnits.Normalise(product);
        Nitrogen = HouseUnits.Normalise(nitrogen);
        Phosphorus = HouseUnits.Normalise(phosphorus);
        Potassium = HouseUnits.Normalise(potassium);
    }

    /// <summary>The product.</summary>
    public MassConcentration Product { get; }

    /// <summary>Nitrogen.</summary>
    public MassConcentration Nitrogen { get; }

    /// <summary>Phosphorus, as the element.</summary>
    public MassConcentration Phosphorus { get; }

    /// <summary>Potassium, as the element.</summary>
    public MassConcentration Potassium { get; }

    /// <summary>Phosphorus counted as P₂O₅.</summary>
    [JsonIgnore]
    public MassConcentration Phosphate => AsOxide(Phosphorus, NutrientOxide.Phosphate);

    /// <summary>Potassium counted as K₂O.</summary>
    [JsonIgnore]
    public MassConcentration Potash => AsOxide(Potassium, NutrientOxide.Potash);

    /// <summary>The feed in metric units and invariant culture.</summary>
    /// <returns>One line: product, nitrogen, phosphorus, potassium.</returns>
    public override string ToString() => ToString(null, null);

    /// <summary>The feed as one line of text.</summary>
    /// <param name="format"><c>M</c> or nothing for metric units, <c>U</c> for US customary ones.</param>
    /// <param name="formatProvider">The culture, or <see langword="null"/> for the invariant one.</param>
    /// <returns>One line: product, nitrogen, phosphorus, potassium.</returns>
    /// <exception cref="FormatException">The format is another one.</exception>
    public string ToString(string? format, IFormatProvider? formatProvider)
    {
        TextStyle style = TextStyle.Parse(format, formatProvider);
        return $"{QuantityText.Of(Product, style)} of product: nitrogen {QuantityText.Of(Nitrogen, style)}, "
            + $"phosphorus {QuantityText.Of(Phosphorus, style)}, potassium {QuantityText.Of(Potassium, style)}";
    }

    DisplayBlock IDisplayable.ToDisplay(TextStyle style) => new($"Feed of {QuantityText.Of(Product, style)}")
    {
        Rows =
        [
            new DisplayRow("nitrogen", QuantityText.Of(Nitrogen, style)),
            new DisplayRow("phosphorus", $"{QuantityText.Of(Phosphorus, style)} ({QuantityText.Of(Phosphate, style)} as P2O5)"),
            new DisplayRow("potassium", $"{QuantityText.Of(Potassium, style)} ({QuantityText.Of(Potash, style)} as K2O)"),
        ],
    };

    private static MassConcentration AsOxide(MassConcentration element, NutrientOxide oxide) =>
        MassConcentration.FromMilligramsPerLiter(Boundary.MilligramsPerLitre(element) / NutrientOxides.ElementPerOxide(oxide));
}
