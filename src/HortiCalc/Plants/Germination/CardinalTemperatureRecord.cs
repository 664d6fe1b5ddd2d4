using HortiCalc.Evidence;
using HortiCalc.Units;

namespace HortiCalc.Plants;

/// <summary>The cardinal temperatures of germination of a plant, as one source found them.</summary>
/// <remarks>Immutable; equal when all members are equal.</remarks>
public sealed record CardinalTemperatureRecord
{
    /// <summary>Holds what a source found.</summary>
    /// <param name="crop">The plant in plain English, or by its botanical name where it has none.</param>
    /// <param name="condition">The variety, or how it was found.</param>
    /// <param name="temperatures">The temperatures, as far as they are printed.</param>
    /// <param name="source">Where it was published.</param>
    /// <exception cref="ArgumentNullException">The temperatures or the source are missing.</exception>
    /// <exception cref="ArgumentException">A text is empty.</exception>
    public CardinalTemperatureRecord(string crop, string condition, CardinalTemperatures temperatures, Source source)
    {
        Crop = Guard.NotBlank(crop);
        Condition = Guard.NotBlank(condition);
        Temperatures = Guard.NotNull(temperatures);
        Source = Guard.NotNull(source);
    }

    /// <summary>The plant in plain English, or by its botanical name where it has none.</summary>
    public string Crop { get; }

    /// <summary>The variety, or how it was found.</summary>
    public string Condition { get; }

    /// <summary>The temperatures, as far as they are printed.</summary>
    public CardinalTemperatures Temperatures { get; }

    /// <summary>Where it was published.</summary>
    public Source Source { get; }

    /// <summary>The plant, its temperatures and the source.</summary>
    /// <returns>One line, in °C.</returns>
    public override string ToString() => $"{Crop}, {Condition}: {Temperatures} [{Source}]";
}
