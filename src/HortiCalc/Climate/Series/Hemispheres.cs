using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Climate;

/// <summary>Which half of the earth a place lies in.</summary>
public static class Hemispheres
{
    /// <summary>The hemisphere of a latitude; the equator counts as northern.</summary>
    /// <param name="latitude">From -90° to 90°, south of the equator negative.</param>
    /// <returns>The hemisphere.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The latitude is not from -90° to 90°.</exception>
    public static Hemisphere At(Angle latitude) =>
        Guard.Within(Boundary.Degrees(latitude), -90, 90, "°", nameof(latitude)) < 0 ? Hemisphere.Southern : Hemisphere.Northern;
}
