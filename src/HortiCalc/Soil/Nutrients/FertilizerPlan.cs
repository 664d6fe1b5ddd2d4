using System.Text.Json.Serialization;
using HortiCalc.Display;
using HortiCalc.Evidence;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Soil;

/// <summary>The products that meet a soil's needs, and what they give.</summary>
/// <remarks>Immutable; equal when all members are equal.</remarks>
[TypeFormatterSource(typeof(DisplayFormatters))]
public sealed record FertilizerPlan : IFormattable, IDisplayable
{
    /// <summary>Holds a plan.</summary>
    /// <param name="goal">What was made smallest.</param>
    /// <param name="lines">How much of each product, in the order they were offered; none of a product is a line of zero.</param>
    /// <param name="supplies">What they give of each nutrient that was asked for.</param>
    /// <param name="cautions">What to take care of.</param>
    /// <exception cref="ArgumentOutOfRangeException">There is no such goal.</exception>
    /// <exception cref="ArgumentNullException">A list is <see langword="null"/>.</exception>
    public FertilizerPlan(
        FertilizerGoal goal,
        IReadOnlyList<FertilizerLine> lines,
        IReadOnlyList<NutrientSupply> supplies,
        IReadOnlyList<Caution>? cautions = null)
    {
        Goal = Guard.Defined(goal);
        Lines = ValueList<FertilizerLine>.Of(Guard.NotNull(lines));
        Supplies = ValueList<NutrientSupply>.Of(Guard.NotNull(supplies));
        Cautions = ValueList<Caution>.Of(cautions);
    }

    /// <summary>What was made smallest.</summary>
    public FertilizerGoal Goal { get; }

    /// <summary>How much of each product, in the order they were offered.</summary>
    public IReadOnlyList<FertilizerLine> Lines { get; }

    /// <summary>What they give of each nutrient that was asked for.</summary>
    public IReadOnlyList<NutrientSupply> Supplies { get; }

    /// <summary>What to take care of.</summary>
    public IReadOnlyList<Caution> Cautions { get; }

    /// <summary>
    /// The nutrients that limit growth by this plan: those of which the least is given in proportion to the need. In a plan that meets every need they are
    /// met with nothing to spare, or with the least to spare; limits without a need do not count.
    /// </summary>
    [JsonIgnore]
    public IReadOnlyList<Nutrient> Limiting
    {
        get
        {
            (Nutrient Nutrient, double Share)[] met =
            [
                .. Supplies.Where(supply => supply.Need.LeastGramsPerSquareMetre > 0)
                    .Select(supply => (supply.Need.Nutrient, Boundary.GramsPerSquareMetre(supply.Given) / supply.Need.LeastGramsPerSquareMetre)),
            ];

            // A hair between two is rounding.
            return ValueList<Nutrient>.Of(met.Where(one => one.Share <= met.Min(other => other.Share) + 1e-9).Select(one => one.Nutrient).ToArray());
        }
    }

    /// <summary>The price of what is used on an area, parts of bags counted in proportion.</summary>
    /// <param name="area">The area; zero or more.</param>
    /// <returns>The price; <see langword="null"/> where a product that is used has none.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The area is negative.</exception>
    public decimal? Cost(Area area)
    {
        Guard.NotNegative(Boundary.SquareMetres(area), "m²", nameof(area));
        double sum = 0;
        foreach (FertilizerLine line in Lines)
        {
            double kilograms = Boundary.Kilograms(line.Over(area));
            if (kilograms == 0)
                continue;
            if (line.Offer.PricePerKilogram is not { } price)
                return null;
            sum += kilograms * price;
        }

        return (decimal)sum;
    }

    /// <summary>The plan in metric units and invariant culture.</summary>
    /// <returns>One line: the products with their rates, and the number of cautions.</returns>
    public override string ToString() => ToString(TextStyle.Default);

    /// <summary>The plan as one line of text.</summary>
    /// <param name="format"><c>M</c> or nothing for metric units, <c>U</c> for US customary ones.</param>
    /// <param name="formatProvider">The culture, or <see langword="null"/> for the invariant one.</param>
    /// <returns>The products with their rates, and the number of cautions.</returns>
    /// <exception cref="FormatException">The format is another one.</exception>
    public string ToString(string? format, IFormatProvider? formatProvider) => ToString(TextStyle.Parse(format, formatProvider));

    DisplayBlock IDisplayable.ToDisplay(TextStyle style) => new(ToString(style))
    {
        Rows =
        [
            .. Supplies.Select(supply => new DisplayRow(
                $"{supply.Need.Nutrient}",
                $"{QuantityText.Of(supply.Given, style)} of {QuantityText.Of(supply.Need.Least, style)} to {QuantityText.Of(supply.Need.Most, style)}")),
            .. Cautions.Select(caution => new DisplayRow(caution.LevelWord, caution.Sentence)),
        ],
    };

    private string ToString(TextStyle style)
    {
        IEnumerable<string> used = Lines.Where(line => Boundary.GramsPerSquareMetre(line.Rate) > 0)
            .Select(line => $"{line.Offer.Product.Name} {QuantityText.Of(line.Rate, style)}");
        return $"{(used.Any() ? string.Join(" + ", used) : "nothing")}; {QuantityText.Of(Cautions.Count, style)} cautions";
    }
}
