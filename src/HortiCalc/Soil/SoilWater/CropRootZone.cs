using System.Text.Json.Serialization;
using HortiCalc.Display;
using HortiCalc.Evidence;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Soil;

/// <summary>How deep a crop roots, as one source prints it, and what share of the water there it takes without loss.</summary>
/// <remarks>Immutable; equal when all members are equal. For watering take the low end: FAO-56 keeps the high one for rainfed crops.</remarks>
public sealed record CropRootZone : IFormattable
{
    /// <summary>Holds a printed row.</summary>
    /// <param name="crop">The crop, as printed.</param>
    /// <param name="low">The low end of the depth; above zero.</param>
    /// <param name="high">The high end; not below the low one.</param>
    /// <param name="meaning">What the source means by the depth.</param>
    /// <param name="source">Where it is printed.</param>
    /// <param name="depletion">The share of the available water that the crop takes without loss where it uses 5 mm a day, where it is printed; above 0, up to 100 %.</param>
    /// <exception cref="ArgumentNullException">The source is missing.</exception>
    /// <exception cref="ArgumentException">A text is empty.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A depth or the share is outside its range.</exception>
    public CropRootZone(string crop, Length low, Length high, string meaning, Source source, Ratio? depletion = null)
    {
        Crop = Guard.NotBlank(crop);
        double lowMetres = Guard.Positive(Boundary.Metres(low), "m", nameof(low));
        Guard.AtLeast(Boundary.Metres(high), lowMetres, "m", nameof(high));
        Low = HouseUnits.Normalise(low);
        High = HouseUnits.Normalise(high);
        Meaning = Guard.NotBlank(meaning);
        Source = Guard.NotNull(source);
        if (depletion is { } share)
        {
            Guard.Within(Guard.Positive(Boundary.Fraction(share) * 100, "%", nameof(depletion)), 0, 100, "%", nameof(depletion));
            Depletion = HouseUnits.Normalise(share);
        }
    }

    /// <summary>The crop, as printed.</summary>
    public string Crop { get; }

    /// <summary>The low end of the depth.</summary>
    public Length Low { get; }

    /// <summary>The high end of the depth.</summary>
    public Length High { get; }

    /// <summary>What the source means by the depth.</summary>
    public string Meaning { get; }

    /// <summary>Where it is printed.</summary>
    public Source Source { get; }

    /// <summary>The share of the available water that the crop takes without loss where it uses 5 mm a day, where it is printed.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public Ratio? Depletion { get; }

    /// <summary>The row in metric units and invariant culture.</summary>
    /// <returns>For instance <c>Lettuce: 30 cm to 50 cm, maximum effective rooting depth [...]</c>.</returns>
    public override string ToString() => ToString(TextStyle.Default);

    /// <summary>The row as one line of text.</summary>
    /// <param name="format"><c>M</c> or nothing for metric units, <c>U</c> for US customary ones.</param>
    /// <param name="formatProvider">The culture, or <see langword="null"/> for the invariant one.</param>
    /// <returns>The crop, the depth, its meaning and the source.</returns>
    /// <exception cref="FormatException">The format is another one.</exception>
    public string ToString(string? format, IFormatProvider? formatProvider) => ToString(TextStyle.Parse(format, formatProvider));

    internal string ToString(TextStyle style) =>
        $"{Crop}: {QuantityText.Of(Low, style)} to {QuantityText.Of(High, style)}, {Meaning}"
        + $"{(Depletion is { } share ? $", {QuantityText.Of(share, style)} without loss" : "")} [{Source}]";
}
