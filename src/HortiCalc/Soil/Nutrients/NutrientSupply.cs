using System.Text.Json.Serialization;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Soil;

/// <summary>What a plan gives of one nutrient, beside the need.</summary>
/// <remarks>Immutable; equal when all members are equal.</remarks>
public sealed record NutrientSupply
{
    /// <summary>Holds what a plan gives.</summary>
    /// <param name="need">The need.</param>
    /// <param name="given">What the products give in the season, as the element; zero or more.</param>
    /// <exception cref="ArgumentNullException">The need is <see langword="null"/>.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The amount is negative.</exception>
    public NutrientSupply(NutrientNeed need, AreaDensity given)
    {
        Need = Guard.NotNull(need);
        Guard.NotNegative(Boundary.GramsPerSquareMetre(given), "g/m²", nameof(given));
        Given = HouseUnits.Normalise(given);
    }

    /// <summary>The need.</summary>
    public NutrientNeed Need { get; }

    /// <summary>What the products give in the season, as the element.</summary>
    public AreaDensity Given { get; }

    /// <summary>What is given above the least that is needed.</summary>
    [JsonIgnore]
    public AreaDensity Excess => AreaDensity.FromGramsPerSquareMeter(Math.Max(0, Boundary.GramsPerSquareMetre(Given) - Need.LeastGramsPerSquareMetre));

    /// <summary>What may still be given before the most is reached.</summary>
    [JsonIgnore]
    public AreaDensity Room => AreaDensity.FromGramsPerSquareMeter(Math.Max(0, Need.MostGramsPerSquareMetre - Boundary.GramsPerSquareMetre(Given)));

    /// <summary>What is missing to the least that is needed.</summary>
    [JsonIgnore]
    public AreaDensity Missing => AreaDensity.FromGramsPerSquareMeter(Math.Max(0, Need.LeastGramsPerSquareMetre - Boundary.GramsPerSquareMetre(Given)));

    /// <summary>The need and what is given, in invariant culture.</summary>
    /// <returns>For instance <c>Nitrogen: 8 to 10 g/m², given 8.4 g/m²</c>.</returns>
    public override string ToString() => $"{Need}, given {Guard.Number(Math.Round(Boundary.GramsPerSquareMetre(Given), 3, MidpointRounding.AwayFromZero))} g/m²";
}
