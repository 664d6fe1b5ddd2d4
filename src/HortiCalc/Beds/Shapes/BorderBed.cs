using HortiCalc.Display;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Beds;

/// <summary>A border or path of even width round the outside of a bed.</summary>
/// <remarks>
/// <see cref="Bed.Area"/> is the border alone, and <see cref="Bed.Perimeter"/> both its edges. By Steiner's formula: the perimeter of the
/// inside times the width, plus the width squared times what the corners add.
/// </remarks>
/// <example><code>
/// Bed bed = Bed.Rectangle(Length.FromMeters(20), Length.FromMeters(25));
/// BorderBed path = Bed.Border(bed, Length.FromMeters(2)); // 196 m²
/// Volume gravel = path.FillVolume(Length.FromCentimeters(5));
/// Length outside = path.OuterEdge;
/// </code></example>
[TypeFormatterSource(typeof(DisplayFormatters))]
public sealed record BorderBed : Bed
{
    private readonly BedOutline outline;

    /// <summary>Lays a border round a bed.</summary>
    /// <param name="inside">What it goes round: any shape with a single outline, not a composite, not one by offsets, and not
    /// more than half a circle.</param>
    /// <param name="width">Its width; greater than zero.</param>
    /// <param name="corners">Whether its outer corners are sharp or round.</param>
    /// <exception cref="ArgumentOutOfRangeException">The width is not greater than zero.</exception>
    /// <exception cref="ArgumentException">The bed has no single outline, or the border would run into itself.</exception>
    public BorderBed(Bed inside, Length width, BorderCorners corners)
    {
        Inside = Guard.NotNull(inside);
        Width = Dimension.PositiveKept(width, nameof(width));
        Corners = Guard.Defined(corners);
        outline = inside.Outline
            ?? throw new ArgumentException(
                $"inside was a {inside}; allowed: a shape with a single outline, whose border follows from its dimensions.", nameof(inside));
        if (inside.BorderMeetsItself(Boundary.Metres(Width)))
        {
            throw new ArgumentException(
                $"width was {Guard.Number(Boundary.Metres(Width))} m; allowed: a border that does not run into itself where the outline of the"
                + " bed turns inward.",
                nameof(width));
        }
    }

    /// <summary>What it goes round.</summary>
    public Bed Inside { get; }

    /// <summary>Its width.</summary>
    public Length Width { get; }

    /// <summary>Whether its outer corners are sharp or round.</summary>
    public BorderCorners Corners { get; }

    /// <summary>The edge against the bed.</summary>
    [System.Text.Json.Serialization.JsonIgnore]
    public Length InnerEdge => Length.FromMeters(outline.PerimeterMetres);

    /// <summary>The edge away from the bed.</summary>
    [System.Text.Json.Serialization.JsonIgnore]
    public Length OuterEdge => Length.FromMeters(OuterMetres);

    internal override double SquareMetres
    {
        get
        {
            double widthMetres = Boundary.Metres(Width);
            return widthMetres * (outline.PerimeterMetres + Factor * widthMetres);
        }
    }

    internal override double PerimeterMetres => outline.PerimeterMetres + OuterMetres;

    // A sharp border has the corners of the bed, a round one has none left that point outward.
    internal override BedOutline? Outline => Corners == BorderCorners.Sharp
        ? outline with { PerimeterMetres = OuterMetres }
        : new BedOutline(OuterMetres, outline.RoundFactor, outline.RoundFactor);

    private double Factor => Corners == BorderCorners.Sharp ? outline.SharpFactor : outline.RoundFactor;

    private double OuterMetres => outline.PerimeterMetres + 2 * Factor * Boundary.Metres(Width);

    internal override bool BorderMeetsItself(double widthMetres) => Inside.BorderMeetsItself(Boundary.Metres(Width) + widthMetres);

    private protected override string Shape(TextStyle style) =>
        $"border {QuantityText.Of(Width, style)} wide, {(Corners == BorderCorners.Sharp ? "sharp" : "round")} corners, round a {Inside.Describe(style)}";
}
