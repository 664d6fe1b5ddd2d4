using HortiCalc.Evidence;
using HortiCalc.Units;

namespace HortiCalc.Climate;

/// <summary>Published base and upper temperatures of crops and insects; sources disagree, and stand side by side.</summary>
/// <remarks>For wheat three sources print 0 °C and two 40 °F: a sum belongs to the base it was published with.</remarks>
/// <example><code>
/// foreach (BaseTemperature wheat in BaseTemperatures.Of("wheat"))
///     Console.WriteLine(wheat);
/// </code></example>
public static class BaseTemperatures
{
    /// <summary>Every one there is.</summary>
    public static IReadOnlyList<BaseTemperature> All { get; } = ValueList<BaseTemperature>.Of([.. CropBases.Rows, .. InsectBases.Rows]);

    /// <summary>All that are printed for a crop or insect.</summary>
    /// <param name="subject">The English name, capitals or not, or a part of it.</param>
    /// <returns>What each source prints; none where no source has it.</returns>
    /// <exception cref="ArgumentException">The name is empty.</exception>
    public static IReadOnlyList<BaseTemperature> Of(string subject)
    {
        Guard.NotBlank(subject);
        return ValueList<BaseTemperature>.Of(All.Where(row => row.Subject.Contains(subject, StringComparison.OrdinalIgnoreCase)));
    }
}
