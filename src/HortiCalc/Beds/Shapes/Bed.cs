using System.Text.Json.Serialization;
using HortiCalc.Display;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Beds;

/// <summary>A bed by its shape in plan: how much ground it covers, how much edging goes round it, how much fills it.</summary>
/// <remarks>
/// Immutable; equal when kind and dimensions are equal, in whatever units they were given. All figures are exact geometry;
/// only an <see cref="OffsetBed"/> follows an outline that was measured at some places. What rises above the ground has types of
/// its own: <see cref="Mound"/> and <see cref="SlopingBed"/>.
/// The set of shapes is closed: each is a record of its own, and JSON tells them apart by <c>kind</c>.
/// </remarks>
/// <example><code>
/// Bed bed = Bed.Rectangle(width: Length.FromMeters(1.2), length: Length.FromMeters(4));
/// Volume soil = bed.FillVolume(Length.FromCentimeters(25)); // 1200 L
/// BagPurchase bags = Bags.ToBuy(soil, Volume.FromLiters(50)); // 24 bags
///
/// Bed path = Bed.Border(bed, width: Length.FromCentimeters(60));
/// Bed keyhole = Bed.Ring(Length.FromMeters(2), Length.FromCentimeters(50), entrance: Length.FromCentimeters(45));
/// Length edging = keyhole.Perimeter;
/// </code></example>
[JsonPolymorphic(TypeDiscriminatorPropertyName = "kind")]
[JsonDerivedType(typeof(RectangleBed), "rectangle")]
[JsonDerivedType(typeof(CircleBed), "circle")]
[JsonDerivedType(typeof(SectorBed), "sector")]
[JsonDerivedType(typeof(TriangleBed), "triangle")]
[JsonDerivedType(typeof(LShapeBed), "l-shape")]
[JsonDerivedType(typeof(PolygonBed), "polygon")]
[JsonDerivedType(typeof(EllipseBed), "ellipse")]
[JsonDerivedType(typeof(TrapeziumBed), "trapezium")]
[JsonDerivedType(typeof(RingBed), "ring")]
[JsonDerivedType(typeof(BorderBed), "border")]
[JsonDerivedType(typeof(CompositeBed), "composite")]
[JsonDerivedType(typeof(OffsetBed), "offsets")]
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

    /// <summary>How the outer outline grows; <see langword="null"/> where the bed has none that a border could follow.</summary>
    internal virtual BedOutline? Outline => null;

    /// <summary>Whether a border of this width would run into itself, as in the bay of a U.</summary>
    internal virtual bool BorderMeetsItself(double widthMetres) => false;

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

    /// <summary>A slice of a circle: half a circle against a wall, a quarter in a corner.</summary>
    /// <param name="radius">From the point to the arc; greater than zero.</param>
    /// <param name="angle">Between the two straight sides: 90° is a quarter, 180° half a circle; greater than 0°, less than 360°.</param>
    /// <returns>The bed.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The radius is not greater than zero, or the angle is out of range.</exception>
    public static SectorBed Sector(Length radius, Angle angle) => new(radius, angle);

    /// <summary>A bed with three straight sides, by their lengths, in any order.</summary>
    /// <param name="a">One side; greater than zero.</param>
    /// <param name="b">Another side; greater than zero.</param>
    /// <param name="c">The third side; greater than zero.</param>
    /// <returns>The bed.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A side is not greater than zero, or not shorter than the other two
    /// together.</exception>
    public static TriangleBed Triangle(Length a, Length b, Length c) => new(a, b, c);

    /// <summary>A bed with three straight sides, by one side and the height over it.</summary>
    /// <param name="baseSide">The side that is measured along; greater than zero.</param>
    /// <param name="height">From that side to the opposite corner, at right angles; greater than zero.</param>
    /// <param name="foot">How far along the side the height stands, from its start; beyond either end where the corner leans over;
    /// <see langword="null"/> where it stands in the middle. The area is the same for all, the perimeter is not.</param>
    /// <returns>The bed.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The side or the height is not greater than zero, or the triangle is so flat (a height of
    /// less than a hundred-thousandth of its length) that its sides no longer tell its area.</exception>
    public static TriangleBed TriangleOverBase(Length baseSide, Length height, Length? foot = null) => TriangleBed.OverBase(baseSide, height, foot);

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

    /// <summary>An oval bed: an ellipse.</summary>
    /// <param name="length">The long way across, through the middle; greater than zero.</param>
    /// <param name="width">The short way across, at right angles to it; greater than zero. Either may be the longer.</param>
    /// <returns>The bed.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A diameter is not greater than zero.</exception>
    public static EllipseBed Ellipse(Length length, Length width) => new(length, width);

    /// <summary>A bed with two parallel sides.</summary>
    /// <param name="firstSide">One of the parallel sides; greater than zero.</param>
    /// <param name="secondSide">The other; greater than zero.</param>
    /// <param name="distance">How far apart they are, at right angles; greater than zero.</param>
    /// <param name="shift">How far the start of the second side lies along from the start of the first; negative the other way;
    /// <see langword="null"/> where the bed is the same on both ends.</param>
    /// <returns>The bed.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A side or the distance is not greater than zero.</exception>
    public static TrapeziumBed Trapezium(Length firstSide, Length secondSide, Length distance, Length? shift = null) =>
        new(firstSide, secondSide, distance, shift);

    /// <summary>A round bed with a round hole: planting around a tree, or a keyhole bed with its basket and the way in to it.</summary>
    /// <param name="outerDiameter">Across the whole; greater than the inner diameter.</param>
    /// <param name="innerDiameter">Across the hole; greater than zero.</param>
    /// <param name="entrance">The width of a straight way from outside into the hole; zero where there is none, at most the inner
    /// diameter.</param>
    /// <returns>The bed.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A diameter is not greater than zero, the hole is not smaller than the whole, or
    /// the entrance is wider than the hole.</exception>
    public static RingBed Ring(Length outerDiameter, Length innerDiameter, Length entrance) => new(outerDiameter, innerDiameter, entrance);

    /// <summary>A border or path of even width round the outside of a bed.</summary>
    /// <param name="inside">What it goes round: any shape with a single outline, not a composite, not one by offsets, and not more than
    /// half a circle.</param>
    /// <param name="width">Its width; greater than zero.</param>
    /// <param name="corners">Whether its outer corners are sharp, as slabs are laid, or round.</param>
    /// <returns>The border.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The width is not greater than zero.</exception>
    /// <exception cref="ArgumentException">The bed has no single outline, or the border would run into itself.</exception>
    public static BorderBed Border(Bed inside, Length width, BorderCorners corners = BorderCorners.Sharp) => new(inside, width, corners);

    /// <summary>Shapes laid side by side without overlap, as one bed.</summary>
    /// <param name="parts">Two shapes or more.</param>
    /// <param name="joins">The length of all the lines along which parts lie against one another, each counted once; it needs no
    /// edging.</param>
    /// <returns>The bed.</returns>
    /// <exception cref="ArgumentOutOfRangeException">There are fewer than two parts, or the joins are negative or so long that the
    /// outline left could not enclose the area.</exception>
    public static CompositeBed Composite(IReadOnlyList<Bed> parts, Length joins) => new(parts, joins);

    /// <summary>A bed between a straight line and a curved edge, measured by its widths at even intervals along the line.</summary>
    /// <param name="offsets">The widths at right angles to the line, in order; zero or more, two of them at least.</param>
    /// <param name="interval">How far apart they were taken; greater than zero.</param>
    /// <param name="rule">How the edge is taken to run between them.</param>
    /// <returns>The bed.</returns>
    /// <exception cref="ArgumentOutOfRangeException">There are too few offsets, an even number of them for Simpson's rule, or one is
    /// negative.</exception>
    public static OffsetBed FromOffsets(IReadOnlyList<Length> offsets, Length interval, OffsetRule rule = OffsetRule.Trapezoid) =>
        new(offsets, interval, rule);

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

    /// <summary>The shape without its area, as a part of another.</summary>
    internal string Describe(TextStyle style) => Shape(style);

    private string ToString(TextStyle style) => $"{Shape(style)}, {QuantityText.Of(Area, style)}";
}
