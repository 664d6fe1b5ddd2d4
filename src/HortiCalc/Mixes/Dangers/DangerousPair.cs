using HortiCalc.Evidence;
using HortiCalc.Units;

namespace HortiCalc.Mixes;

/// <summary>Two classes of ingredients that must not meet, and what comes of it.</summary>
/// <remarks>Symmetric: the order in which the classes are given does not matter.</remarks>
public sealed record DangerousPair
{
    /// <summary>Describes a dangerous pair.</summary>
    /// <param name="first">One class.</param>
    /// <param name="second">The other.</param>
    /// <param name="result">What comes of it, in a few words: <c>chlorine gas</c>.</param>
    /// <param name="caution">How much is at stake, in a sentence, with its source.</param>
    /// <exception cref="ArgumentException">The text is empty, or a class is not one of the defined ones.</exception>
    public DangerousPair(IngredientClass first, IngredientClass second, string result, Caution caution)
    {
        Guard.Defined(first);
        Guard.Defined(second);
        (First, Second) = first <= second ? (first, second) : (second, first);
        Result = Guard.NotBlank(result);
        Caution = Guard.NotNull(caution);
    }

    /// <summary>The class that comes first in the enumeration.</summary>
    public IngredientClass First { get; }

    /// <summary>The other class.</summary>
    public IngredientClass Second { get; }

    /// <summary>What comes of it, in a few words.</summary>
    public string Result { get; }

    /// <summary>How much is at stake, in a sentence, with its source.</summary>
    public Caution Caution { get; }

    /// <summary>The pair and what comes of it.</summary>
    /// <returns>For instance <c>Hypochlorite + Acid: chlorine gas</c>.</returns>
    public override string ToString() => $"{First} + {Second}: {Result}";

    internal bool Joins(MixIngredient one, MixIngredient other) =>
        (one.Classes.Contains(First) && other.Classes.Contains(Second))
        || (one.Classes.Contains(Second) && other.Classes.Contains(First));
}
