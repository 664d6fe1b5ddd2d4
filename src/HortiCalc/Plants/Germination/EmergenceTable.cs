using HortiCalc.Evidence;
using HortiCalc.Units;

namespace HortiCalc.Plants;

/// <summary>The days to emergence of one crop by soil temperature, as one source prints them.</summary>
/// <remarks>Immutable; equal when all members are equal. A cell that the source leaves out is not tested, never zero.</remarks>
public sealed record EmergenceTable
{
    /// <summary>Holds what a source prints for a crop.</summary>
    /// <param name="crop">The crop in plain English, the same for all sources: <c>bean, snap</c>.</param>
    /// <param name="printedCrop">The crop as the source names it.</param>
    /// <param name="cells">The cells by rising temperature, one at least.</param>
    /// <param name="source">Where it was published.</param>
    /// <exception cref="ArgumentNullException">The cells or the source are missing.</exception>
    /// <exception cref="ArgumentException">A text is empty, there is no cell, or the cells do not rise in temperature.</exception>
    public EmergenceTable(string crop, string printedCrop, IReadOnlyList<EmergenceCell> cells, Source source)
    {
        Crop = Guard.NotBlank(crop);
        PrintedCrop = Guard.NotBlank(printedCrop);
        Cells = ValueList<EmergenceCell>.Of(Guard.NotNull(cells));
        Source = Guard.NotNull(source);
        if (Cells.Count == 0)
            throw new ArgumentException("cells were none; allowed: one or more.", nameof(cells));
        for (int i = 1; i < Cells.Count; i++)
        {
            if (!(Cells[i].SoilCelsius > Cells[i - 1].SoilCelsius))
                throw new ArgumentException($"cells had {Cells[i - 1].Soil} before {Cells[i].Soil}; allowed: rising temperatures.", nameof(cells));
        }
    }

    /// <summary>The crop in plain English, the same for all sources.</summary>
    public string Crop { get; }

    /// <summary>The crop as the source names it.</summary>
    public string PrintedCrop { get; }

    /// <summary>The cells by rising temperature.</summary>
    public IReadOnlyList<EmergenceCell> Cells { get; }

    /// <summary>Where it was published.</summary>
    public Source Source { get; }

    /// <summary>The crop and its source.</summary>
    /// <returns>For instance <c>asparagus, days to emergence at 0 to 40 °C [...]</c>.</returns>
    public override string ToString() =>
        $"{Crop}, days to emergence at {Guard.Number(Cells[0].SoilCelsius)} to {Guard.Number(Cells[^1].SoilCelsius)} °C [{Source}]";

    /// <summary>What stands behind a time read from this table, for temperatures from its first to its last.</summary>
    internal Method MethodFor(string parameter) => new(
        "emergence.table",
        "days to emergence read from a table, by rate between its temperatures",
        Source,
        new Domain("seed half an inch deep, moist soil of constant temperature", new DomainLimit(parameter, Cells[0].SoilCelsius, Cells[^1].SoilCelsius, "°C")));
}
