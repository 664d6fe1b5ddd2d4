using HortiCalc.Display;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Mixes;

/// <summary>How much of an element a publication wants in a feed, or bears in a water.</summary>
public sealed record NutrientRange
{
    /// <summary>States a range.</summary>
    /// <param name="element">The element.</param>
    /// <param name="low">The least; 0 or more.</param>
    /// <param name="high">The most; at least the least. The same where one figure is printed.</param>
    /// <exception cref="ArgumentOutOfRangeException">The element is not a defined one, or the range is not one.</exception>
    public NutrientRange(NutrientElement element, MassConcentration low, MassConcentration high)
    {
        Element = Guard.Defined(element);
        double least = Guard.NotNegative(Boundary.MilligramsPerLitre(low), "mg/L", nameof(low));
        Guard.AtLeast(Boundary.MilligramsPerLitre(high), least, "mg/L", nameof(high));
        Low = HouseUnits.Normalise(low);
        High = HouseUnits.Normalise(high);
    }

    /// <summary>The element.</summary>
    public NutrientElement Element { get; }

    /// <summary>The least.</summary>
    public MassConcentration Low { get; }

    /// <summary>The most.</summary>
    public MassConcentration High { get; }

    /// <summary>Whether a solution lies in the range.</summary>
    /// <param name="solution">The solution.</param>
    /// <returns>Both ends included.</returns>
    public bool Holds(SolutionIons solution)
    {
        double amount = Boundary.MilligramsPerLitre(Guard.NotNull(solution).Element(Element));
        return amount >= Boundary.MilligramsPerLitre(Low) && amount <= Boundary.MilligramsPerLitre(High);
    }

    /// <summary>One line of text in metric units and invariant culture.</summary>
    /// <returns>For instance <c>Nitrogen 165 mg/L to 200 mg/L</c>.</returns>
    public override string ToString() => Low.Equals(High, MassConcentration.Zero) ? $"{Element} {QuantityText.Of(Low, TextStyle.Default)}" : $"{Element} {QuantityText.Of(Low, TextStyle.Default)} to {QuantityText.Of(High, TextStyle.Default)}";
}
