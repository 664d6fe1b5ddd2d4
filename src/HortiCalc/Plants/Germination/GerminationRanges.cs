using HortiCalc.Evidence;
using HortiCalc.Units;

namespace HortiCalc.Plants;

/// <summary>Published minimum, optimum and maximum soil temperatures for germination, whole tables of several sources side by side.</summary>
/// <remarks>Sources differ by what they call possible and by the seed they tried. They are given as printed, not averaged.</remarks>
public static class GerminationRanges
{
    /// <summary>Every range there is, source by source.</summary>
    public static IReadOnlyList<GerminationRange> All { get; } = ValueList<GerminationRange>.Of(
        [.. OregonGerminationRanges.Rows, .. MagazineGerminationRanges.Rows, .. TextbookGerminationRanges.Rows, .. CalifornianGerminationRanges.Rows]);

    /// <summary>The range of a crop of one source.</summary>
    /// <param name="source">The <see cref="Source.Key"/> of the source.</param>
    /// <param name="crop">The crop in plain English, capitals or not.</param>
    /// <returns>The range.</returns>
    /// <exception cref="ArgumentException">The source has no such crop, or a text is empty.</exception>
    public static GerminationRange Named(string source, string crop)
    {
        Guard.NotBlank(source);
        return Compare(crop).Ranges.FirstOrDefault(range => range.Source.Key == source)
            ?? throw new ArgumentException(
                $"crop was '{crop}' of '{source}'; allowed: the crops of {string.Join(", ", All.Select(range => range.Source.Key).Distinct())}.", nameof(crop));
    }

    /// <summary>What every source prints of a crop, side by side.</summary>
    /// <param name="crop">The crop in plain English, capitals or not: <c>pepper</c>.</param>
    /// <returns>The ranges; none where no source has the crop.</returns>
    /// <exception cref="ArgumentException">The crop is empty.</exception>
    /// <example><code>
    /// GerminationRangeComparison pepper = GerminationRanges.Compare("pepper");
    /// Console.WriteLine(pepper.ToString("U", null));
    /// </code></example>
    public static GerminationRangeComparison Compare(string crop)
    {
        Guard.NotBlank(crop);
        return new GerminationRangeComparison(crop, ValueList<GerminationRange>.Of(
            All.Where(range => range.Crop.Equals(crop, StringComparison.OrdinalIgnoreCase))));
    }
}
