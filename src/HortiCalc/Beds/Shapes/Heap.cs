using System.Text.Json.Serialization;
using HortiCalc.Display;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Beds;

/// <summary>A round heap with straight sides, pointed or flat on top: a hill for squashes, a mound round a tree, a load as it was tipped.</summary>
/// <remarks>
/// Immutable; equal when all dimensions are equal. Exact geometry of a cone or of one whose point is cut off; a <see cref="Mound"/> is long
/// instead of round. Where only the way round the foot can be measured, the diameter is that divided by π.
/// </remarks>
/// <example><code>
/// Heap hill = new(diameter: Length.FromMeters(1), top: Length.FromCentimeters(40), height: Length.FromCentimeters(30));
/// Volume soil = hill.Volume; // 123 L
/// Heap load = new(diameter: Length.FromFeet(12), top: Length.Zero, height: Length.FromFeet(4));
/// Volume delivered = load.Volume; // 5.58 cubic yards
/// </code></example>
[TypeFormatterSource(typeof(DisplayFormatters))]
public sealed record Heap : IFormattable, IDisplayable
{
    /// <summary>Describes a heap.</summary>
    /// <param name="diameter">Across the foot; greater than zero.</param>
    /// <param name="top">Across the flat top; zero where it is pointed, at most the diameter of the foot.</param>
    /// <param name="height">From the ground to the top; greater than zero.</param>
    /// <exception cref="ArgumentOutOfRangeException">A dimension is out of range, or the top is wider than the foot.</exception>
    public Heap(Length diameter, Length top, Length height)
    {
        Diameter = Dimension.PositiveKept(diameter, nameof(diameter));
        Top = Dimension.NotNegativeKept(top, nameof(top));
        Guard.Within(Boundary.Metres(Top), 0, Boundary.Metres(Diameter), "m", nameof(top));
        Height = Dimension.PositiveKept(height, nameof(height));
    }

    /// <summary>Across the foot.</summary>
    public Length Diameter { get; }

    /// <summary>Across the flat top; zero where it is pointed.</summary>
    public Length Top { get; }

    /// <summary>From the ground to the top.</summary>
    public Length Height { get; }

    /// <summary>The ground it stands on.</summary>
    [JsonIgnore]
    public CircleBed Ground => Bed.Circle(Diameter);

    /// <summary>What it is heaped up of.</summary>
    [JsonIgnore]
    public Volume Volume
    {
        get
        {
            double foot = Boundary.Metres(Diameter);
            double top = Boundary.Metres(Top);
            return UnitsNet.Volume.FromLiters(Math.PI / 12 * Boundary.Metres(Height) * (foot * foot + foot * top + top * top) * 1000);
        }
    }

    /// <summary>Top and sides, to plant and to mulch.</summary>
    [JsonIgnore]
    public Area Surface
    {
        get
        {
            double foot = Boundary.Metres(Diameter);
            double top = Boundary.Metres(Top);
            double slantMetres = double.Hypot((foot - top) / 2, Boundary.Metres(Height));
            return Area.FromSquareMeters(Math.PI / 4 * top * top + Math.PI / 2 * (foot + top) * slantMetres);
        }
    }

    /// <summary>The heap in metric units and invariant culture.</summary>
    /// <returns>For instance <c>heap 1 m across, 30 cm high, flat top of 40 cm, 123 L</c>.</returns>
    public override string ToString() => ToString(TextStyle.Default);

    /// <summary>The heap as one line of text.</summary>
    /// <param name="format"><c>M</c> or nothing for metric units, <c>U</c> for US customary ones.</param>
    /// <param name="formatProvider">The culture, or <see langword="null"/> for the invariant one.</param>
    /// <returns>The dimensions and the volume.</returns>
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

    private string Title(TextStyle style) =>
        $"heap {QuantityText.Of(Diameter, style)} across, {QuantityText.Of(Height, style)} high,"
        + (Boundary.Metres(Top) > 0 ? $" flat top of {QuantityText.Of(Top, style)}" : " pointed");

    private string ToString(TextStyle style) => $"{Title(style)}, {QuantityText.Of(Volume, style)}";
}
