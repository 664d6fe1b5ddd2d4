using HortiCalc.Evidence;
using HortiCalc.Units;

namespace HortiCalc.Mixes;

/// <summary>Something that goes into a mix, with the classes that decide what it must not meet.</summary>
/// <remarks>Immutable; equal when all members are equal.</remarks>
public sealed record MixIngredient
{
    /// <summary>Describes an ingredient.</summary>
    /// <param name="key">A short stable name, for translation and storage.</param>
    /// <param name="name">The name in plain English.</param>
    /// <param name="classes">
    /// All classes it belongs to; vinegar is <see cref="IngredientClass.Acid"/> and <see cref="IngredientClass.AceticAcid"/>.
    /// </param>
    /// <exception cref="ArgumentException">A text is empty, or a class is not one of the defined ones.</exception>
    public MixIngredient(string key, string name, params IReadOnlyList<IngredientClass> classes)
    {
        Key = Guard.NotBlank(key);
        Name = Guard.NotBlank(name);
        foreach (IngredientClass one in Guard.NotNull(classes))
            Guard.Defined(one, nameof(classes));
        Classes = ValueList<IngredientClass>.Of(classes.Distinct().Order());
    }

    /// <summary>A short stable name.</summary>
    public string Key { get; }

    /// <summary>The name in plain English.</summary>
    public string Name { get; }

    /// <summary>All classes it belongs to, in the order of the enumeration.</summary>
    public IReadOnlyList<IngredientClass> Classes { get; }

    /// <summary>The name.</summary>
    /// <returns>For instance <c>household bleach</c>.</returns>
    public override string ToString() => Name;
}
