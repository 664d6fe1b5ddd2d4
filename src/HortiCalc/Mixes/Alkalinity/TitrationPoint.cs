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
}
