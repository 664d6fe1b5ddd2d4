using System.Text.Json.Serialization;
using HortiCalc.Evidence;
using HortiCalc.Units;

namespace HortiCalc.Mixes;

/// <summary>A published nutrient solution by its salts.</summary>
/// <remarks>Immutable; equal by value.</remarks>
public sealed record NutrientFormula
{
    /// <summary>Describes a published solution.</summary>
    /// <param name="key">A short stable name.</param>
    /// <param name="name">The name in plain English.</param>
    /// <param name="source">Where it was printed.</param>
    /// <param name="macronutrientSalts">The salts of the main nutrients.</param>
    /// <param name="traceSalts">The salts of the trace elements, without iron where the source leaves its dose to the grower.</param>
    /// <exception cref="ArgumentException">A text is empty, or something is missing.</exception>
    public NutrientFormula(
        string key, string name, Source source, IReadOnlyList<SaltAmount> macronutrientSalts, IReadOnlyList<SaltAmount> traceSalts)
    {
        Key = Guard.NotBlank(key);
        Name = Guard.NotBlank(name);
        Source = Guard.NotNull(source);
        MacronutrientSalts = ValueList<SaltAmount>.Of(Guard.NotNull(macronutrientSalts));
        TraceSalts = ValueList<SaltAmount>.Of(Guard.NotNull(traceSalts));
        Macronutrients = NutrientSolution.IonsOf(MacronutrientSalts);
        Ions = NutrientSolution.IonsOf([.. MacronutrientSalts, .. TraceSalts]);
    }

    /// <summary>A short stable name.</summary>
    public string Key { get; }

    /// <summary>The name in plain English.</summary>
    public string Name { get; }

    /// <summary>Where it was printed.</summary>
    public Source Source { get; }

    /// <summary>The salts of the main nutrients.</summary>
    public IReadOnlyList<SaltAmount> MacronutrientSalts { get; }

    /// <summary>The salts of the trace elements.</summary>
    public IReadOnlyList<SaltAmount> TraceSalts { get; }

    /// <summary>The ions of the main nutrients' salts.</summary>
    [JsonIgnore]
    public SolutionIons Macronutrients { get; }

    /// <summary>The ions of all salts.</summary>
    [JsonIgnore]
    public SolutionIons Ions { get; }

    /// <summary>The name and the source.</summary>
    /// <returns>One line of text.</returns>
    public override string ToString() => $"{Name} [{Source}]";
}
