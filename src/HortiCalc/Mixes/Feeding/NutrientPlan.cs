using System.Text.Json.Serialization;
using HortiCalc.Display;
using HortiCalc.Evidence;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Mixes;

/// <summary>Amounts of salts for a nutrient solution, and how near they come to what was wanted.</summary>
/// <remarks>Immutable; equal by value. Everything but the three members it is made of follows from them.</remarks>
[TypeFormatterSource(typeof(DisplayFormatters))]
public sealed record NutrientPlan : IFormattable, IDisplayable
{
    /// <summary>Describes a plan.</summary>
    /// <param name="target">The ions wanted; one or more.</param>
    /// <param name="water">What the water holds.</param>
    /// <param name="amounts">The salts; those at zero were offered and are not needed.</param>
    /// <exception cref="ArgumentNullException">Something is missing.</exception>
    /// <exception cref="ArgumentException">The target names no ion.</exception>
    public NutrientPlan(SolutionIons target, SolutionIons water, IReadOnlyList<SaltAmount> amounts)
    {
        Target = Guard.NotNull(target);
        if (Target.Concentrations.Count == 0)
            throw new ArgumentException($"{nameof(target)} names no ion; allowed: one or more.", nameof(target));
        Water = Guard.NotNull(water);
        Amounts = ValueList<SaltAmount>.Of(Guard.NotNull(amounts));
        Ions = NutrientSolution.IonsOf(Amounts, Water);
    }

    /// <summary>The ions wanted.</summary>
    public SolutionIons Target { get; }

    /// <summary>What the water holds.</summary>
    public SolutionIons Water { get; }

    /// <summary>The salts; those at zero were offered and are not needed.</summary>
    public IReadOnlyList<SaltAmount> Amounts { get; }

    /// <summary>What the finished solution holds.</summary>
    [JsonIgnore]
    public SolutionIons Ions { get; }

    /// <summary>Every ion that is wanted or there, with what is reached of it.</summary>
    [JsonIgnore]
    public IReadOnlyList<IonResidual> Residuals => ValueList<IonResidual>.Of(
        IonFacts.All.Select(facts => facts.Ion)
            .Where(ion => Target.MolesPerLitre(ion) > 0 || Ions.MolesPerLitre(ion) > 0)
            .Select(ion => new IonResidual(ion, Target[ion], Ions[ion])));

    /// <summary>The greatest difference of a wanted ion from the target, of the target.</summary>
    [JsonIgnore]
    public Ratio GreatestDifference => Ratio.FromPercent(100 * Target.Concentrations
        .Max(ion => Math.Abs(Ions.MolesPerLitre(ion.Ion) - ion.MolesPerLitre) / ion.MolesPerLitre));

    /// <summary>What to take care of.</summary>
    [JsonIgnore]
    public IReadOnlyList<Caution> Cautions => ValueList<Caution>.Of(
    [
        .. Amounts.Any(amount => amount.MilligramsPerLitre > 0 && amount.Salt.Sets(SolutionIon.Hydrogen)) ? FeedingCautions.Acid : (Caution[])[],
        .. Math.Abs(Boundary.Fraction(Target.ChargeImbalance)) > 0.02 ? [FeedingCautions.TargetUnbalanced] : (Caution[])[],
        .. Boundary.Fraction(GreatestDifference) > 0.05 ? [FeedingCautions.NotReached] : (Caution[])[],
        FeedingCautions.LabelDecides,
        FeedingCautions.MeterFirst,
    ]);

    /// <summary>What the salts for a volume of solution cost.</summary>
    /// <param name="solution">The volume; 0 or more.</param>
    /// <returns>The cost in the currency of the prices, or <see langword="null"/> where a salt that is needed bears none.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The volume is negative.</exception>
    public decimal? CostFor(Volume solution)
    {
        decimal sum = 0;
        foreach (SaltAmount amount in Amounts)
        {
            double kilograms = Boundary.Kilograms(amount.For(solution));
            if (kilograms == 0)
                continue;
            if (amount.PricePerKilogram is not decimal price)
                return null;
            sum += price * (decimal)kilograms;
        }

        return sum;
    }

    /// <summary>The plan as two stock tanks for an injector.</summary>
    /// <param name="stock">The volume of each tank; more than 0.</param>
    /// <param name="injector">How much the injector dilutes each of them: <c>MixRatio.OneIn(100)</c> for 1:100.</param>
    /// <param name="temperature">How cold the tanks may become, for what stays dissolved; from 5 to 40 °C where a table reaches so far.</param>
    /// <returns>What to weigh into each tank.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The volume is not above 0.</exception>
    public StockPlan InTanks(Volume stock, MixRatio injector, Temperature temperature) => StockPlan.Of(this, stock, injector, temperature);

    /// <summary>The plan in metric units and invariant culture.</summary>
    /// <returns>One line: the salts, and the greatest difference.</returns>
    public override string ToString() => ToString(null, null);

    /// <summary>The plan as one line of text.</summary>
    /// <param name="format"><c>M</c> or nothing for metric units, <c>U</c> for US customary ones.</param>
    /// <param name="formatProvider">The culture, or <see langword="null"/> for the invariant one.</param>
    /// <returns>One line: the salts, and the greatest difference.</returns>
    /// <exception cref="FormatException">The format is another one.</exception>
    public string ToString(string? format, IFormatProvider? formatProvider)
    {
        TextStyle style = TextStyle.Parse(format, formatProvider);
        string salts = string.Join(", ", Needed.Select(amount => $"{amount.Salt.Name} {QuantityText.Of(amount.Concentration, style)}"));
        return $"{(salts.Length == 0 ? "no salt" : salts)}; at most {QuantityText.Of(GreatestDifference, style)} from what was wanted";
    }

    DisplayBlock IDisplayable.ToDisplay(TextStyle style) => new($"Nutrient solution, at most {QuantityText.Of(GreatestDifference, style)} from what was wanted")
    {
        Rows =
        [
            .. Cautions.Where(caution => caution.Level == CautionLevel.Danger).Select(caution => new DisplayRow(caution.LevelWord, caution.Sentence)),
            .. Needed.Select(amount => new DisplayRow(amount.Salt.Name, QuantityText.Of(amount.Concentration, style))),
            .. Residuals.Select(ion => new DisplayRow(
                IonFacts.Of(ion.Ion).Name,
                $"{QuantityText.Number(ion.Reached.MillimolesPerLiter, style)} of {QuantityText.Number(ion.Wanted.MillimolesPerLiter, style)} mmol/L")),
            .. Cautions.Where(caution => caution.Level != CautionLevel.Danger).Select(caution => new DisplayRow(caution.LevelWord, caution.Sentence)),
        ],
    };

    private IEnumerable<SaltAmount> Needed => Amounts.Where(amount => amount.MilligramsPerLitre > 0);
}
