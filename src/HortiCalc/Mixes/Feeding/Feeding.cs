using HortiCalc.Evidence;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Mixes;

/// <summary>
/// Feeding with a soluble fertiliser of known grade: what a rate comes to, what rate a strength needs, the tank of an injector, and the
/// conductivity that a meter should show.
/// </summary>
/// <remarks>
/// Exact arithmetic, apart from conductivity. "ppm" of the trade is milligrams per litre, and of nitrogen unless another element is named. Bag
/// charts multiply 13.5 or 75 where exact arithmetic gives 13.35 or 74.89, so that they lie up to 1.1 % off.
/// </remarks>
public static class Feeding
{
    /// <summary>What a rate of a product comes to.</summary>
    /// <param name="grade">The grade of the product.</param>
    /// <param name="rate">The mass of the product per volume of feed; 0 or more.</param>
    /// <returns>Nitrogen, phosphorus and potassium of the feed, with the oxides beside the elements.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The rate is negative.</exception>
    /// <example><code>
    /// FeedStrength feed = Feeding.StrengthOf(FeedGrade.Parse("20-10-20"), MassConcentration.FromGramsPerLiter(1));
    /// double nitrogen = feed.Nitrogen.MilligramsPerLiter;       // 200
    /// double phosphorus = feed.Phosphorus.MilligramsPerLiter;   // 43.6
    /// </code></example>
    public static FeedStrength StrengthOf(FeedGrade grade, MassConcentration rate)
    {
        Guard.NotNull(grade);
        double milligramsPerLitre = Guard.NotNegative(Boundary.MilligramsPerLitre(rate), "mg/L", nameof(rate));
        return new FeedStrength(
            rate,
            Of(NutrientElement.Nitrogen),
            Of(NutrientElement.Phosphorus),
            Of(NutrientElement.Potassium));

        MassConcentration Of(NutrientElement element) => MassConcentration.FromMilligramsPerLiter(milligramsPerLitre * grade.FractionOf(element));
    }

    /// <summary>The rate of a product for a strength of one element.</summary>
    /// <param name="grade">The grade of the product; it must hold the element.</param>
    /// <param name="element">Nitrogen, phosphorus or potassium; the elements, not the oxides.</param>
    /// <param name="wanted">The element per volume of feed; 0 or more.</param>
    /// <returns>The mass of the product per volume of feed.</returns>
    /// <exception cref="ArgumentException">A grade does not state the element, or the product holds none of it.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The strength is negative.</exception>
    /// <example><code>
    /// MassConcentration rate = Feeding.RateFor(
    ///     FeedGrade.Parse("15-5-15"), NutrientElement.Nitrogen, MassConcentration.FromMilligramsPerLiter(150));   // 1 g/L
    /// </code></example>
    public static MassConcentration RateFor(FeedGrade grade, NutrientElement element, MassConcentration wanted)
    {
        Guard.NotNull(grade);
        double milligramsPerLitre = Guard.NotNegative(Boundary.MilligramsPerLitre(wanted), "mg/L", nameof(wanted));
        double fraction = grade.FractionOf(Guard.Defined(element));
        return fraction > 0
            ? MassConcentration.FromMilligramsPerLiter(milligramsPerLitre / fraction)
            : throw new ArgumentException($"{nameof(grade)} {grade} holds 0 % of {element}; allowed: a product that holds it.", nameof(grade));
    }

    /// <summary>The tank of an injector, for a strength of one element.</summary>
    /// <param name="grade">The grade of the product; it must hold the element.</param>
    /// <param name="element">Nitrogen, phosphorus or potassium; the elements, not the oxides.</param>
    /// <param name="wanted">The element per volume of feed; 0 or more.</param>
    /// <param name="injector">
    /// How much the injector dilutes: one part in N of the feed, <see cref="MixRatio.OneIn"/>, as makers and extension services mean 1:N.
    /// </param>
    /// <param name="stock">The volume of the tank; more than 0.</param>
    /// <param name="solubility">How much of the product a litre of its solution holds, or <see langword="null"/> where it is not known.</param>
    /// <returns>What to weigh, and whether it dissolves.</returns>
    /// <exception cref="ArgumentException">A grade does not state the element, or the product holds none of it.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A number is outside what is allowed.</exception>
    /// <example><code>
    /// InjectorStock tank = Feeding.Stock(
    ///     FeedGrade.Parse("15-5-15"), NutrientElement.Nitrogen, MassConcentration.FromMilligramsPerLiter(200),
    ///     MixRatio.OneIn(100), Volume.FromUsGallons(5));
    /// double ounces = tank.Product.Ounces;   // 89
    /// </code></example>
    public static InjectorStock Stock(
        FeedGrade grade, NutrientElement element, MassConcentration wanted, MixRatio injector, Volume stock, MassConcentration? solubility = null)
    {
        MassConcentration rate = RateFor(grade, element, wanted);
        double litres = Guard.Positive(Boundary.Litres(stock), "L", nameof(stock));
        Mass product = Mass.FromKilograms(Boundary.MilligramsPerLitre(rate) * injector.Factor * litres / 1_000_000);
        return new InjectorStock(product, stock, injector, StrengthOf(grade, rate), solubility);
    }

    /// <summary>What a tank that is there feeds.</summary>
    /// <param name="grade">The grade of the product.</param>
    /// <param name="product">The mass of the product in the tank; 0 or more.</param>
    /// <param name="stock">The volume of the tank; more than 0.</param>
    /// <param name="injector">How much the injector dilutes.</param>
    /// <returns>The feed.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A number is outside what is allowed.</exception>
    public static FeedStrength StrengthFromStock(FeedGrade grade, Mass product, Volume stock, MixRatio injector)
    {
        double kilograms = Guard.NotNegative(Boundary.Kilograms(product), "kg", nameof(product));
        double litres = Guard.Positive(Boundary.Litres(stock), "L", nameof(stock));
        return StrengthOf(grade, MassConcentration.FromMilligramsPerLiter(kilograms * 1_000_000 / litres / injector.Factor));
    }

    /// <summary>The most an injector may dilute before a product no longer dissolves in its tank.</summary>
    /// <param name="rate">The mass of the product per volume of feed; more than 0.</param>
    /// <param name="solubility">How much of the product a litre of its solution holds; at least the rate.</param>
    /// <returns>The ratio of a saturated tank; stay well below it.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The rate is not above 0, or the solubility is below it.</exception>
    public static MixRatio StrongestInjector(MassConcentration rate, MassConcentration solubility)
    {
        double milligramsPerLitre = Guard.Positive(Boundary.MilligramsPerLitre(rate), "mg/L", nameof(rate));
        double most = Guard.AtLeast(Boundary.MilligramsPerLitre(solubility), milligramsPerLitre, "mg/L", nameof(solubility));
        return MixRatio.OneIn(Math.Max(1, most / milligramsPerLitre));
    }

    /// <summary>The conductivity that a meter should show, by the figure on the product's label.</summary>
    /// <param name="label">What the label prints: a conductivity at a strength of nitrogen.</param>
    /// <param name="nitrogen">The nitrogen of the feed; 0 or more.</param>
    /// <param name="water">The conductivity of the water itself; 0 or more.</param>
    /// <returns>The label's figure in proportion to the nitrogen, and the water's own added, as charts do.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A number is negative.</exception>
    /// <example><code>
    /// FeedConductivity label = new(MassConcentration.FromMilligramsPerLiter(100), ElectricConductivity.FromMillisiemensPerCentimeter(0.74));
    /// Estimate&lt;ElectricConductivity&gt; reading = Feeding.ConductivityOf(
    ///     label, MassConcentration.FromMilligramsPerLiter(200), ElectricConductivity.FromMillisiemensPerCentimeter(0.3));   // 1.78 mS/cm
    /// </code></example>
    public static Estimate<ElectricConductivity> ConductivityOf(FeedConductivity label, MassConcentration nitrogen, ElectricConductivity water)
    {
        Guard.NotNull(label);
        double milligramsPerLitre = Guard.NotNegative(Boundary.MilligramsPerLitre(nitrogen), "mg/L", nameof(nitrogen));
        double own = Guard.NotNegative(Boundary.DecisiemensPerMetre(water), "mS/cm", nameof(water));
        return new Estimate<ElectricConductivity>(
            ElectricConductivity.FromMillisiemensPerCentimeter(own + milligramsPerLitre * label.MillisiemensPerMilligram),
            FeedConductivity.Method,
            cautions: [FeedingCautions.ConductivityOfLabel]);
    }

    /// <summary>The nitrogen that a reading of the meter stands for, by the figure on the product's label.</summary>
    /// <param name="label">What the label prints: a conductivity at a strength of nitrogen.</param>
    /// <param name="reading">The conductivity of the feed; at least that of the water.</param>
    /// <param name="water">The conductivity of the water itself; 0 or more.</param>
    /// <returns>The nitrogen of the feed.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The water's conductivity is negative, or the reading lies below it.</exception>
    public static Estimate<MassConcentration> NitrogenFromConductivity(FeedConductivity label, ElectricConductivity reading, ElectricConductivity water)
    {
        Guard.NotNull(label);
        double own = Guard.NotNegative(Boundary.DecisiemensPerMetre(water), "mS/cm", nameof(water));
        double shown = Guard.AtLeast(Boundary.DecisiemensPerMetre(reading), own, "mS/cm", nameof(reading));
        return new Estimate<MassConcentration>(
            MassConcentration.FromMilligramsPerLiter((shown - own) / label.MillisiemensPerMilligram),
            FeedConductivity.Method,
            cautions: [FeedingCautions.ConductivityOfLabel]);
    }
}
