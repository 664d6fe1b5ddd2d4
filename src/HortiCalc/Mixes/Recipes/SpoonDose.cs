using HortiCalc.Display;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Mixes;

/// <summary>A dose of powder measured with a level spoon. It is taken to add no volume to the mix.</summary>
/// <remarks>What a spoon of powder weighs depends on its bulk density; a recipe by the spoon says nothing about grams.</remarks>
public sealed record SpoonDose : RecipeDose
{
    /// <summary>Describes a dose.</summary>
    /// <param name="ingredient">The ingredient.</param>
    /// <param name="rate">The volume of powder per volume of the recipe's basis; more than 0.</param>
    /// <exception cref="ArgumentOutOfRangeException">The dose is not above 0.</exception>
    public SpoonDose(MixIngredient ingredient, VolumeConcentration rate)
        : base(ingredient)
    {
        Guard.Positive(Boundary.VolumeFraction(rate) * 100, "% by volume", nameof(rate));
        Rate = HouseUnits.Normalise(rate);
    }

    /// <summary>The volume of powder per volume of the recipe's basis.</summary>
    public VolumeConcentration Rate { get; }

    internal override (double Low, double High) LitresPerLitre => (0, 0);

    internal override MixAmount For(Volume lowBasis, Volume highBasis) =>
        new VolumeAmount(Ingredient, Dilution.ProductFor(Rate, lowBasis), Dilution.ProductFor(Rate, highBasis));

    private protected override string RateText(TextStyle style) => QuantityText.Of(Rate, style);
}
