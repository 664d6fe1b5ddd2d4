using System.Text.Json.Serialization;
using HortiCalc.Display;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Beds;

/// <summary>A bed that is heaped up without a frame: the same section from end to end, with upright ends.</summary>
/// <remarks>
/// Immutable; equal when kind and dimensions are equal. Sloped ends hold less than this; measure a mound with sloped ends to the middle of
/// each slope. What is round in plan is a <see cref="Heap"/>.
/// </remarks>
/// <example><code>
/// Mound ridge = Mound.Rounded(width: Length.FromMeters(1.2), height: Length.FromCentimeters(40), length: Length.FromMeters(5));
/// Volume soil = ridge.Volume; // 1734 L
/// Area toPlant = ridge.Surface; // 7.64 m²
/// Volume mulch = Amendment.VolumeFor(ridge.Surface, Length.FromCentimeters(5));
/// </code></example>
[JsonPolymorphic(TypeDiscriminatorPropertyName = "kind")]
[JsonDerivedType(typeof(RoundedMound), "rounded")]
[JsonDerivedType(typeof(FlatToppedMound), "flat-topped")]
public abstract record Mound : IFormattable, IDisplayable
{
    private protected Mound(Length width, Length height, Length length)
    {
        Width = Dimension.PositiveKept(width, nameof(width));
        Height = Dimension.PositiveKept(height, nameof(height));
        Length = Dimension.PositiveKept(length, nameof(length));
    }

    /// <summary>Across the foot.</summary>
    public Length Width { get; }

    /// <summary>From the ground to the top.</summary>
    public Length Height { get; }

    /// <summary>From end to end.</summary>
    public Length Length { get; }

    /// <summary>The ground it stands on.</summary>
    [JsonIgnore]
    public RectangleBed Ground => Bed.Rectangle(Width, Length);

    /// <summary>The area of a cut straight across.</summary>
    [JsonIgnore]
    public Area Section => Area.FromSquareMeters(SectionSquareMetres);

    /// <summary>What it is heaped up of.</summary>
    [JsonIgnore]
    public Volume Volume => Volume.FromLiters(SectionSquareMetres * Boundary.Metres(Length) * 1000);

    /// <summary>Top and sides, to plant and to mulch; the two ends are not counted.</summary>
    [JsonIgnore]
    public Area Surface => Area.FromSquareMeters(GirthMetres * Boundary.Metres(Length));

    internal abstract double SectionSquareMetres { get; }

    internal abstract double GirthMetres { get; }

    /// <summary>A mound whose section is a part of a circle.</summary>
    /// <param name="width">Across the foot; greater than zero.</param>
    /// <param name="height">From the ground to the top; greater than zero, at most half the width.</param>
    /// <param name="length">From end to end; greater than zero.</param>
    /// <returns>The mound.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A dimension is not greater than zero, or the mound is higher than half a circle.</exception>
    public static RoundedMound Rounded(Length width, Length height, Length length) => new(width, height, length);

    /// <summary>A mound with a flat top and straight sides.</summary>
    /// <param name="width">Across the foot; greater than zero.</param>
    /// <param name="top">Across the top; zero or more, at most the width.</param>
    /// <param name="height">From the ground to the top; greater than zero.</param>
    /// <param name="length">From end to end; greater than zero.</param>
    /// <returns>The mound.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A dimension is not greater than zero, or the top is wider than the foot.</exception>
    public static FlatToppedMound FlatTopped(Length width, Length top, Length height, Length length) => new(width, top, height, length);

    /// <summary>The mound in metric units and invariant culture.</summary>
    /// <returns>For instance <c>rounded mound 1.2 m wide, 40 cm high, 5 m long, 1.73 m³</c>.</returns>
    public sealed override string ToString() => ToString(TextStyle.Default);

    /// <summary>The mound as one line of text.</summary>
    /// <param name="format"><c>M</c> or nothing for metric units, <c>U</c> for US customary ones.</param>
    /// <param name="formatProvider">The culture, or <see langword="null"/> for the invariant one.</param>
    /// <returns>The shape, its dimensions and its volume.</returns>
    /// <exception cref="FormatException">The format is another one.</exception>
    public string ToString(string? format, IFormatProvider? formatProvider) => ToString(TextStyle.Parse(format, formatProvider));

    DisplayBlock IDisplayable.ToDisplay(TextStyle style) => new(Title(style))
    {
        Rows =
        [
            new DisplayRow("volume", QuantityText.Of(Volume, style)),
            new DisplayRow("surface", QuantityText.Of(Surface, style)),
            new DisplayRow("ground", QuantityText.Of(Ground.Area, style)),
        ],
    };

    private protected abstract string Shape(TextStyle style);

    private string Title(TextStyle style) =>
        $"{Shape(style)} {QuantityText.Of(Width, style)} wide, {QuantityText.Of(Height, style)} high, {QuantityText.Of(Length, style)} long";

    private string ToString(TextStyle style) => $"{Title(style)}, {QuantityText.Of(Volume, style)}";
}
