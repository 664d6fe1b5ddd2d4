using System.Text.Json.Serialization;
using HortiCalc.Display;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Mixes;

/// <summary>How near a nutrient solution comes to what was wanted of one ion.</summary>
public sealed record IonResidual
{
    /// <summary>States what was wanted and what is reached.</summary>
    /// <param name="ion">The ion.</param>
    /// <param name="wanted">What was wanted; 0 or more.</param>
    /// <param name="reached">What the salts and the water come to; 0 or more.</param>
    /// <exception cref="ArgumentOutOfRangeException">The ion is not a defined one, or a concentration is negative.</exception>
    public IonResidual(SolutionIon ion, Molarity wanted, Molarity reached)
    {
        Ion = Guard.Defined(ion);
        Guard.NotNegative(Boundary.MolesPerLitre(wanted), "mol/L", nameof(wanted));
        Guard.NotNegative(Boundary.MolesPerLitre(reached), "mol/L", nameof(reached));
        Wanted = HouseUnits.Normalise(wanted);
        Reached = HouseUnits.Normalise(reached);
    }

    /// <summary>The ion.</summary>
    public SolutionIon Ion { get; }

    /// <summary>What was wanted.</summary>
    public Molarity Wanted { get; }

    /// <summary>What the salts and the water come to.</summary>
    public Molarity Reached { get; }

    /// <summary>What is reached less what was wanted: below zero where it falls short.</summary>
    [JsonIgnore]
    public Molarity Difference => Molarity.FromMolesPerLiter(Boundary.MolesPerLitre(Reached) - Boundary.MolesPerLitre(Wanted));

    /// <summary>One line of text in metric units and invariant culture.</summary>
    /// <returns>For instance <c>nitrate 14.8 of 15 mmol/L</c>.</returns>
    public override string ToString() => $"{IonFacts.Of(Ion).Name} {QuantityText.Number(Boundary.MolesPerLitre(Reached) * 1000, TextStyle.Default)} of {QuantityText.Number(Boundary.MolesPerLitre(Wanted) * 1000, TextStyle.Default)} mmol/L";
}
