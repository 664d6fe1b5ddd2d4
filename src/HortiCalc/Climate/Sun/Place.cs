using HortiCalc.Display;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Climate;

/// <summary>A point on the earth.</summary>
/// <remarks>Immutable; equal when both angles are equal.</remarks>
/// <example><code>
/// Place garden = new(latitude: Angle.FromDegrees(52.1), longitude: Angle.FromDegrees(-1.4)); // 52.1° north, 1.4° west
/// </code></example>
public sealed record Place : IFormattable
{
    /// <summary>Describes a point on the earth.</summary>
    /// <param name="latitude">The latitude, north positive, from -90 to 90°.</param>
    /// <param name="longitude">The longitude, east positive, from -180 to 180°.</param>
    /// <exception cref="ArgumentOutOfRangeException">An angle is outside its range.</exception>
    public Place(Angle latitude, Angle longitude)
    {
        Guard.Within(Boundary.Degrees(latitude), -90, 90, "°", nameof(latitude));
        Guard.Within(Boundary.Degrees(longitude), -180, 180, "°", nameof(longitude));
        Latitude = HouseUnits.Normalise(latitude);
        Longitude = HouseUnits.Normalise(longitude);
    }

    /// <summary>The latitude, north positive.</summary>
    public Angle Latitude { get; }

    /// <summary>The longitude, east positive.</summary>
    public Angle Longitude { get; }

    /// <summary>The place in invariant culture.</summary>
    /// <returns>For instance <c>52.1° north, 1.4° west</c>.</returns>
    public override string ToString() => ToString(TextStyle.Default);

    /// <summary>The place as one line of text.</summary>
    /// <param name="format"><c>M</c>, <c>U</c> or nothing: degrees are the same in every country.</param>
    /// <param name="formatProvider">The culture, or <see langword="null"/> for the invariant one.</param>
    /// <returns>For instance <c>52.1° north, 1.4° west</c>.</returns>
    /// <exception cref="FormatException">The format is another one.</exception>
    public string ToString(string? format, IFormatProvider? formatProvider) => ToString(TextStyle.Parse(format, formatProvider));

    internal double LatitudeDegrees => Boundary.Degrees(Latitude);

    internal double LongitudeDegrees => Boundary.Degrees(Longitude);

    private string ToString(TextStyle style) =>
        $"{QuantityText.Of(Latitude.Abs(), style)} {(LatitudeDegrees < 0 ? "south" : "north")}, "
        + $"{QuantityText.Of(Longitude.Abs(), style)} {(LongitudeDegrees < 0 ? "west" : "east")}";
}
