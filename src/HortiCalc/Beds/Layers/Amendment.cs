using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Beds;

/// <summary>Loose material spread over ground: volume, depth and area, each from the other two. Exact arithmetic.</summary>
/// <remarks>
/// Holds for compost, mulch, topsoil or gravel alike. The depth is the loose depth, as it lies when it has been spread;
/// <see cref="AmendmentLayer"/> adds what happens to it then.
/// </remarks>
/// <example><code>
/// Bed bed = Bed.Rectangle(width: Length.FromMeters(1.2), length: Length.FromMeters(4));
/// Volume compost = Amendment.VolumeFor(bed.Area, Length.FromCentimeters(5));
/// Area covered = Amendment.Coverage(Volume.FromCubicYards(1), Length.FromInches(3)); // 108 sq ft
/// Length depth = Amendment.Depth(Volume.FromLiters(200), Area.FromSquareMeters(10)); // 2 cm
/// </code></example>
public static class Amendment
{
    /// <summary>The volume of a layer: area times depth.</summary>
    /// <param name="area">The ground to cover; greater than zero.</param>
    /// <param name="depth">The loose depth; zero or more.</param>
    /// <returns>The volume, without an allowance.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The area is not greater than zero, or the depth is negative.</exception>
    public static Volume VolumeFor(Area area, Length depth)
    {
        double squareMetres = Guard.Positive(Boundary.SquareMetres(area), "m²", nameof(area));
        return Volume.FromLiters(squareMetres * Dimension.NotNegative(depth, nameof(depth)) * 1000);
    }

    /// <summary>The ground that a volume covers: volume divided by depth.</summary>
    /// <param name="volume">The loose volume, for instance of one bag; zero or more.</param>
    /// <param name="depth">The loose depth; greater than zero.</param>
    /// <returns>The area.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The volume is negative, or the depth is not greater than zero.</exception>
    public static Area Coverage(Volume volume, Length depth)
    {
        double litres = Guard.NotNegative(Boundary.Litres(volume), "L", nameof(volume));
        return Area.FromSquareMeters(litres / Dimension.Positive(depth, nameof(depth)) / 1000);
    }

    /// <summary>The depth of the layer that a volume makes: volume divided by area.</summary>
    /// <param name="volume">The loose volume; zero or more.</param>
    /// <param name="area">The ground to cover; greater than zero.</param>
    /// <returns>The loose depth.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The volume is negative, or the area is not greater than zero.</exception>
    public static Length Depth(Volume volume, Area area)
    {
        double litres = Guard.NotNegative(Boundary.Litres(volume), "L", nameof(volume));
        return Length.FromMeters(litres / Guard.Positive(Boundary.SquareMetres(area), "m²", nameof(area)) / 1000);
    }
}
