using HortiCalc.Evidence;
using HortiCalc.Units;

namespace HortiCalc.Climate;

/// <summary>Published chill requirements of crops and cultivars, whole tables of several sources side by side.</summary>
/// <remarks>
/// Sources differ for the same cultivar, by the place and year of the study and the buds that were watched. They are given as
/// printed, not averaged.
/// </remarks>
public static class ChillRequirements
{
    /// <summary>Every requirement there is, source by source.</summary>
    public static IReadOnlyList<ChillRequirement> All { get; } = ValueList<ChillRequirement>.Of(
    [
        .. UcFruitAndNutChill.Rows, .. UcTreePhenologyChill.Rows, .. MidwesternClimateCenterChill.Rows, .. AustralianNurseryChill.Rows,
        .. CalifornianNurseryChill.Rows,
    ]);

    /// <summary>All requirements of a crop, of every source and cultivar.</summary>
    /// <param name="crop">The crop in English, capitals or not: <c>apricot</c>.</param>
    /// <returns>The requirements; none where no source has the crop.</returns>
    /// <exception cref="ArgumentException">The crop is empty.</exception>
    public static IReadOnlyList<ChillRequirement> Of(string crop)
    {
        Guard.NotBlank(crop);
        return ValueList<ChillRequirement>.Of(All.Where(row => row.Crop.Equals(crop, StringComparison.OrdinalIgnoreCase)));
    }

    /// <summary>One requirement of one source.</summary>
    /// <param name="source">The <see cref="Source.Key"/> of the source.</param>
    /// <param name="crop">The crop, as the source names it.</param>
    /// <param name="cultivar">The cultivar, as the source names it, or <see langword="null"/> where it speaks of the crop.</param>
    /// <returns>The requirement.</returns>
    /// <exception cref="ArgumentException">The source has no such row, or a text is empty.</exception>
    public static ChillRequirement Named(string source, string crop, string? cultivar = null)
    {
        Guard.NotBlank(source);
        Guard.NotBlank(crop);
        return All.FirstOrDefault(row => (row.Source.Key, row.Crop, row.Cultivar) == (source, crop, cultivar))
            ?? throw new ArgumentException(
                $"crop was '{crop}'{(cultivar is null ? "" : $", cultivar '{cultivar}'")} of '{source}'; "
                + $"allowed: the rows of {string.Join(", ", All.Select(row => row.Source.Key).Distinct())}.",
                nameof(crop));
    }
}
