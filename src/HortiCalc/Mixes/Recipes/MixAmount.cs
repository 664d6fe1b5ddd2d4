using System.Text.Json.Serialization;
using HortiCalc.Display;
using HortiCalc.Units;

namespace HortiCalc.Mixes;

/// <summary>How much of one ingredient goes into a batch, with the range that the recipe prints.</summary>
[JsonPolymorphic(TypeDiscriminatorPropertyName = "kind")]
[JsonDerivedType(typeof(VolumeAmount), "volume")]
[JsonDerivedType(typeof(MassAmount), "mass")]
public abstract record MixAmount : IFormattable
{
    private protected MixAmount(MixIngredient ingredient) => Ingredient = Guard.NotNull(ingredient);

    /// <summary>The ingredient.</summary>
    public MixIngredient Ingredient { get; }

    /// <summary>The amount in metric units and invariant culture.</summary>
    /// <returns>For instance <c>1 L of household bleach</c>.</returns>
    public sealed override string ToString() => ToString(null, null);

    /// <summary>The amount as text.</summary>
    /// <param name="format"><c>M</c> or nothing for metric units, <c>U</c> for US customary ones.</param>
    /// <param name="formatProvider">The culture, or <see langword="null"/> for the invariant one.</param>
    /// <returns>The amount or its range, and the ingredient.</returns>
    /// <exception cref="FormatException">The format is another one.</exception>
    public string ToString(string? format, IFormatProvider? formatProvider) =>
        $"{Span(TextStyle.Parse(format, formatProvider))} of {Ingredient.Name}";

    internal abstract string Span(TextStyle style);

    /// <summary>Both ends as text, or one of them where they read the same.</summary>
    internal static string Span(object low, object high, TextStyle style)
    {
        string lowText = QuantityText.Of(low, style);
        string highText = QuantityText.Of(high, style);
        return lowText == highText ? lowText : $"{lowText} to {highText}";
    }
}
