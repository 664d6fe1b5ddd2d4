using HortiCalc.Evidence;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Containers;

/// <summary>Published ranges of porosity, air and water of container media, side by side.</summary>
/// <remarks>
/// They differ, and few say for which height of container; air space measured in a tall core is more than in a shallow tray of the same medium. Where one prints shares of the
/// pores it says so in <see cref="MediumRange.Basis"/>.
/// </remarks>
/// <example><code>
/// PorometerReading bark = new(Volume.FromMilliliters(100), Volume.FromMilliliters(31), Mass.FromGrams(66), Mass.FromGrams(18));
/// foreach (MediumRange range in MediumRanges.Of(MediumProperty.AirSpace))
///     Console.WriteLine($"{range.Judge(bark.AirSpace, bark.TotalPorosity)}: {range}");
/// </code></example>
public static class MediumRanges
{
    /// <summary>Every range there is.</summary>
    public static IReadOnlyList<MediumRange> All { get; } = ValueList<MediumRange>.Of(
    [
        Range(MediumProperty.TotalPorosity, "most soilless media", 60, 80, PhysicsSources.TexasRanges),
        Range(MediumProperty.AirSpace, "most mixes, after irrigation", 10, 30, PhysicsSources.TexasRanges),
        Range(MediumProperty.AirSpace, "container media", 10, 25, PhysicsSources.CaliforniaRange),
        Range(MediumProperty.AirSpace, "general nursery stock", 13, 30, PhysicsSources.QueenslandRange),
        Range(MediumProperty.AirSpace, "container media, after draining", 10, null, PhysicsSources.RutgersRange),
        new(MediumProperty.AirSpace, "container media", Ratio.FromPercent(20), Ratio.FromPercent(25), ShareBasis.OfPores, PhysicsSources.PurdueRange),
        Range(MediumProperty.TotalPorosity, "sphagnum peat, usual", 82, 85, PhysicsSources.ArkansasPeat),
        Range(MediumProperty.ContainerCapacity, "sphagnum peat, usual", 60, 68, PhysicsSources.ArkansasPeat),
        Range(MediumProperty.AirSpace, "sphagnum peat, usual", 10, 15, PhysicsSources.ArkansasPeat),
        Range(MediumProperty.TotalPorosity, "coir dust, as found", 94, null, PhysicsSources.Coirs),
        Range(MediumProperty.AirSpace, "coir dust, as found", 24, 89, PhysicsSources.Coirs),
        .. Measured(
            ("coconut fibre, 1 to 2 mm", 94.3), ("sphagnum peat, 1 to 2 mm", 94.2), ("perlite, 1 to 2 mm", 85), ("compost, 2 to 3.36 mm", 71.9), ("vermicompost, 2 to 3.36 mm", 67.7),
            ("volcanic scoria, 2 to 3.36 mm", 67.5), ("pumice, 0.25 to 0.5 mm", 72.2), ("zeolite, 0.25 to 0.5 mm", 70.18)),
    ]);

    /// <summary>The ranges of a property.</summary>
    /// <param name="property">The property.</param>
    /// <returns>The ranges, in the order of the sources.</returns>
    /// <exception cref="ArgumentOutOfRangeException">There is no such property.</exception>
    public static IReadOnlyList<MediumRange> Of(MediumProperty property)
    {
        Guard.Defined(property);
        return ValueList<MediumRange>.Of(All.Where(range => range.Property == property));
    }

    // One size of particle, that with the most pores of those tested.
    private static IEnumerable<MediumRange> Measured(params (string Material, double Percent)[] rows) => rows.Select(row =>
        Range(MediumProperty.TotalPorosity, row.Material, row.Percent, row.Percent, PhysicsSources.OnePorositySize));

    private static MediumRange Range(MediumProperty property, string conditions, double low, double? high, Source source) =>
        new(property, conditions, Ratio.FromPercent(low), high is { } most ? Ratio.FromPercent(most) : null, ShareBasis.OfVolume, source);
}
