using HortiCalc.Units;

namespace HortiCalc.Mixes;

/// <summary>Two ingredients of a list that must not meet.</summary>
/// <remarks>Symmetric: the order in which the ingredients are given does not matter.</remarks>
public sealed record Danger
{
    /// <summary>Describes a danger.</summary>
    /// <param name="first">One ingredient.</param>
    /// <param name="second">The other.</param>
    /// <param name="pair">The published pair of classes they belong to.</param>
    /// <exception cref="ArgumentException">The pair does not join the two ingredients.</exception>
    public Danger(MixIngredient first, MixIngredient second, DangerousPair pair)
    {
        Guard.NotNull(first);
        Guard.NotNull(second);
        Pair = Guard.NotNull(pair);
        if (!pair.Joins(first, second))
            throw new ArgumentException($"pair was {pair}; allowed: a pair that joins {first} and {second}.", nameof(pair));
        (First, Second) = string.CompareOrdinal(first.Key, second.Key) <= 0 ? (first, second) : (second, first);
    }

    /// <summary>The ingredient whose key comes first.</summary>
    public MixIngredient First { get; }

    /// <summary>The other ingredient.</summary>
    public MixIngredient Second { get; }

    /// <summary>The published pair of classes they belong to.</summary>
    public DangerousPair Pair { get; }

    /// <summary>The two ingredients and what comes of it.</summary>
    /// <returns>For instance <c>household bleach + vinegar: chlorine gas</c>.</returns>
    public override string ToString() => $"{First} + {Second}: {Pair.Result}";
}
