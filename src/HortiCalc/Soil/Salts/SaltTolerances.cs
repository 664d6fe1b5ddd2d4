using HortiCalc.Evidence;
using HortiCalc.Units;

namespace HortiCalc.Soil;

/// <summary>Published salt tolerances of crops, whole tables side by side: FAO-56, and the lists of the U.S. Salinity Laboratory.</summary>
/// <remarks>Sources differ, and FAO-56 prints ranges where others print one value. They are given as printed, not averaged.</remarks>
public static class SaltTolerances
{
    /// <summary>Every row there is, source by source.</summary>
    public static IReadOnlyList<SaltTolerance> All { get; } = ValueList<SaltTolerance>.Of(
        [.. Fao56SaltTolerances.Rows, .. HerbaceousSaltTolerances.Rows, .. FieldSaltTolerances.Rows]);

    /// <summary>The row of a crop of one source.</summary>
    /// <param name="source">The <see cref="Source.Key"/> of the source.</param>
    /// <param name="crop">The crop in plain English or as the source names it, capitals or not.</param>
    /// <returns>The row.</returns>
    /// <exception cref="ArgumentException">The source has no such crop, or a text is empty.</exception>
    public static SaltTolerance Named(string source, string crop)
    {
        Guard.NotBlank(source);
        Guard.NotBlank(crop);
        return All.FirstOrDefault(row => row.Source.Key == source && row.PrintedCrop.Equals(crop, StringComparison.OrdinalIgnoreCase))
            ?? All.FirstOrDefault(row => row.Source.Key == source && row.Crop.Equals(crop, StringComparison.OrdinalIgnoreCase))
            ?? throw new ArgumentException(
                $"crop was '{crop}' of '{source}'; allowed: the crops of {string.Join(", ", All.Select(row => row.Source.Key).Distinct())}.", nameof(crop));
    }

    /// <summary>What every source prints of a crop, side by side.</summary>
    /// <param name="crop">The crop in plain English, capitals or not: <c>tomato</c>.</param>
    /// <returns>The rows; none where no source has the crop.</returns>
    /// <exception cref="ArgumentException">The crop is empty.</exception>
    /// <example><code>
    /// foreach (SaltTolerance row in SaltTolerances.Of("tomato"))
    /// {
    ///     if (row.Threshold is not null)
    ///         Console.WriteLine($"{row} {row.RelativeYield(ElectricConductivity.FromMillisiemensPerCentimeter(4)).Value}");
    /// }
    /// </code></example>
    public static IReadOnlyList<SaltTolerance> Of(string crop)
    {
        Guard.NotBlank(crop);
        return ValueList<SaltTolerance>.Of(All.Where(row => row.Crop.Equals(crop, StringComparison.OrdinalIgnoreCase)));
    }
}
