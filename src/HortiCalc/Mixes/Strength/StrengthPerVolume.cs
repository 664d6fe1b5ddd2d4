using HortiCalc.Display;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Mixes;

/// <summary>A strength as mass of the ingredient per volume of the liquid: mg/L, g/L.</summary>
public sealed record StrengthPerVolume : Strength
{
    /// <summary>States a strength as mass per volume.</summary>
    /// <param name="concentration">0 or more.</param>
    /// <param name="ingredient">What is counted; empty for the concentrate itself.</param>
    /// <exception cref="ArgumentOutOfRangeException">The concentration is negative.</exception>
    public StrengthPerVolume(MassConcentration concentration, string ingredient = "")
        : base(ingredient)
    {
        Guard.NotNegative(Boundary.MilligramsPerLitre(concentration), "mg/L", nameof(concentration));
        Concentration = HouseUnits.Normalise(concentration);
    }

    /// <summary>The mass of the ingredient per volume of the liquid.</summary>
    public MassConcentration Concentration { get; }

    /// <summary>The same strength by mass.</summary>
    /// <param name="density">The density of the liquid as a whole; more than 0, and at least the concentration itself.</param>
    /// <returns>The concentration over the density, with that density.</returns>
    /// <exception cref="ArgumentOutOfRangeException">
    /// The density is not above 0, or a litre would weigh less than the ingredient in it.
    /// </exception>
    public StrengthByMass ToMassFraction(Density density)
    {
        double gramsPerLitre = Guard.Positive(Boundary.KilogramsPerCubicMetre(density), "kg/m³", nameof(density));
        double ingredientGramsPerLitre = Boundary.MilligramsPerLitre(Concentration) / 1000;
        Guard.AtLeast(gramsPerLitre, ingredientGramsPerLitre, "kg/m³", nameof(density));
        return new StrengthByMass(MassFraction.FromPercent(100 * ingredientGramsPerLitre / gramsPerLitre), density, Ingredient);
    }

    internal override double? ScaledFigure => Boundary.MilligramsPerLitre(Concentration);

    internal override bool IsByVolume => false;

    private protected override string Figure(TextStyle style) => QuantityText.Of(Concentration, style);
}
