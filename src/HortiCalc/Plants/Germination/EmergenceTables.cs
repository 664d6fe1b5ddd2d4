using HortiCalc.Evidence;
using HortiCalc.Units;

namespace HortiCalc.Plants;

/// <summary>Published days to emergence by soil temperature, whole tables of several sources side by side.</summary>
/// <remarks>
/// All go back to the trials of Harrington at Davis, and differ by a day here and there; they are given as printed, not averaged. Oregon's row
/// of eggplant stands one column to the left of the others', a slip of the print: another source is the one to read.
/// </remarks>
public static class EmergenceTables
{
    /// <summary>Every table there is, source by source.</summary>
    public static IReadOnlyList<EmergenceTable> All { get; } = ValueList<EmergenceTable>.Of(
        [.. KnottEmergence.Rows, .. OregonEmergence.Rows, .. HeirloomEmergence.Rows, .. HarringtonSeedlings.Emergence]);

    /// <summary>The tables of a crop, of every source.</summary>
    /// <param name="crop">The crop in plain English, capitals or not: <c>bean, snap</c>.</param>
    /// <returns>The tables; none where no source has the crop.</returns>
    /// <exception cref="ArgumentException">The crop is empty.</exception>
    public static IReadOnlyList<EmergenceTable> Of(string crop)
    {
        Guard.NotBlank(crop);
        return ValueList<EmergenceTable>.Of(All.Where(table => table.Crop.Equals(crop, StringComparison.OrdinalIgnoreCase)));
    }

    /// <summary>The table of a crop of one source.</summary>
    /// <param name="source">The <see cref="Source.Key"/> of the source.</param>
    /// <param name="crop">The crop in plain English, capitals or not.</param>
    /// <returns>The table.</returns>
    /// <exception cref="ArgumentException">The source has no such crop, or a text is empty.</exception>
    public static EmergenceTable Named(string source, string crop)
    {
        Guard.NotBlank(source);
        return Of(crop).FirstOrDefault(table => table.Source.Key == source)
            ?? throw new ArgumentException(
                $"crop was '{crop}' of '{source}'; allowed: the crops of {string.Join(", ", All.Select(table => table.Source.Key).Distinct())}.", nameof(crop));
    }
}
