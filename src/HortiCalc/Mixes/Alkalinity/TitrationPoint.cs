using HortiCalc.Display;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Mixes;

/// <summary>One point of a titration curve: so much acid, and the pH and alkalinity it leaves.</summary>
public sealed record TitrationPoint
{
    /// <summary>States a point of a titration curve.</summary>
    /// <param name="amount">Moles of acid per volume of water; 0 or more.</param>
    /// <param name="ph">The pH.</param>
    /// <param name="alkalinity">The alkalinity of the carbonates; 0 where free acid is left.</param>
    /// <exception cref="ArgumentOutOfRangeException">The amount is negative.</exception>
    public TitrationPoint(Molarity amount, Ph ph, VolumetricCharge alkalinity)
    {
        Guard.NotNegative(Boundary.MolesPerLitre(amount), "mol/L", nameof(amount));
        Amount = HouseUnits.Normalise(amount);
        Ph = ph;
        Alkalinity = alkalinity;
    }

    /// <summary>Moles of acid per volume of water.</summary>
    public Molarity Amount { get; }

    /// <summary>The pH.</summary>
    public Ph Ph { get; }

    /// <summary>The alkalinity of the carbonates; 0 where free acid is left.</summary>
    public VolumetricCharge Alkalinity { get; }

    /// <summary>One line of text in metric units and invariant culture.</summary>
    /// <returns>For instance <c>2 mmol/L of acid: pH 6.46, alkalinity 3 meq/L</c>.</returns>
    public override string ToString() => $"{QuantityText.Number(Boundary.MolesPerLitre(Amount) * 1000, TextStyle.Default)} mmol/L of acid: {Ph}, alkalinity {QuantityText.Number(Alkalinity.MilliequivalentsPerLitre, TextStyle.Default)} meq/L";
}
