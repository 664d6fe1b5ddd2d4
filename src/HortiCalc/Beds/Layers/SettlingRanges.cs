using HortiCalc.Evidence;
using UnitsNet;

namespace HortiCalc.Beds;

/// <summary>Published figures of settling, shrinking and rotting, side by side. They are inputs to <see cref="Settling"/>, none is a
/// constant.</summary>
public static class SettlingRanges
{
    private const double DaysPerMonth = 365.25 / 12;

    /// <summary>All of them.</summary>
    public static IReadOnlyList<SettlingRange> Published { get; } = ValueList<SettlingRange>.Of(
    [
        Of("soil, compost and bark", SettlingKind.Allowance, 10, 10, null, BulkDensitySources.UkSupplier),
        Of("composts, garden mixes and lawn soils", SettlingKind.Allowance, 5, 10, null, BulkDensitySources.Antipodes),
        Of("topsoil", SettlingKind.Allowance, 20, 20, null, new Source(
            "lawn-trade-forum-coverage", "Calculating dirt needed", "lawn trade forum (US)", 2007, "http://www.lawnsite.com/threads/calculating-dirt-needed-using-sq-footage-and-required-depth.183015/")),
        Of("potting mix in pots", SettlingKind.Allowance, 15, 20, null, new Source(
            "potting-mix-settling", "Container and pot sizes: how much soil do I need", "garden advice site", null, "https://harvesttotable.com/container-and-pot-sizes-how-much-soil-do-i-need/")),
        Of("organic container mix", SettlingKind.VolumeLoss, 0, 40, 24, new Source(
            "container-mix-shrinkage", "Growing media (course)", "gardening course (Australia)", null, "https://cms.diggers.com.au/courses/growing-food/m06/lesson-2-growing-media-containers")),
        Of("peat dried to -80 kPa", SettlingKind.DryingLoss, 5, 23, null, new Source(
            "silva-fennica-peat-shrinkage", "Water retention and shrinkage of peat growth media", "Silva Fennica 27(1)", 1993, "https://silvafennica.fi/article/5493/author/10430")),
        Of("yard waste while it composts", SettlingKind.VolumeLoss, 0, 75, null, YardWaste),
        Of("yard waste while it composts", SettlingKind.MassLoss, 0, 50, null, YardWaste),
    ]);

    private static Source YardWaste => new(
        "composting-losses", "Yard waste", "waste trade journal (US)", 2010, "http://waste360.com/Recycling_And_Processing/yard-waste-201011");

    private static SettlingRange Of(string material, SettlingKind kind, double lowPercent, double highPercent, double? months, Source source) => new(
        material, kind, Ratio.FromPercent(lowPercent), Ratio.FromPercent(highPercent), months is double time ? Duration.FromDays(time * DaysPerMonth) : null, source);
}
