using HortiCalc.Display;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Mixes;

/// <summary>How much of a salt goes into a volume of nutrient solution, and what a kilogram of it costs.</summary>
/// <remarks>Immutable; equal by value.</remarks>
public sealed record SaltAmount
{
    /// <summary>States how much of a salt goes into a solution.</summary>
    /// <param name="salt">The salt.</param>
    /// <param name="concentration">The mass of the product per volume of solution; 0 or more. 1 g/L is 1 kg per cubic metre.</param>
    /// <param name="pricePerKilogram">What a kilogram costs, in any currency; 0 or more, <see langword="null"/> where it is not known.</param>
    /// <exception cref="ArgumentOutOfRangeException">The amount or the price is negative.</exception>
    public SaltAmount(NutrientSalt salt, MassConcentration concentration, decimal? pricePerKilogram = null)
    {
        Salt = Guard.NotNull(salt);
        Guard.NotNegative(Boundary.MilligramsPerLitre(concentration), "mg/L", nameof(concentration));
        Concentration = HouseUnits.Normalise(concentration);
        if (pricePerKilogram is decimal price)
            Guard.NotNegative((double)price, "per kg", nameof(pricePerKilogram));
        PricePerKilogram = pricePerKilogram;
    }

    /// <summary>The salt.</summary>
    public NutrientSalt Salt { get; }

    /// <summary>The mass of the product per volume of solution.</summary>
    public MassConcentration Concentration { get; }

    /// <summary>What a kilogram of the product costs, or <see langword="null"/>.</summary>
    public decimal? PricePerKilogram { get; }

    /// <summary>States an amount in moles, as laboratories write recipes.</summary>
    /// <param name="salt">The salt.</param>
    /// <param name="concentration">Moles of the formula per volume of solution; 0 or more.</param>
    /// <returns>The amount of the product that holds them.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The concentration is negative.</exception>
    public static SaltAmount FromMolarity(NutrientSalt salt, Molarity concentration)
    {
        Guard.NotNull(salt);
        double molesPerLitre = Guard.NotNegative(Boundary.MolesPerLitre(concentration), "mol/L", nameof(concentration));
        return new SaltAmount(salt, MassConcentration.FromMilligramsPerLiter(molesPerLitre * salt.GramsPerMole / Boundary.MassFraction(salt.Purity) * 1000));
    }

    /// <summary>One line of text in metric units and invariant culture.</summary>
    /// <returns>For instance <c>potassium nitrate 506 mg/L</c>.</returns>
    public override string ToString() => $"{Salt.Name} {QuantityText.Of(Concentration, TextStyle.Default)}";

    /// <summary>The mass for a volume of solution.</summary>
    /// <param name="solution">The volume; 0 or more.</param>
    /// <returns>The mass of the product.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The volume is negative.</exception>
    public Mass For(Volume solution) =>
        Mass.FromKilograms(Guard.NotNegative(Boundary.Litres(solution), "L", nameof(solution)) * MilligramsPerLitre / 1_000_000);

    internal double MilligramsPerLitre => Boundary.MilligramsPerLitre(Concentration);
}
