using HortiCalc.Evidence;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Soil;

/// <summary>Published rates of lime and sulfur for potting media. They disagree: two Cornell recipes in circulation differ twofold.</summary>
public static class MediumRates
{
    private const double KilogramsPerCubicMetrePerPoundPerCubicYard = 1000 * Boundary.KilogramsPerPound / Boundary.LitresPerCubicYard;

    /// <summary>Every rate there is, as printed.</summary>
    public static IReadOnlyList<MediumRate> All { get; } = ValueList<MediumRate>.Of(
    [
        Pounds("Cornell Peat-Lite Mix A", "ground dolomitic limestone", MediumRatePurpose.Recipe, 5, MediumSources.Textbook),
        Pounds("University of California mix", "dolomitic lime", MediumRatePurpose.Recipe, 7.5, MediumSources.Textbook),
        Pounds("University of California mix", "calcium carbonate", MediumRatePurpose.Recipe, 2.5, MediumSources.Textbook),
        Metric("Cornell Peat-Lite for tropical plants", "dolomitic limestone", MediumRatePurpose.Recipe, 6, 6, MediumSources.CornellTropical),
        Metric("Cornell Foliage Plant Mix", "ground dolomitic limestone", MediumRatePurpose.Recipe, 4.9, 4.9, MediumSources.CornellTropical),
        Metric("Cornell Epiphytic Mix", "ground dolomitic limestone", MediumRatePurpose.Recipe, 4.2, 4.2, MediumSources.Alberta),
        Metric("Sphagnum peat", "lime", MediumRatePurpose.Recipe, 3, 4, MediumSources.DavisPeat),
        Metric("Sphagnum peat with a large basal dose", "lime", MediumRatePurpose.Recipe, 8, 10, MediumSources.DavisPeat),
        Metric("Acid peat humus", "lime", MediumRatePurpose.Recipe, 10, 15, MediumSources.DavisPeat),
        Metric("Peat H2 to H3, little decomposed", "dolomitic lime", MediumRatePurpose.Recipe, 2, 3, MediumSources.VonPost),
        Metric("Peat H4 to H6, more decomposed", "dolomitic lime", MediumRatePurpose.Recipe, 3, 7, MediumSources.VonPost),
        Metric("Potting soil, average", "lime", MediumRatePurpose.Recipe, 5, 6, MediumSources.Supplier),
        Metric("Potting soil", "lime", MediumRatePurpose.RaiseOneUnit, 2, 2, MediumSources.Supplier),
        Pounds("Potting mix", "dolomite", MediumRatePurpose.RaiseOneUnit, 8, MediumSources.TexasQuoted),
        Metric("70 % peat and 30 % perlite", "dolomitic hydrated lime", MediumRatePurpose.Recipe, 2.1, 2.1, MediumSources.ResidualLime),
        Pounds("Propagation mix of peat, bark and perlite", "dolomite", MediumRatePurpose.UpperLimit, 4, MediumSources.Nursery),
        Pounds("Peat and pine bark, low", "sulfur", MediumRatePurpose.TriedToLower, 1.5, MediumSources.SubstrateTrial),
        Pounds("Peat and pine bark, middle", "sulfur", MediumRatePurpose.TriedToLower, 3, MediumSources.SubstrateTrial),
        Pounds("Peat and pine bark, high", "sulfur", MediumRatePurpose.TriedToLower, 4.5, MediumSources.SubstrateTrial),
    ]);

    /// <summary>The rates for media whose name holds a text.</summary>
    /// <param name="medium">Part of the name, capitals or not: <c>peat</c>.</param>
    /// <returns>The rates; none where no source has such a medium.</returns>
    /// <exception cref="ArgumentException">The text is empty.</exception>
    public static IReadOnlyList<MediumRate> Find(string medium)
    {
        Guard.NotBlank(medium);
        return ValueList<MediumRate>.Of(All.Where(rate => rate.Medium.Contains(medium, StringComparison.OrdinalIgnoreCase)));
    }

    private static MediumRate Metric(string medium, string material, MediumRatePurpose purpose, double low, double high, Source source) =>
        new(medium, material, purpose, Density.FromKilogramsPerCubicMeter(low), Density.FromKilogramsPerCubicMeter(high), source);

    private static MediumRate Pounds(string medium, string material, MediumRatePurpose purpose, double poundsPerCubicYard, Source source) => Metric(
        medium,
        material,
        purpose,
        poundsPerCubicYard * KilogramsPerCubicMetrePerPoundPerCubicYard,
        poundsPerCubicYard * KilogramsPerCubicMetrePerPoundPerCubicYard,
        source);
}
