using HortiCalc.Evidence;
using HortiCalc.Units;

namespace HortiCalc.Climate;

/// <summary>Published tables of stages by degree days, several sources of one crop or insect side by side.</summary>
/// <example><code>
/// foreach (StageTable table in StageTables.Of("bronze birch borer"))
///     Console.WriteLine(table.ToString("U", null));
/// </code></example>
public static class StageTables
{
    /// <summary>Every table there is, source by source.</summary>
    public static IReadOnlyList<StageTable> All { get; } = ValueList<StageTable>.Of(
    [
        .. CropStages.Rows, .. GardenEvents.Rows, .. CalifornianInsects.Stages, .. OrchardInsects.Rows, .. VegetableInsects.Rows,
        .. MichiganLandscapeInsects.Rows, .. WisconsinLandscapeInsects.Rows,
    ]);

    /// <summary>All tables of a crop or insect, of every source.</summary>
    /// <param name="subject">The English or scientific name, capitals or not, or a part of it: <c>corn</c>.</param>
    /// <returns>The tables; none where no source has it.</returns>
    /// <exception cref="ArgumentException">The name is empty.</exception>
    public static IReadOnlyList<StageTable> Of(string subject)
    {
        Guard.NotBlank(subject);
        return ValueList<StageTable>.Of(All.Where(table =>
            table.Subject.Contains(subject, StringComparison.OrdinalIgnoreCase)
            || (table.ScientificName?.Contains(subject, StringComparison.OrdinalIgnoreCase) ?? false)));
    }

    /// <summary>A table by its key.</summary>
    /// <param name="key">The <see cref="StageTable.Key"/>: the key of the source, a slash, the subject.</param>
    /// <returns>The table.</returns>
    /// <exception cref="ArgumentException">There is no such table, or the key is empty.</exception>
    public static StageTable FromKey(string key) => Keyed.Find(All, table => table.Key, key);
}
