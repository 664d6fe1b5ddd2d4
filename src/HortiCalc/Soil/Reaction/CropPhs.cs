using HortiCalc.Evidence;
using HortiCalc.Units;

namespace HortiCalc.Soil;

/// <summary>Published pH of crops, whole tables of many sources: 1133 plants of FAO, an almanac, and extension services.</summary>
/// <remarks>Sources differ by what they call possible and by how they read a pH. They are given as printed, not averaged.</remarks>
public static class CropPhs
{
    private static readonly Lazy<IReadOnlyList<CropPh>> Every = new(() => ValueList<CropPh>.Of([.. CropPhRows.Extension, .. CropPhRows.Fao()]));

    /// <summary>Every row there is, source by source. The FAO table is read when it is first asked for.</summary>
    public static IReadOnlyList<CropPh> All => Every.Value;

    /// <summary>The row of a crop of one source.</summary>
    /// <param name="source">The <see cref="Source.Key"/> of the source.</param>
    /// <param name="crop">The crop as the source names it, capitals or not.</param>
    /// <param name="conditions">The soil or use, where the source has several rows of the crop.</param>
    /// <returns>The row.</returns>
    /// <exception cref="ArgumentException">The source has no such row, or a text is empty.</exception>
    public static CropPh Named(string source, string crop, string? conditions = null)
    {
        Guard.NotBlank(source);
        Guard.NotBlank(crop);
        return All.FirstOrDefault(row => row.Source.Key == source
                && row.Crop.Equals(crop, StringComparison.OrdinalIgnoreCase)
                && (conditions is null || row.Conditions == conditions))
            ?? throw new ArgumentException(
                $"crop was '{crop}' of '{source}'; allowed: the crops of {string.Join(", ", All.Select(row => row.Source.Key).Distinct())}.", nameof(crop));
    }

    /// <summary>What every source prints of a crop, side by side.</summary>
    /// <param name="crop">
    /// One or more words that all stand in the name, capitals and plural or not: <c>blueberry</c>, <c>sweet pepper</c>, <c>Allium sativum</c>.
    /// </param>
    /// <returns>The rows; none where no source has the crop.</returns>
    /// <exception cref="ArgumentException">The crop is empty.</exception>
    /// <example><code>
    /// CropPhComparison garlic = CropPhs.Compare("garlic");
    /// Console.WriteLine(garlic);          // lowest pH 4.5 to pH 6.5, ...
    /// foreach (CropPh row in garlic.Rows)
    ///     Console.WriteLine(row);
    /// </code></example>
    public static CropPhComparison Compare(string crop)
    {
        Guard.NotBlank(crop);
        return new CropPhComparison(crop, ValueList<CropPh>.Of(All.Where(row => CropNames.Matches(crop, $"{row.Crop} {row.OtherName}"))));
    }
}
