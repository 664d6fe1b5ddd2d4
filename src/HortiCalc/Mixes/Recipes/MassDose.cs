using HortiCalc.Display;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Mixes;

/// <summary>A dose that is weighed.</summary>
public sealed record MassDose : RecipeDose
{
    /// <summary>Describes a dose.</summary>
    /// <param name="ingredient">The ingredient.</param>
    /// <param name="low">The lowest dose printed, per volume of the recipe's basis; more than 0.</param>
    /// <param name="high">The highest dose printed; the same where the source prints one.</param>
    /// <exception cref="ArgumentOutOfRangeException">A dose is not above 0, or the low one is above the high one.</exception>
    public MassDose(MixIngredient ingredient, MassConcentration low, MassConcentration high)
        : base(ingredient)
    {
        double lowMilligramsPerLitre = Guard.Positive(Boundary.MilligramsPerLitre(low), "mg/L", nameof(low));
        Guard.AtLeast(Boundary.MilligramsPerLitre(high), lowMilligramsPerLitre, "mg/L", nameof(high));
        Low = HouseUnits.Normalise(low);
        High = HouseUnits.Normalise(high);
    }

    /// <summary>The lowest dose printed.</summary>
    public MassConcentration Low { get; }

    /// <summary>The highest dose printed.</summary>
    public MassConcentration High { get; }

    internal override (double Low, double High) LitresPerLitre => (0, 0);

    internal override MixAmount For(Volume lowBasis, Volume highBasis) =>
        new MassAmount(Ingredient, Dilution.ProductFor(Low, lowBasis), Dilution.ProductFor(High, highBasis));

    private protected override string RateText(TextStyle style) => MixAmount.Span(Low, High, style);
}
