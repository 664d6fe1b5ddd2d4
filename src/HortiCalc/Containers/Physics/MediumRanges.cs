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
/// foreach (MediumFinding finding in MediumRanges.Findings(bark))
///     Console.WriteLine(finding);   // 31 % is above air space, container media: 10 to 25 % of the volume [...]
/// </code></example>
public static class MediumRanges
{
    /// <summary>Every range there is.</summary>
    public static IReadOnlyList<MediumRange> All { get; } = ValueList<MediumRange>.Of(
    [
        Wanted(MediumProperty.AirSpace, "container media", 10, 25, PhysicsSources.CaliforniaRange),
        Wanted(MediumProperty.AirSpace, "general nursery stock", 13, 30, PhysicsSources.QueenslandRange),
        Wanted(MediumProperty.AirSpace, "container media, after draining", 10, null, PhysicsSources.RutgersRange),
        OfPores(MediumProperty.AirSpace, "container media", 20, 25, PhysicsSources.PurdueRange),
        Wanted(MediumProperty.AirSpace, "growing media in general", 15, 25, PhysicsSources.CellTrays),
        Wanted(MediumProperty.TotalPorosity, "substrates", 85, null, PhysicsSources.Ansorena),
        Wanted(MediumProperty.AirSpace, "substrates, at 10 cm of suction", 10, 30, PhysicsSources.Ansorena),
        Wanted(MediumProperty.ContainerCapacity, "substrates, at 10 cm of suction", 55, 70, PhysicsSources.Ansorena),
        Wanted(MediumProperty.EasilyAvailableWater, "substrates", 20, 30, PhysicsSources.Ansorena),
        Wanted(MediumProperty.WaterBufferingCapacity, "substrates", 4, 10, PhysicsSources.Ansorena),
        Wanted(MediumProperty.AvailableWater, "substrates", 24, 40, PhysicsSources.Ansorena),
        Wanted(MediumProperty.TotalPorosity, "soilless growing of vegetables", 85, null, PhysicsSources.SoillessVegetables),
        Wanted(MediumProperty.AirSpace, "soilless growing of vegetables, at 10 cm of suction", 20, 30, PhysicsSources.SoillessVegetables),
        Wanted(MediumProperty.TotalPorosity, "substrates", 60, 90, PhysicsSources.AceaCourse),
        Wanted(MediumProperty.AirSpace, "the best materials", 10, 35, PhysicsSources.AceaCourse),
        OfPores(MediumProperty.ContainerCapacity, "substrates", 50, 70, PhysicsSources.AceaCourse),
        Found(MediumProperty.TotalPorosity, "most soilless media", 60, 80, PhysicsSources.TexasRanges),
        Found(MediumProperty.AirSpace, "most mixes, after irrigation", 10, 30, PhysicsSources.TexasRanges),
        Found(MediumProperty.AirSpace, "tray cells", 5, 10, PhysicsSources.CellTrays),
        Found(MediumProperty.TotalPorosity, "sphagnum peat, usual", 82, 85, PhysicsSources.ArkansasPeat),
        Found(MediumProperty.ContainerCapacity, "sphagnum peat, usual", 60, 68, PhysicsSources.ArkansasPeat),
        Found(MediumProperty.AirSpace, "sphagnum peat, usual", 10, 15, PhysicsSources.ArkansasPeat),
        Found(MediumProperty.TotalPorosity, "coir dust", 94, null, PhysicsSources.Coirs),
        Found(MediumProperty.AirSpace, "coir dust", 24, 89, PhysicsSources.Coirs),
        Found(MediumProperty.EasilyAvailableWater, "coir dust", 1, 36, PhysicsSources.Coirs),
        Found(MediumProperty.ContainerCapacity, "coir dust", 13.7, 78.6, PhysicsSources.Coirs),
        Found(MediumProperty.ContainerCapacity, "coconut fibre, by three methods", 74.9, 77.18, PhysicsSources.CostaRicaCoir),
        Found(MediumProperty.AirSpace, "coconut fibre, by three methods", 15.13, 16.33, PhysicsSources.CostaRicaCoir),
        Found(MediumProperty.TotalPorosity, "coconut fibre, mean of three methods", 91.67, 91.67, PhysicsSources.CostaRicaCoir),
        Found(MediumProperty.EasilyAvailableWater, "coconut fibre", 23.6, 23.6, PhysicsSources.CostaRicaCoir),
        Found(MediumProperty.WaterBufferingCapacity, "coconut fibre", 2.3, 2.3, PhysicsSources.CostaRicaCoir),
        Found(MediumProperty.TotalPorosity, "substrates", 80, 95, PhysicsSources.Aurea),
        Found(MediumProperty.TotalPorosity, "perlite", 96.5, 96.5, PhysicsSources.Aurea),
        Found(MediumProperty.TotalPorosity, "blond peat", 92, 95, PhysicsSources.Aurea),
        Found(MediumProperty.TotalPorosity, "brown or black peat", 80, 90, PhysicsSources.Aurea),
        Found(MediumProperty.TotalPorosity, "farm soil", 40, 50, PhysicsSources.Aurea),
        Found(MediumProperty.AvailableWater, "blond peat, about", 30, 30, PhysicsSources.Aurea),
        Found(MediumProperty.TotalPorosity, "perlite, closed pores too", 94.9, 94.9, PhysicsSources.SoillessVegetables),
        Found(MediumProperty.TotalPorosity, "perlite, open pores", 81.3, 81.3, PhysicsSources.SoillessVegetables),
        .. Measured(
            ("coconut fibre, 1 to 2 mm", 94.3), ("sphagnum peat, 1 to 2 mm", 94.2), ("perlite, 1 to 2 mm", 85), ("compost, 2 to 3.36 mm", 71.9), ("vermicompost, 2 to 3.36 mm", 67.7),
            ("volcanic scoria, 2 to 3.36 mm", 67.5), ("pumice, 0.25 to 0.5 mm", 72.2), ("zeolite, 0.25 to 0.5 mm", 70.18)),
    ]);

    /// <summary>The ranges of a property.</summary>
    /// <param name="property">The property.</param>
    /// <returns>The ranges, those that are recommended first.</returns>
    /// <exception cref="ArgumentOutOfRangeException">There is no such property.</exception>
    public static IReadOnlyList<MediumRange> Of(MediumProperty property)
    {
        Guard.Defined(property);
        return ValueList<MediumRange>.Of(All.Where(range => range.Property == property));
    }

    /// <summary>How a medium that was measured in a core lies to every recommended range of pores, air and water.</summary>
    /// <param name="reading">The reading; with pores.</param>
    /// <returns>The findings, in the order of <see cref="All"/>.</returns>
    /// <exception cref="ArgumentNullException">The reading is <see langword="null"/>.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The reading has no pores, so that nothing is a share of them.</exception>
    public static IReadOnlyList<MediumFinding> Findings(PorometerReading reading)
    {
        Guard.NotNull(reading);
        Guard.Positive(Boundary.Fraction(reading.TotalPorosity) * 100, "%", nameof(reading));
        return Findings(
            reading.TotalPorosity, (MediumProperty.AirSpace, reading.AirSpace), (MediumProperty.ContainerCapacity, reading.ContainerCapacity));
    }

    /// <summary>How a medium that was measured with a jug lies to every recommended range of pores, air and water.</summary>
    /// <param name="reading">The reading; with pores.</param>
    /// <returns>The findings, in the order of <see cref="All"/>.</returns>
    /// <exception cref="ArgumentNullException">The reading is <see langword="null"/>.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The reading has no pores, so that nothing is a share of them.</exception>
    public static IReadOnlyList<MediumFinding> Findings(SoakReading reading)
    {
        Guard.NotNull(reading);
        Guard.Positive(Boundary.Fraction(reading.TotalPorosity) * 100, "%", nameof(reading));
        return Findings(
            reading.TotalPorosity, (MediumProperty.AirSpace, reading.AirSpace), (MediumProperty.ContainerCapacity, reading.ContainerCapacity));
    }

    /// <summary>How a medium in its own container lies to every recommended range of pores, air and water.</summary>
    /// <remarks>The same medium can lie below a range in a tray and above it in a tall pot.</remarks>
    /// <param name="drained">The drained medium.</param>
    /// <returns>The findings, in the order of <see cref="All"/>.</returns>
    /// <exception cref="ArgumentNullException">The medium is <see langword="null"/>.</exception>
    public static IReadOnlyList<MediumFinding> Findings(DrainedMedium drained)
    {
        Guard.NotNull(drained);
        return Findings(
            drained.Curve.Saturated, (MediumProperty.AirSpace, drained.AirSpace), (MediumProperty.ContainerCapacity, drained.ContainerCapacity));
    }

    /// <summary>How a medium lies to every recommended range by its retention curve, with air and water at 10 cm of suction, as laboratories compare media.</summary>
    /// <param name="curve">The curve.</param>
    /// <returns>The findings, in the order of <see cref="All"/>.</returns>
    /// <exception cref="ArgumentNullException">The curve is <see langword="null"/>.</exception>
    public static IReadOnlyList<MediumFinding> Findings(RetentionCurve curve)
    {
        Guard.NotNull(curve);
        return Findings(
            curve.Saturated,
            (MediumProperty.AirSpace, curve.AirCapacity),
            (MediumProperty.ContainerCapacity, curve.WaterAt(Length.FromCentimeters(10))),
            (MediumProperty.EasilyAvailableWater, curve.EasilyAvailableWater),
            (MediumProperty.WaterBufferingCapacity, curve.WaterBufferingCapacity),
            (MediumProperty.AvailableWater, curve.WaterBetween(Length.FromCentimeters(10), Length.FromCentimeters(100))));
    }

    private static ValueList<MediumFinding> Findings(Ratio totalPorosity, params (MediumProperty Property, Ratio Share)[] shares)
    {
        Dictionary<MediumProperty, Ratio> known = shares.ToDictionary(share => share.Property, share => share.Share);
        known[MediumProperty.TotalPorosity] = totalPorosity;

        // A share that fills the pores may exceed them in the last digit.
        return ValueList<MediumFinding>.Of(All
            .Where(range => range.Meaning == RangeMeaning.Recommended && known.ContainsKey(range.Property))
            .Select(range => range.Find(known[range.Property] > totalPorosity ? totalPorosity : known[range.Property], totalPorosity)));
    }

    // One size of particle, that with the most pores of those tested.
    private static IEnumerable<MediumRange> Measured(params (string Material, double Percent)[] rows) => rows.Select(row =>
        Found(MediumProperty.TotalPorosity, row.Material, row.Percent, row.Percent, PhysicsSources.OnePorositySize));

    private static MediumRange Wanted(MediumProperty property, string conditions, double low, double? high, Source source) =>
        Range(property, conditions, low, high, ShareBasis.OfVolume, RangeMeaning.Recommended, source);

    private static MediumRange OfPores(MediumProperty property, string conditions, double low, double? high, Source source) =>
        Range(property, conditions, low, high, ShareBasis.OfPores, RangeMeaning.Recommended, source);

    private static MediumRange Found(MediumProperty property, string conditions, double low, double? high, Source source) =>
        Range(property, conditions, low, high, ShareBasis.OfVolume, RangeMeaning.Found, source);

    private static MediumRange Range(
        MediumProperty property, string conditions, double low, double? high, ShareBasis basis, RangeMeaning meaning, Source source) =>
        new(property, conditions, Ratio.FromPercent(low), high is { } most ? Ratio.FromPercent(most) : null, basis, meaning, source);
}
