using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Soil;

/// <summary>How much of a nutrient a soil should get: at least so much, and not above so much.</summary>
/// <remarks>
/// Immutable; equal when all members are equal. As elements: phosphorus and potassium, not their oxides. With zero at least it is a limit alone, for
/// instance on chloride.
/// </remarks>
public sealed record NutrientNeed
{
    /// <summary>Describes a need.</summary>
    /// <param name="nutrient">The nutrient.</param>
    /// <param name="least">The least amount per area; zero or more.</param>
    /// <param name="most">The most; not below the least, and above zero.</param>
    /// <exception cref="ArgumentOutOfRangeException">There is no such nutrient, or an amount lies outside what is said above.</exception>
    public NutrientNeed(Nutrient nutrient, AreaDensity least, AreaDensity most)
    {
        Nutrient = Guard.Defined(nutrient);
        double low = Guard.NotNegative(Boundary.GramsPerSquareMetre(least), "g/m²", nameof(least));
        Guard.AtLeast(Guard.Positive(Boundary.GramsPerSquareMetre(most), "g/m²", nameof(most)), low, "g/m²", nameof(most));
        Least = HouseUnits.Normalise(least);
        Most = HouseUnits.Normalise(most);
    }

    /// <summary>The nutrient.</summary>
    public Nutrient Nutrient { get; }

    /// <summary>The least amount per area, as the element.</summary>
    public AreaDensity Least { get; }

    /// <summary>The most, as the element.</summary>
    public AreaDensity Most { get; }

    internal double LeastGramsPerSquareMetre => Boundary.GramsPerSquareMetre(Least);

    internal double MostGramsPerSquareMetre => Boundary.GramsPerSquareMetre(Most);

    /// <summary>What the amounts are measured by, so that every nutrient counts alike.</summary>
    internal double ScaleGramsPerSquareMetre => LeastGramsPerSquareMetre > 0 ? LeastGramsPerSquareMetre : MostGramsPerSquareMetre;

    /// <summary>A need with so much room above it.</summary>
    /// <param name="nutrient">The nutrient.</param>
    /// <param name="amount">The amount per area; above zero.</param>
    /// <param name="slack">How much more may be given, in proportion to the amount; from 0 to 1000 %.</param>
    /// <returns>The need.</returns>
    /// <exception cref="ArgumentOutOfRangeException">There is no such nutrient, or a number lies outside what is said above.</exception>
    public static NutrientNeed WithSlack(Nutrient nutrient, AreaDensity amount, Ratio slack)
    {
        double grams = Guard.Positive(Boundary.GramsPerSquareMetre(amount), "g/m²", nameof(amount));
        double over = Guard.Within(Boundary.Fraction(slack) * 100, 0, 1000, "%", nameof(slack)) / 100;
        return new NutrientNeed(nutrient, AreaDensity.FromGramsPerSquareMeter(grams), AreaDensity.FromGramsPerSquareMeter(grams * (1 + over)));
    }

    /// <summary>The need in invariant culture.</summary>
    /// <returns>For instance <c>Nitrogen: 8 to 10 g/m²</c>.</returns>
    public override string ToString() => $"{Nutrient}: {Guard.Number(LeastGramsPerSquareMetre)} to {Guard.Number(MostGramsPerSquareMetre)} g/m²";
}
