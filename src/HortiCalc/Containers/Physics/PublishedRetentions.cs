using HortiCalc.Evidence;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Containers;

/// <summary>Retention curves and points that were found in print.</summary>
/// <remarks>
/// Parameters of peat, bark and coir media were not found in print, only papers that have them; mineral layers were. For peat there are four measured points, from which
/// <see cref="RetentionFit"/> makes a curve; fields of peat soil drain far less than horticultural peat and are no stand-in.
/// </remarks>
public static class PublishedRetentions
{
    /// <summary>Mineral layers of green roofs: no potting media.</summary>
    public static IReadOnlyList<PublishedRetention> All { get; } = ValueList<PublishedRetention>.Of(
    [
        GreenRoof("sand", 0.013, 0.337, 20.5, 2.92),
        GreenRoof("gravel", 0.037, 0.274, 4.74, 2.4),
        GreenRoof("bimodal gravel", 0.032, 0.226, 0.84, 2.71),
        GreenRoof("matrix-free gravel", 0.02, 0.36, 111.6, 2.7),
    ]);

    /// <summary>Sphagnum growth peat of 0.2 g/cm³ wet: the middles of the ranges over ways of handling, at 0.1, 1, 10 and 100 kPa.</summary>
    public static IReadOnlyList<RetentionPoint> SphagnumPeat { get; } = ValueList<RetentionPoint>.Of(
    [
        Peat(0.1, 88, 93),
        Peat(1, 72, 85),
        Peat(10, 29, 30),
        Peat(100, 18, 25),
    ]);

    /// <summary>Where the points of sphagnum peat are printed.</summary>
    public static Source SphagnumPeatSource => PhysicsSources.PeatRetention;

    /// <summary>Finds a curve by its medium.</summary>
    /// <param name="medium">The medium, capitals or not: <c>sand</c>.</param>
    /// <returns>The curve.</returns>
    /// <exception cref="ArgumentException">There is no such medium, or the name is empty.</exception>
    public static PublishedRetention Named(string medium)
    {
        Guard.NotBlank(medium);
        return All.FirstOrDefault(known => known.Medium.Equals(medium, StringComparison.OrdinalIgnoreCase))
            ?? throw new ArgumentException($"medium was '{medium}'; allowed: {string.Join(", ", All.Select(known => known.Medium))}.", nameof(medium));
    }

    private static PublishedRetention GreenRoof(string medium, double residual, double saturated, double alphaPerMetre, double n) => new(
        medium,
        new VanGenuchtenRetention(
            Ratio.FromPercent(residual * 100), Ratio.FromPercent(saturated * 100), ReciprocalLength.FromInverseMeters(alphaPerMetre), n),
        PhysicsSources.GreenRoof);

    private static RetentionPoint Peat(double kilopascals, double low, double high) =>
        RetentionPoint.OfPressure(Pressure.FromKilopascals(kilopascals), Ratio.FromPercent((low + high) / 2));
}
