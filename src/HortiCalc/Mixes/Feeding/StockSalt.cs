using System.Text.Json.Serialization;
using HortiCalc.Display;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Mixes;

/// <summary>What to weigh of one salt into a stock tank, and whether it dissolves there.</summary>
public sealed record StockSalt
{
    /// <summary>Describes the amount of one salt in a tank.</summary>
    /// <param name="salt">The salt.</param>
    /// <param name="mass">What to weigh; 0 or more.</param>
    /// <param name="concentration">The mass per volume of the tank; 0 or more.</param>
    /// <param name="solubility">
    /// How much of the salt alone a litre of its solution holds at the tank's temperature, or <see langword="null"/> where no table says.
    /// </param>
    /// <exception cref="ArgumentOutOfRangeException">An amount is negative, or the solubility is not above 0.</exception>
    public StockSalt(NutrientSalt salt, Mass mass, MassConcentration concentration, MassConcentration? solubility)
    {
        Salt = Guard.NotNull(salt);
        Guard.NotNegative(Boundary.Kilograms(mass), "kg", nameof(mass));
        Guard.NotNegative(Boundary.MilligramsPerLitre(concentration) / 1000, "g/L", nameof(concentration));
        Mass = HouseUnits.Normalise(mass);
        Concentration = HouseUnits.Normalise(concentration);
        if (solubility is MassConcentration known)
        {
            Guard.Positive(Boundary.MilligramsPerLitre(known) / 1000, "g/L", nameof(solubility));
            Solubility = HouseUnits.Normalise(known);
        }
    }

    /// <summary>The salt.</summary>
    public NutrientSalt Salt { get; }

    /// <summary>What to weigh.</summary>
    public Mass Mass { get; }

    /// <summary>The mass per volume of the tank.</summary>
    public MassConcentration Concentration { get; }

    /// <summary>How much of the salt alone a litre of its solution holds, or <see langword="null"/> where no table says.</summary>
    public MassConcentration? Solubility { get; }

    /// <summary>How much of that is used; above 100 % it cannot dissolve. <see langword="null"/> where no table says.</summary>
    [JsonIgnore]
    public Ratio? ShareOfSolubility => Solubility is MassConcentration most
        ? Ratio.FromPercent(100 * Boundary.MilligramsPerLitre(Concentration) / Boundary.MilligramsPerLitre(most))
        : null;

    /// <summary>One line of text in metric units and invariant culture.</summary>
    /// <returns>For instance <c>potassium nitrate 2.53 kg</c>.</returns>
    public override string ToString() => $"{Salt.Name} {QuantityText.Of(Mass, TextStyle.Default)}";
}
