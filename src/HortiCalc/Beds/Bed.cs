using System.Text.Json.Serialization;
using HortiCalc.Display;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Beds;

/// <summary>A bed by its shape in plan: how much ground it covers, how much edging goes round it, how much fills it.</summary>
/// <remarks>
/// Immutable; equal when kind and dimensions are equal, in whatever units they were given. All figures are exact geometry.
/// The set of shapes is closed: each is a record of its own, and JSON tells them apart by <c>kind</c>.
/// </remarks>
/// <example><code>
/// Bed bed = Bed.Rectangle(width: Length.FromMeters(1.2), length: Length.FromMeters(4));
/// Volume soil = bed.FillVolume(Length.FromCentimeters(25)); // 1200 L
/// BagPurchase bags = Bags.ToBuy(soil, Volume.FromLiters(50)); // 24 bags
/// </code></example>
[JsonPolymorphic(TypeDiscriminatorPropertyName = "kind")]
[JsonDerivedType(typeof(RectangleBed), "rectangle")]
[JsonDerivedType(typeof(CircleBed), "circle")]
[JsonDerivedType(typeof(TriangleBed), "triangle")]
[JsonDerivedType(typeof(LShapeBed), "l-shape")]
[JsonDerivedType(typeof(PolygonBed), "polygon")]
public abstract record Bed : IFormattable, IDisplayable
{
    private protected Bed()
    {
    }

    /// <summary>The ground covered.</summary>
    [JsonIgnore]
    public Area Area => Area.FromSquareMeters(SquareMetres);

    /// <summary>The length of the outline: the edging to buy, before joints and waste.</summary>
    [JsonIgnore]
    public Length Perimeter => Length.FromMeters(PerimeterMetres);

    internal abstract double SquareMetres { get; }

    internal abstract double PerimeterMetres { get; }

    /// <summary>A bed with four right angles.</summary>
    /// <param name="width">One side; greater than zero.</param>
    /// <param name="length">The other side; greater than zero.</param>
    /// <returns>The bed.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A side is not greater than zero.</exception>
    public static RectangleBed Rectangle(Length width, Length length) => new(width, length);

    /// <summary>A round bed.</summary>
    /// <param name="diameter">Straight across through the middle; greater than zero.</param>
    /// <returns>The bed.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The diameter is not greater than zero.</exception>
    public static CircleBed Circle(Length diameter) => new(diameter);

    /// <summary>A bed with three straight sides, by their lengths, in any order.</summary>
    /// <param name="a">One side; greater than zero.</param>
    /// <param name="b">Another side; greater than zero.</param>
    /// <param name="c">The third side; greater than zero.</param>
    /// <returns>The bed.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A side is not greater than zero, or not shorter than the other two
    /// together.</exception>
    public static TriangleBed Triangle(Length a, Length b, Length c) => new(a, b, c);

    /// <summary>An L: a rectangle with a smaller rectangle missing at one corner.</summary>
    /// <param name="width">One side of the whole rectangle; greater than zero.</param>
    /// <param name="length">The other side of the whole rectangle; greater than zero.</param>
    /// <param name="cutoutWidth">The missing corner along <paramref name="width"/>; greater than zero and shorter than it.</param>
    /// <param name="cutoutLength">The missing corner along <paramref name="length"/>; greater than zero and shorter than
    /// it.</param>
    /// <returns>The bed.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A side is not greater than zero, or the missing corner reaches
    /// across.</exception>
    public static LShapeBed LShape(Length width, Length length, Length cutoutWidth, Length cutoutLength) =>
        new(width, length, cutoutWidth, cutoutLength);

    /// <summary>A bed of any outline with straight sides, by its corners in the order in which one walks round it.</summary>
    /// <param name="corners">Three corners or more, either way round, the first not repeated at the end.</param>
    /// <returns>The bed.</returns>
    /// <exception cref="ArgumentOutOfRangeException">There are fewer than three corners, or a coordinate is out of
    /// bounds.</exception>
    /// <exception cref="ArgumentException">Two corners coincide, or the outline crosses or touches itself.</exception>
    public static PolygonBed Polygon(params IReadOnlyList<BedCorner> corners) => new(corners);

    /// <summary>The volume that fills the bed to a depth: area times depth. No allowance for settling is added.</summary>
    /// <param name="depth">The depth of the fill; zero or more.</param>
    /// <returns>The volume.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The depth is negative or beyond a million metres.</exception>
    public Volume FillVolume(Length depth) =>
        Volume.FromLiters(SquareMetres * Dimension.NotNegative(depth, nameof(depth)) * 1000);

    /// <summary>The bed in metric units and invariant culture.</summary>
    /// <returns>For instance <c>rectangle 1.2 m by 4 m, 4.8 m²</c>.</returns>
    public sealed override string ToString() => ToString(TextStyle.Default);

    /// <summary>The bed as one line of text.</summary>
    /// <param name="format"><c>M</c> or nothing for metric units, <c>U</c> for US customary ones.</param>
    /// <param name="formatProvider">The culture, or <see langword="null"/> for the invariant one.</param>
    /// <returns>The shape, its dimensions and its area.</returns>
    /// <exception cref="FormatException">The format is another one.</exception>
    public string ToString(string? format, IFormatProvider? formatProvider) => ToString(TextStyle.Parse(format, formatProvider));

    DisplayBlock IDisplayable.ToDisplay(TextStyle style) => new(Shape(style))
    {
        Rows =
        [
            new DisplayRow("area", QuantityText.Of(Area, style)),
            new DisplayRow("perimeter", QuantityText.Of(Perimeter, style)),
        ],
    };

    /// <summary>The shape with its dimensions, for a reader.</summary>
    private protected abstract string Shape(TextStyle style);

    private string ToString(TextStyle style) => $"{Shape(style)}, {QuantityText.Of(Area, style)}";
}
