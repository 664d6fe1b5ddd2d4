using HortiCalc.Numerics;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Mixes;

/// <summary>Nutrient solutions from salts: the ions that amounts come to, and the amounts for the ions that are wanted.</summary>
/// <remarks>
/// All of it is arithmetic on molar masses. Water brings ions of its own and they count: lime water may hold all the calcium a crop needs. Salts
/// bear no charge as a whole, so that what they come to is always balanced; where the target is not, a residual remains and is stated.
/// </remarks>
public static class NutrientSolution
{
    // An ion that nobody asked for weighs as though this share of the target's charge were its scale.
    private const double ShareOfUnwanted = 1;

    /// <summary>The ions that amounts of salts come to.</summary>
    /// <param name="amounts">The salts.</param>
    /// <param name="water">What the water holds already, or <see langword="null"/> for pure water.</param>
    /// <returns>
    /// The ions of salts and water. Acid and bicarbonate cancel: together they leave as carbon dioxide.
    /// </returns>
    /// <exception cref="ArgumentNullException">The amounts are missing.</exception>
    /// <example><code>
    /// SolutionIons ions = NutrientSolution.IonsOf(
    /// [
    ///     new SaltAmount(NutrientSalts.GreenhouseCalciumNitrate, MassConcentration.FromGramsPerLiter(0.8)),
    ///     new SaltAmount(NutrientSalts.MagnesiumSulfate, MassConcentration.FromGramsPerLiter(0.4)),
    /// ]);
    /// double calcium = ions.Element(NutrientElement.Calcium).MilligramsPerLiter;   // 148
    /// </code></example>
    public static SolutionIons IonsOf(IReadOnlyList<SaltAmount> amounts, SolutionIons? water = null)
    {
        Guard.NotNull(amounts);
        SolutionIons own = water ?? SolutionIons.None;
        return SolutionIons.FromMoles(ion =>
            own.MolesPerLitre(ion) + amounts.Sum(amount => amount.MilligramsPerLitre / 1000 * amount.Salt.MolesPerGram(ion))).Neutralised();
    }

    /// <summary>The amounts of chosen salts that come nearest to the ions wanted.</summary>
    /// <param name="target">The ions wanted in the finished solution.</param>
    /// <param name="offers">The salts at hand, each once.</param>
    /// <param name="water">What the water holds already, or <see langword="null"/> for pure water.</param>
    /// <returns>
    /// The plan: no amount below zero, with the residual of every ion. Nearest means the least sum of squares of the relative differences, so that
    /// trace elements count as much as the others; an ion that is not wanted counts by its share of the target's charge.
    /// </returns>
    /// <remarks>
    /// Method: least squares without negatives, C. L. Lawson and R. J. Hanson, Solving Least Squares Problems, Prentice-Hall, 1974. Bicarbonate
    /// of the water counts as wanted only where the target names it: offer an acid to take it away.
    /// </remarks>
    /// <exception cref="ArgumentException">There is no offer, the target is empty, or two offers are of the same salt.</exception>
    /// <example><code>
    /// SolutionIons wanted = NutrientFormulas.HoaglandOne.Macronutrients;
    /// NutrientPlan plan = NutrientSolution.Plan(
    ///     wanted,
    ///     [
    ///         new SaltOffer(NutrientSalts.CalciumNitrate), new SaltOffer(NutrientSalts.PotassiumNitrate),
    ///         new SaltOffer(NutrientSalts.MonopotassiumPhosphate), new SaltOffer(NutrientSalts.MagnesiumSulfate),
    ///     ]);
    /// Console.WriteLine(plan);   // calcium nitrate tetrahydrate 1.18 g/L, potassium nitrate 506 mg/L, ...
    /// </code></example>
    public static NutrientPlan Plan(SolutionIons target, IReadOnlyList<SaltOffer> offers, SolutionIons? water = null)
    {
        PlanRows rows = new(target, offers, water ?? SolutionIons.None, ShareOfUnwanted);
        return rows.ToPlan(NonNegativeLeastSquares.Solve(rows.Scaled(), rows.ScaledMissing()));
    }

    /// <summary>The cheapest amounts that keep every wanted ion within a tolerance.</summary>
    /// <param name="target">The ions wanted in the finished solution.</param>
    /// <param name="offers">The salts at hand, each once and each with a price.</param>
    /// <param name="tolerance">How far each wanted ion may lie from the target, of the target; from 0 to 100 %.</param>
    /// <param name="water">What the water holds already, or <see langword="null"/> for pure water.</param>
    /// <returns>
    /// The plan, or <see langword="null"/> where no amounts keep within the tolerance. Ions that are not wanted are free, apart from acid and
    /// bicarbonate: no more acid goes in than the bicarbonate takes.
    /// </returns>
    /// <remarks>Method: the simplex method, G. B. Dantzig, Linear Programming and Extensions, Princeton, 1963.</remarks>
    /// <exception cref="ArgumentException">
    /// There is no offer, the target is empty, two offers are of the same salt, or an offer bears no price.
    /// </exception>
    /// <exception cref="ArgumentOutOfRangeException">The tolerance is outside 0 to 100 %.</exception>
    public static NutrientPlan? PlanAtLeastCost(SolutionIons target, IReadOnlyList<SaltOffer> offers, Ratio tolerance, SolutionIons? water = null)
    {
        double share = Guard.Within(Boundary.Fraction(tolerance) * 100, 0, 100, "%", nameof(tolerance)) / 100;
        PlanRows rows = new(target, offers, water ?? SolutionIons.None, ShareOfUnwanted);
        if (offers.FirstOrDefault(offer => offer.PricePerKilogram is null) is SaltOffer free)
            throw new ArgumentException($"{nameof(offers)} has no price for {free.Salt.Name}; allowed: offers with a price.", nameof(offers));
        (double[] low, double[] high) = rows.ScaledLimits(share);
        double[]? amounts = LinearProgramme.Minimise([.. offers.Select(offer => (double)offer.PricePerKilogram!.Value)], rows.Scaled(), low, high);
        return amounts is null ? null : rows.ToPlan(amounts);
    }
}
