using HortiCalc.Display;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Beds;

/// <summary>An oval bed: an ellipse.</summary>
/// <remarks>
/// The perimeter is not a formula of the schoolbook but four times the long half-axis times the complete elliptic integral of the second
/// kind; it is had to the last digit by the arithmetic-geometric mean.
/// </remarks>
/// <example><code>
/// Bed oval = Bed.Ellipse(length: Length.FromMeters(3), width: Length.FromMeters(2));
/// Length edging = oval.Perimeter; // 7.93 m
/// </code></example>
[TypeFormatterSource(typeof(DisplayFormatters))]
public sealed record EllipseBed : Bed
{
    /// <summary>Makes an oval bed.</summary>
    /// <param name="length">One way across, through the middle; greater than zero.</param>
    /// <param name="width">The way across at right angles to it; greater than zero.</param>
    /// <exception cref="ArgumentOutOfRangeException">A diameter is not greater than zero.</exception>
    public EllipseBed(Length length, Length width)
    {
        Length = Dimension.PositiveKept(length, nameof(length));
        Width = Dimension.PositiveKept(width, nameof(width));
    }

    /// <summary>One way across, through the middle.</summary>
    public Length Length { get; }

    /// <summary>The way across at right angles to it.</summary>
    public Length Width { get; }

    internal override double SquareMetres => Math.PI / 4 * Boundary.Metres(Length) * Boundary.Metres(Width);

    internal override double PerimeterMetres => CurveKernels.EllipseMetres(Boundary.Metres(Length) / 2, Boundary.Metres(Width) / 2);

    internal override BedOutline? Outline => new(PerimeterMetres, Math.PI, Math.PI);

    private protected override string Shape(TextStyle style) => $"ellipse {QuantityText.Of(Length, style)} by {QuantityText.Of(Width, style)}";
}
