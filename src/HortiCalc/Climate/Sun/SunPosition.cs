using HortiCalc.Display;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Climate;

/// <summary>Where the sun stands in the sky.</summary>
/// <remarks>Immutable; equal when both angles are equal.</remarks>
public sealed record SunPosition : IFormattable
{
    /// <summary>Describes where the sun stands.</summary>
    /// <param name="elevation">How high above the horizon its centre is, from -90 to 90°; negative below it.</param>
    /// <param name="azimuth">The direction, from north by east, from 0 to 360°.</param>
    /// <exception cref="ArgumentOutOfRangeException">An angle is outside its range.</exception>
    public SunPosition(Angle elevation, Angle azimuth)
    {
        Guard.Within(Boundary.Degrees(elevation), -90, 90, "°", nameof(elevation));
        Guard.Within(Boundary.Degrees(azimuth), 0, 360, "°", nameof(azimuth));
        Elevation = HouseUnits.Normalise(elevation);
        Azimuth = HouseUnits.Normalise(azimuth);
    }

    /// <summary>How high above the horizon the sun's centre is, without refraction; negative below it.</summary>
    public Angle Elevation { get; }

    /// <summary>The direction, from north by east: 90° is east, 180° south.</summary>
    public Angle Azimuth { get; }

    /// <summary>How far the shadow of a wall or a hedge reaches on level ground, in the direction away from the sun.</summary>
    /// <param name="height">The height of what casts the shadow; 0 or more.</param>
    /// <returns>The length, or <see langword="null"/> where the sun is not above the horizon.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The height is negative or not finite.</exception>
    public Length? Shadow(Length height)
    {
        double metres = Dimension.NotNegative(height, nameof(height));
        double degrees = Boundary.Degrees(Elevation);
        return degrees > 0 ? Length.FromMeters(metres / Math.Tan(double.DegreesToRadians(degrees))) : null;
    }

    /// <summary>The position in invariant culture.</summary>
    /// <returns>For instance <c>elevation 41.2°, azimuth 155°</c>.</returns>
    public override string ToString() => ToString(TextStyle.Default);

    /// <summary>The position as one line of text.</summary>
    /// <param name="format"><c>M</c>, <c>U</c> or nothing: degrees are the same in every country.</param>
    /// <param name="formatProvider">The culture, or <see langword="null"/> for the invariant one.</param>
    /// <returns>For instance <c>elevation 41.2°, azimuth 155°</c>.</returns>
    /// <exception cref="FormatException">The format is another one.</exception>
    public string ToString(string? format, IFormatProvider? formatProvider) => ToString(TextStyle.Parse(format, formatProvider));

    private string ToString(TextStyle style) => $"elevation {QuantityText.Of(Elevation, style)}, azimuth {QuantityText.Of(Azimuth, style)}";
}
