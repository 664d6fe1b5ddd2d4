using System.Text.Json.Serialization;
using HortiCalc.Display;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Mixes;

/// <summary>How much of one ingredient a recipe takes, with the range that its source prints.</summary>
[JsonPolymorphic(TypeDiscriminatorPropertyName = "kind")]
[JsonDerivedType(typeof(VolumeDose), "volume")]
[JsonDerivedType(typeof(MassDose), "mass")]
[JsonDerivedType(typeof(SpoonDose), "spoon")]
public abstract record RecipeDose
{
    private protected RecipeDose(MixIngredient ingredient) => Ingredient = Guard.NotNull(ingredient);

    /// <summary>The ingredient.</summary>
    public MixIngredient Ingredient { get; }

    /// <summary>The litres that the low and the high dose add to a litre of the basis; a powder is taken to add none.</summary>
    internal abstract (double Low, double High) LitresPerLitre { get; }

    /// <summary>The dose for so much of the basis: the low one for the first volume, the high one for the second.</summary>
    internal abstract MixAmount For(Volume lowBasis, Volume highBasis);

    /// <summary>The dose in metric units and invariant culture.</summary>
    /// <returns>For instance <c>10 % by volume of household bleach</c>.</returns>
    public sealed override string ToString() => $"{RateText(TextStyle.Default)} of {Ingredient.Name}";

    private protected abstract string RateText(TextStyle style);
}
