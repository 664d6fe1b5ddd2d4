using HortiCalc.Evidence;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Soil;

/// <summary>A product that feeds: its nutrients as elements, and how much of its nitrogen plants get in the season.</summary>
/// <remarks>Immutable; equal when all members are equal. The label of the product at hand goes before any table.</remarks>
/// <example><code>
/// Fertilizer meal = Fertilizer.OfGrade("blood meal", MassFraction.FromPercent(12), MassFraction.Zero, MassFraction.Zero);
/// AreaDensity product = meal.For(Nutrient.Nitrogen, AreaDensity.FromGramsPerSquareMeter(6));   // 50 g/m²
/// Console.WriteLine(product);
/// </code></example>
public sealed record Fertilizer
{
    /// <summary>Describes a product.</summary>
    /// <param name="name">Its name.</param>
    /// <param name="contents">Its nutrients as elements, each once.</param>
    /// <param name="source">Where the figures come from, or <see langword="null"/> for the product's label.</param>
    /// <param name="nitrogenReleased">The share of its nitrogen that plants get in the season; above 0 and up to 100 %. <see langword="null"/> where none is stated: all is counted.</param>
    /// <param name="carbonToNitrogen">Its carbon by mass for one of nitrogen; above zero. <see langword="null"/> where it is not known or there is none.</param>
    /// <exception cref="ArgumentException">The name is empty, there is no nutrient, one is given twice, or together they are more than the product.</exception>
    /// <exception cref="ArgumentNullException">The nutrients are <see langword="null"/>.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The share of nitrogen, or the ratio, lies outside what is said above.</exception>
    public Fertilizer(string name, IReadOnlyList<NutrientContent> contents, Source? source = null, Ratio? nitrogenReleased = null, double? carbonToNitrogen = null)
    {
        Name = Guard.NotBlank(name);
        Contents = ValueList<NutrientContent>.Of(Guard.NotNull(contents));
        if (Contents.Count == 0)
            throw new ArgumentException("contents was empty; allowed: one nutrient or more.", nameof(contents));
        if (Contents.Select(content => content.Nutrient).Distinct().Count() != Contents.Count)
            throw new ArgumentException("contents holds a nutrient twice; allowed: each once.", nameof(contents));
        double percent = Contents.Sum(content => Boundary.MassFraction(content.Share)) * 100;
        if (percent > 100 + 1e-9)
            throw new ArgumentException($"contents come to {Guard.Number(percent)} %; allowed: up to 100 % of the product.", nameof(contents));
        Source = source ?? Label;
        if (carbonToNitrogen is { } ratio)
            CarbonToNitrogen = Guard.Positive(ratio, "", nameof(carbonToNitrogen));
        if (nitrogenReleased is { } share)
        {
            double released = Boundary.Fraction(share) * 100;
            if (!(released > 0 && released <= 100))
                throw Guard.Refused(nameof(nitrogenReleased), released, "%", "above 0 and up to 100 %");
            NitrogenReleased = HouseUnits.Normalise(share);
        }
    }

    /// <summary>Its name.</summary>
    public string Name { get; }

    /// <summary>Its nutrients as elements.</summary>
    public IReadOnlyList<NutrientContent> Contents { get; }

    /// <summary>Where the figures come from.</summary>
    public Source Source { get; }

    /// <summary>The share of its nitrogen that plants get in the season; <see langword="null"/> where none is stated, and all is counted.</summary>
    public Ratio? NitrogenReleased { get; }

    /// <summary>Its carbon by mass for one of nitrogen; <see langword="null"/> where it is not known or there is none. Far above 20 it ties nitrogen up at first.</summary>
    public double? CarbonToNitrogen { get; }

    private static Source Label { get; } = new("product-label", "The label of the product", "its maker", null, null, SourceKind.Given);

    /// <summary>A product by its grade, N-P₂O₅-K₂O as labels count, or N-P-K where the label says so.</summary>
    /// <param name="name">Its name.</param>
    /// <param name="nitrogen">Nitrogen; zero where there is none.</param>
    /// <param name="phosphate">P₂O₅; zero where there is none.</param>
    /// <param name="potash">K₂O; zero where there is none.</param>
    /// <param name="source">Where the figures come from, or <see langword="null"/> for the product's label.</param>
    /// <param name="nitrogenReleased">The share of its nitrogen that plants get in the season; all is counted where <see langword="null"/>.</param>
    /// <returns>The product, with phosphorus and potassium by molar mass.</returns>
    /// <exception cref="ArgumentException">As in the constructor.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A share is negative, or as in the constructor.</exception>
    public static Fertilizer OfGrade(
        string name, MassFraction nitrogen, MassFraction phosphate, MassFraction potash, Source? source = null, Ratio? nitrogenReleased = null)
    {
        Guard.NotNegative(Boundary.MassFraction(nitrogen) * 100, "%", nameof(nitrogen));
        Guard.NotNegative(Boundary.MassFraction(phosphate) * 100, "%", nameof(phosphate));
        Guard.NotNegative(Boundary.MassFraction(potash) * 100, "%", nameof(potash));
        (Nutrient Nutrient, MassFraction Share)[] parts =
        [
            (Nutrient.Nitrogen, nitrogen),
            (Nutrient.Phosphorus, OxideFactors.MolarMass.ToElement(Oxide.Phosphate, phosphate)),
            (Nutrient.Potassium, OxideFactors.MolarMass.ToElement(Oxide.Potash, potash)),
        ];
        return new Fertilizer(
            name,
            [.. parts.Where(part => Boundary.MassFraction(part.Share) > 0).Select(part => new NutrientContent(part.Nutrient, part.Share))],
            source,
            nitrogenReleased);
    }

    /// <summary>The share of a nutrient that plants get in the season: of nitrogen the part that is released, of others all.</summary>
    /// <param name="nutrient">The nutrient.</param>
    /// <returns>The share by mass of product; zero where the product has none.</returns>
    /// <exception cref="ArgumentOutOfRangeException">There is no such nutrient.</exception>
    public MassFraction Available(Nutrient nutrient) => MassFraction.FromPercent(AvailableFraction(Guard.Defined(nutrient)) * 100);

    /// <summary>The product that gives an amount of a nutrient in the season.</summary>
    /// <param name="nutrient">The nutrient; the product must have it.</param>
    /// <param name="amount">The amount per area, as the element; zero or more.</param>
    /// <returns>The product per area.</returns>
    /// <exception cref="ArgumentOutOfRangeException">There is no such nutrient, the product has none of it, or the amount is negative.</exception>
    public AreaDensity For(Nutrient nutrient, AreaDensity amount)
    {
        double available = Held(nutrient);
        return AreaDensity.FromGramsPerSquareMeter(
            Guard.NotNegative(Boundary.GramsPerSquareMetre(amount), "g/m²", nameof(amount)) / available);
    }

    /// <summary>The product that gives an amount of a nutrient in the season.</summary>
    /// <param name="nutrient">The nutrient; the product must have it.</param>
    /// <param name="amount">The amount, as the element; zero or more.</param>
    /// <returns>The product.</returns>
    /// <exception cref="ArgumentOutOfRangeException">There is no such nutrient, the product has none of it, or the amount is negative.</exception>
    public Mass For(Nutrient nutrient, Mass amount)
    {
        double available = Held(nutrient);
        return Mass.FromKilograms(Guard.NotNegative(Boundary.Kilograms(amount), "kg", nameof(amount)) / available);
    }

    /// <summary>What an amount of the product gives of a nutrient in the season.</summary>
    /// <param name="nutrient">The nutrient.</param>
    /// <param name="product">The product per area; zero or more.</param>
    /// <returns>The nutrient per area; zero where the product has none.</returns>
    /// <exception cref="ArgumentOutOfRangeException">There is no such nutrient, or the amount is negative.</exception>
    public AreaDensity Gives(Nutrient nutrient, AreaDensity product) => AreaDensity.FromGramsPerSquareMeter(
        Guard.NotNegative(Boundary.GramsPerSquareMetre(product), "g/m²", nameof(product)) * AvailableFraction(Guard.Defined(nutrient)));

    /// <summary>The name and the nutrients, in invariant culture.</summary>
    /// <returns>For instance <c>urea: Nitrogen 46 %</c>.</returns>
    public override string ToString() => $"{Name}: {string.Join(", ", Contents)}";

    internal double AvailableFraction(Nutrient nutrient)
    {
        double share = Contents.Where(content => content.Nutrient == nutrient).Sum(content => Boundary.MassFraction(content.Share));
        return nutrient == Nutrient.Nitrogen ? share * Boundary.Fraction(NitrogenReleased ?? Ratio.FromPercent(100)) : share;
    }

    private double Held(Nutrient nutrient) => AvailableFraction(Guard.Defined(nutrient)) is > 0 and double share
        ? share
        : throw new ArgumentOutOfRangeException(
            nameof(nutrient), $"nutrient was {nutrient}; allowed: {string.Join(", ", Contents.Select(content => content.Nutrient))}, which {Name} holds.");
}
