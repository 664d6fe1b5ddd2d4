using HortiCalc.Evidence;
using HortiCalc.Numerics;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Soil;

/// <summary>Chooses products, and how much of each, for what a soil needs.</summary>
/// <example><code>
/// NutrientNeed[] needs =
/// [
///     NutrientNeed.WithSlack(Nutrient.Nitrogen, AreaDensity.FromGramsPerSquareMeter(10), Ratio.FromPercent(5)),
///     NutrientNeed.WithSlack(Nutrient.Phosphorus, AreaDensity.FromGramsPerSquareMeter(2), Ratio.FromPercent(50)),
///     NutrientNeed.WithSlack(Nutrient.Potassium, AreaDensity.FromGramsPerSquareMeter(8), Ratio.FromPercent(20)),
///     new(Nutrient.Chloride, AreaDensity.Zero, AreaDensity.FromGramsPerSquareMeter(3)),
/// ];
/// FertilizerOffer[] offers =
/// [
///     new(Fertilizers.Named("Urea"), Mass.FromKilograms(25), 24m),
///     new(Fertilizers.Named("TSP"), Mass.FromKilograms(25), 30m),
///     new(Fertilizers.Named("Potassium chloride"), Mass.FromKilograms(25), 22m),
///     new(Fertilizers.Named("Potassium sulphate"), Mass.FromKilograms(25), 35m),
/// ];
/// FertilizerPlan plan = Fertilizing.Plan(needs, offers, FertilizerGoal.LeastCost);
/// Console.WriteLine(plan);
/// Console.WriteLine(plan.Cost(Area.FromSquareMeters(200)));
/// </code></example>
public static class Fertilizing
{
    /// <summary>How heavily a limit weighs against a need, so that least squares keep it to the eighth digit before it is cut to it.</summary>
    private const double LimitWeight = 1e4;

    private static readonly Nutrient[] Micronutrients =
        [Nutrient.Boron, Nutrient.Copper, Nutrient.Iron, Nutrient.Manganese, Nutrient.Molybdenum, Nutrient.Zinc];

    /// <summary>The amounts of the products offered that make the goal smallest, none below zero and no nutrient above its most.</summary>
    /// <param name="needs">What the soil needs, each nutrient once.</param>
    /// <param name="offers">The products to choose from.</param>
    /// <param name="goal">What to make smallest.</param>
    /// <returns>The plan.</returns>
    /// <exception cref="ArgumentNullException">A list is <see langword="null"/>.</exception>
    /// <exception cref="ArgumentOutOfRangeException">There is no such goal.</exception>
    /// <exception cref="ArgumentException">
    /// A list is empty, a nutrient is asked for twice, a product has no price for <see cref="FertilizerGoal.LeastCost"/>, or no amounts meet every need
    /// within its bounds: <see cref="FertilizerGoal.Closest"/> then shows the nearest.
    /// </exception>
    public static FertilizerPlan Plan(IReadOnlyList<NutrientNeed> needs, IReadOnlyList<FertilizerOffer> offers, FertilizerGoal goal)
    {
        (ValueList<NutrientNeed> asked, ValueList<FertilizerOffer> sold) = Checked(needs, offers);
        Guard.Defined(goal);
        if (goal == FertilizerGoal.LeastCost && sold.FirstOrDefault(offer => offer.PricePerKilogram is null) is { } unpriced)
            throw new ArgumentException($"offers has no price of {unpriced.Product.Name}; allowed: a price for every product.", nameof(offers));
        double[,] rows = Rows(asked, sold);
        double[] grams = goal == FertilizerGoal.Closest
            ? Nearest(asked, rows)
            : Programme(asked, sold, rows, goal) ?? throw new ArgumentException(
                $"needs are not met within their bounds by any amounts of {string.Join(", ", sold.Select(offer => offer.Product.Name))}; "
                + "allowed: needs that these products can meet, or wider bounds. The closest mix shows what is missing.",
                nameof(needs));
        return Result(asked, sold, goal, grams);
    }

    /// <summary>Whether any amounts of the products meet every need within its bounds.</summary>
    /// <param name="needs">What the soil needs, each nutrient once.</param>
    /// <param name="offers">The products to choose from.</param>
    /// <returns><see langword="true"/> where <see cref="FertilizerGoal.LeastExcess"/> gives a plan.</returns>
    /// <exception cref="ArgumentNullException">A list is <see langword="null"/>.</exception>
    /// <exception cref="ArgumentException">A list is empty, or a nutrient is asked for twice.</exception>
    public static bool CanMeet(IReadOnlyList<NutrientNeed> needs, IReadOnlyList<FertilizerOffer> offers)
    {
        (ValueList<NutrientNeed> asked, ValueList<FertilizerOffer> sold) = Checked(needs, offers);
        return Programme(asked, sold, Rows(asked, sold), FertilizerGoal.LeastExcess) is not null;
    }

    private static (ValueList<NutrientNeed> Needs, ValueList<FertilizerOffer> Offers) Checked(
        IReadOnlyList<NutrientNeed> needs, IReadOnlyList<FertilizerOffer> offers)
    {
        ValueList<NutrientNeed> asked = ValueList<NutrientNeed>.Of(Guard.NotNull(needs));
        ValueList<FertilizerOffer> sold = ValueList<FertilizerOffer>.Of(Guard.NotNull(offers));
        if (asked.Count == 0)
            throw new ArgumentException("needs was empty; allowed: one need or more.", nameof(needs));
        if (sold.Count == 0)
            throw new ArgumentException("offers was empty; allowed: one product or more.", nameof(offers));
        if (asked.Select(need => need.Nutrient).Distinct().Count() != asked.Count)
            throw new ArgumentException("needs holds a nutrient twice; allowed: each once.", nameof(needs));
        return (asked, sold);
    }

    /// <summary>What one gram per square metre of each product gives of each need, in proportion to the need.</summary>
    private static double[,] Rows(ValueList<NutrientNeed> needs, ValueList<FertilizerOffer> offers)
    {
        double[,] rows = new double[needs.Count, offers.Count];
        for (int i = 0; i < needs.Count; i++)
        {
            for (int j = 0; j < offers.Count; j++)
                rows[i, j] = offers[j].Product.AvailableFraction(needs[i].Nutrient) / needs[i].ScaleGramsPerSquareMetre;
        }

        return rows;
    }

    private static double[]? Programme(ValueList<NutrientNeed> needs, ValueList<FertilizerOffer> offers, double[,] rows, FertilizerGoal goal)
    {
        double[] cost = [.. Enumerable.Range(0, offers.Count).Select(j =>
            goal == FertilizerGoal.LeastCost ? offers[j].PricePerKilogram!.Value : Enumerable.Range(0, needs.Count).Sum(i => rows[i, j]))];

        // A product that gives nothing asked for costs nothing by its excess; it must still not be taken.
        double largest = cost.Max();
        if (largest > 0)
            cost = [.. cost.Select(each => each / largest)];
        return LinearProgramme.Minimise(
            cost,
            rows,
            [.. needs.Select(need => need.LeastGramsPerSquareMetre / need.ScaleGramsPerSquareMetre)],
            [.. needs.Select(need => need.MostGramsPerSquareMetre / need.ScaleGramsPerSquareMetre)]);
    }

    /// <summary>
    /// Least squares to the needs, with a heavy row for each limit: what is given and a rest, itself not below zero, come to the limit (after
    /// R. J. Hanson and K. H. Haskell, Algorithm 587, 1982). The hair that weighting leaves above a limit is then cut off.
    /// </summary>
    private static double[] Nearest(ValueList<NutrientNeed> needs, double[,] rows)
    {
        int products = rows.GetLength(1);
        double[,] all = new double[2 * needs.Count, products + needs.Count];
        double[] target = new double[2 * needs.Count];
        for (int i = 0; i < needs.Count; i++)
        {
            double scale = needs[i].ScaleGramsPerSquareMetre;
            target[i] = needs[i].LeastGramsPerSquareMetre / scale;
            target[needs.Count + i] = LimitWeight * needs[i].MostGramsPerSquareMetre / scale;
            for (int j = 0; j < products; j++)
            {
                all[i, j] = rows[i, j];
                all[needs.Count + i, j] = LimitWeight * rows[i, j];
            }

            all[needs.Count + i, products + i] = LimitWeight;
        }

        double[] grams = NonNegativeLeastSquares.Solve(all, target)[..products];
        double share = 1;
        for (int i = 0; i < needs.Count; i++)
        {
            double given = Enumerable.Range(0, products).Sum(j => rows[i, j] * grams[j]);
            double limit = needs[i].MostGramsPerSquareMetre / needs[i].ScaleGramsPerSquareMetre;
            if (given > limit)
                share = Math.Min(share, limit / given);
        }

        return [.. grams.Select(each => each * share)];
    }

    private static FertilizerPlan Result(
        ValueList<NutrientNeed> needs, ValueList<FertilizerOffer> offers, FertilizerGoal goal, double[] grams)
    {
        FertilizerLine[] lines = [.. offers.Select((offer, j) => new FertilizerLine(offer, AreaDensity.FromGramsPerSquareMeter(grams[j])))];
        NutrientSupply[] supplies =
        [
            .. needs.Select(need => new NutrientSupply(
                need,
                AreaDensity.FromGramsPerSquareMeter(lines.Select((line, j) => line.Offer.Product.AvailableFraction(need.Nutrient) * grams[j]).Sum()))),
        ];
        IEnumerable<Fertilizer> used = lines.Where((_, j) => grams[j] > 0).Select(line => line.Offer.Product);
        List<Caution> cautions = [NutrientCautions.Laboratory, NutrientCautions.Burn];
        if (used.Any(product => product.AvailableFraction(Nutrient.Nitrogen) > 0))
            cautions.Add(NutrientCautions.Leaching);
        if (used.Any(product => product.AvailableFraction(Nutrient.Chloride) > 0))
            cautions.Add(NutrientCautions.Chloride);
        if (used.Any(product => product.Contents.Any(content => Micronutrients.Contains(content.Nutrient))))
            cautions.Add(NutrientCautions.Micronutrient);
        if (used.Any(product => product.CarbonToNitrogen > OrganicNitrogen.TiesUpAbove))
            cautions.Add(NutrientCautions.TiesUp);
        if (used.Any(product => product.NitrogenReleased is not null || product.CarbonToNitrogen is not null))
            cautions.Add(NutrientCautions.Convention);
        if (supplies.Any(supply => Boundary.GramsPerSquareMetre(supply.Missing) > 1e-6 * supply.Need.ScaleGramsPerSquareMetre))
            cautions.Add(NutrientCautions.Shortfall);
        return new FertilizerPlan(goal, lines, supplies, cautions);
    }
}
