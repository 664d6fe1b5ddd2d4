using HortiCalc.Display;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Beds;

/// <summary>A bed that is a slice of a circle: half a circle against a wall, a quarter in a corner, a wedge of a round garden.</summary>
/// <example><code>
/// Bed halfRound = Bed.Sector(radius: Length.FromMeters(1.5), Angle.FromDegrees(180));
/// Area ground = halfRound.Area; // 3.53 m²
/// Length edging = halfRound.Perimeter; // 7.71 m, the wall included
/// </code></example>
[TypeFormatterSource(typeof(DisplayFormatters))]
public sealed record SectorBed : Bed
{
    /// <summary>Makes a slice of a circle.</summary>
    /// <param name="radius">From the point to the arc; greater than zero.</param>
    /// <param name="angle">Between the two straight sides: 90° is a quarter, 180° half a circle; greater than 0°, less than 360°.</param>
    /// <exception cref="ArgumentOutOfRangeException">The radius is not greater than zero, or the angle is out of range.</exception>
    public SectorBed(Length radius, Angle angle)
    {
        Radius = Dimension.PositiveKept(radius, nameof(radius));
        double degrees = Boundary.Degrees(angle);
        if (degrees is not (> 0 and < 360))
            throw Guard.Refused(nameof(angle), degrees, "°", "greater than 0°, less than 360°");
        Angle = HouseUnits.Normalise(angle);
    }

    /// <summary>From the point to the arc.</summary>
    public Length Radius { get; }

    /// <summary>Between the two straight sides.</summary>
    public Angle Angle { get; }

    internal override double SquareMetres => Radians / 2 * Boundary.Metres(Radius) * Boundary.Metres(Radius);

    internal override double PerimeterMetres => (2 + Radians) * Boundary.Metres(Radius);

    // The arc as part of a circle, a square at each of its ends, and the turn at the point; beyond half a circle the point is a bay.
    internal override BedOutline? Outline => Radians <= Math.PI
        ? new BedOutline(PerimeterMetres, Radians / 2 + 2 + Math.Tan((Math.PI - Radians) / 2), Math.PI)
        : null;

    private double Radians => Boundary.Degrees(Angle) * Math.PI / 180;

    private protected override string Shape(TextStyle style) =>
        $"slice of a circle, {QuantityText.Of(Angle, style)} at a radius of {QuantityText.Of(Radius, style)}";
}
