using HortiCalc.Evidence;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Climate;

/// <summary>Published critical temperatures of crops by stage, every source side by side.</summary>
/// <remarks>
/// Where one source calls a stage by another word, <see cref="CriticalTemperature.CommonStage"/> brings them together. They differ by up to 3 °F for
/// one stage: that is what is known, and an answer for a crop is one answer for each source.
/// </remarks>
public static partial class CriticalTemperatures
{
    /// <summary>Every line of every table.</summary>
    public static IReadOnlyList<CriticalTemperature> All { get; } = ValueList<CriticalTemperature>.Of(
        [.. MichiganTreeFruit, .. UtahTreeFruit, .. PurdueFruit, .. Strawberries, .. MichiganBlueberry, .. MaineCranberry]);

    /// <summary>The crops, in the order of the tables.</summary>
    public static IReadOnlyList<string> Crops { get; } = ValueList<string>.Of([.. All.Select(line => line.Crop).Distinct()]);

    /// <summary>The share of buds that a full crop needs.</summary>
    public static IReadOnlyList<CropBudNeed> BudNeeds { get; } = ValueList<CropBudNeed>.Of(
    [
        Need("Sweet cherry", 50, null),
        Need("Tart cherry", 50, null),
        Need("Apple", 10, 15),
        Need("Pear", 10, 15),
        Need("Peach", 10, 15),
    ]);

    /// <summary>The stages of a crop, in the words common to the sources and the order of the tables.</summary>
    /// <param name="crop">The crop, one of <see cref="Crops"/>; capitals do not matter.</param>
    /// <returns>The stages.</returns>
    /// <exception cref="ArgumentException">There is no such crop.</exception>
    public static IReadOnlyList<string> StagesOf(string crop) =>
        ValueList<string>.Of([.. LinesOf(crop).Select(line => line.CommonStage).Distinct()]);

    /// <summary>What every source prints for a crop at a stage.</summary>
    /// <param name="crop">The crop, one of <see cref="Crops"/>; capitals do not matter.</param>
    /// <param name="stage">The stage, in the common words or those of a source; capitals do not matter.</param>
    /// <returns>One line or more, a source each; for cranberries one for each group of varieties.</returns>
    /// <exception cref="ArgumentException">There is no such crop, or no such stage of it.</exception>
    /// <example><code>
    /// foreach (CriticalTemperature line in CriticalTemperatures.For("peach", "first pink"))
    ///     Console.WriteLine(line.DamageAt(Temperature.FromDegreesFahrenheit(20))); // 50 % of the buds by one source, 67 % by the other
    /// </code></example>
    public static IReadOnlyList<CriticalTemperature> For(string crop, string stage)
    {
        Guard.NotBlank(stage);
        List<CriticalTemperature> lines = LinesOf(crop);
        HashSet<string> alike = [.. lines.Where(line => Same(line.Stage, stage) || Same(line.CommonStage, stage)).Select(line => line.CommonStage)];
        return alike.Count > 0
            ? ValueList<CriticalTemperature>.Of([.. lines.Where(line => alike.Contains(line.CommonStage))])
            : throw new ArgumentException(
                $"stage was '{stage}'; allowed for {lines[0].Crop}: {string.Join(", ", lines.Select(line => line.CommonStage).Distinct())}.", nameof(stage));
    }

    private static List<CriticalTemperature> LinesOf(string crop)
    {
        Guard.NotBlank(crop);
        List<CriticalTemperature> lines = [.. All.Where(line => Same(line.Crop, crop))];
        return lines.Count > 0
            ? lines
            : throw new ArgumentException($"crop was '{crop}'; allowed: {string.Join(", ", Crops)}.", nameof(crop));
    }

    private static bool Same(string one, string other) => string.Equals(one, other, StringComparison.OrdinalIgnoreCase);

    private static CropBudNeed Need(string crop, double low, double? high) =>
        new(crop, Ratio.FromPercent(low), high is double most ? Ratio.FromPercent(most) : null, FrostNightSources.UtahFactSheet);
}
