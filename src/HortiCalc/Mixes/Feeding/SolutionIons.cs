using System.Text.Json.Serialization;
using HortiCalc.Display;
using HortiCalc.Evidence;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Mixes;

/// <summary>All that is dissolved in a water, a feed or a nutrient solution.</summary>
/// <remarks>
/// Immutable; equal when every ion is. Ions at zero are left out, the others stand in the order of <see cref="SolutionIon"/>.
/// </remarks>
/// <example><code>
/// SolutionIons hoagland = NutrientSolution.IonsOf(
/// [
///     SaltAmount.FromMolarity(NutrientSalts.PotassiumNitrate, Molarity.FromMillimolesPerLiter(5)),
///     SaltAmount.FromMolarity(NutrientSalts.CalciumNitrate, Molarity.FromMillimolesPerLiter(5)),
///     SaltAmount.FromMolarity(NutrientSalts.MonopotassiumPhosphate, Molarity.FromMillimolesPerLiter(1)),
///     SaltAmount.FromMolarity(NutrientSalts.MagnesiumSulfate, Molarity.FromMillimolesPerLiter(2)),
/// ]);
/// double nitrogen = hoagland.Element(NutrientElement.Nitrogen).MilligramsPerLiter;   // 210
/// double cations = hoagland.Cations.MilliequivalentsPerLitre;                         // 20
/// </code></example>
[TypeFormatterSource(typeof(DisplayFormatters))]
public sealed record SolutionIons : IFormattable, IDisplayable
{
    /// <summary>Describes a solution.</summary>
    /// <param name="concentrations">The ions, each once.</param>
    /// <exception cref="ArgumentException">An ion is named twice.</exception>
    public SolutionIons(params IReadOnlyList<IonConcentration> concentrations)
    {
        HashSet<SolutionIon> seen = [];
        foreach (IonConcentration ion in ValueList<IonConcentration>.Of(Guard.NotNull(concentrations)))
        {
            if (!seen.Add(ion.Ion))
                throw new ArgumentException($"{nameof(concentrations)} names {ion.Ion} twice; allowed: each ion once.", nameof(concentrations));
        }

        Concentrations = ValueList<IonConcentration>.Of(concentrations.Where(ion => ion.MolesPerLitre > 0).OrderBy(ion => ion.Ion));
    }

    /// <summary>Water without anything in it.</summary>
    public static SolutionIons None { get; } = new([]);

    /// <summary>The ions above zero, in the order of <see cref="SolutionIon"/>.</summary>
    public IReadOnlyList<IonConcentration> Concentrations { get; }

    /// <summary>The concentration of one ion; 0 where there is none of it.</summary>
    /// <param name="ion">The ion.</param>
    public Molarity this[SolutionIon ion] => Molarity.FromMolesPerLiter(MolesPerLitre(ion));

    /// <summary>The charge of all cations per volume.</summary>
    [JsonIgnore]
    public VolumetricCharge Cations => VolumetricCharge.FromMilliequivalentsPerLitre(Charge(positive: true) * 1000);

    /// <summary>The charge of all anions per volume, without its sign.</summary>
    [JsonIgnore]
    public VolumetricCharge Anions => VolumetricCharge.FromMilliequivalentsPerLitre(Charge(positive: false) * 1000);

    /// <summary>
    /// By how much the cations outweigh the anions, as a share of both: 0 % in a real solution; analyses are held to a few per cent.
    /// </summary>
    [JsonIgnore]
    public Ratio ChargeImbalance
    {
        get
        {
            double cations = Charge(positive: true);
            double anions = Charge(positive: false);
            return Ratio.FromPercent(cations + anions == 0 ? 0 : 100 * (cations - anions) / (cations + anions));
        }
    }

    /// <summary>Half the sum of concentration times charge squared.</summary>
    [JsonIgnore]
    public Molarity IonicStrength => Molarity.FromMolesPerLiter(IonicStrengthMolesPerLitre);

    /// <summary>The mass of an element per volume, from every ion that holds it.</summary>
    /// <param name="element">The element.</param>
    /// <returns>For nitrogen that of nitrate, ammonium and urea together.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The element is not a defined one.</exception>
    public MassConcentration Element(NutrientElement element)
    {
        Guard.Defined(element);
        double gramsPerLitre = Concentrations
            .Select(ion => (ion.MolesPerLitre, Facts: IonFacts.Of(ion.Ion)))
            .Where(ion => ion.Facts.Element == element)
            .Sum(ion => ion.MolesPerLitre * ion.Facts.ElementGramsPerMole);
        return MassConcentration.FromMilligramsPerLiter(gramsPerLitre * 1000);
    }

    /// <summary>Two solutions in the same water: the ions add.</summary>
    /// <param name="left">The first.</param>
    /// <param name="right">The second.</param>
    /// <returns>The sum. It says what is dissolved, not what stays dissolved.</returns>
    public static SolutionIons operator +(SolutionIons left, SolutionIons right) =>
        FromMoles(ion => Guard.NotNull(left).MolesPerLitre(ion) + Guard.NotNull(right).MolesPerLitre(ion));

    /// <inheritdoc cref="op_Addition"/>
    public static SolutionIons Add(SolutionIons left, SolutionIons right) => left + right;

    /// <summary>The solution at another strength.</summary>
    /// <param name="solution">The solution.</param>
    /// <param name="factor">0 or more.</param>
    /// <returns>Every ion times the factor.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The factor is negative or not finite.</exception>
    public static SolutionIons operator *(SolutionIons solution, double factor)
    {
        Guard.NotNegative(factor, "");
        return FromMoles(ion => Guard.NotNull(solution).MolesPerLitre(ion) * factor);
    }

    /// <inheritdoc cref="op_Multiply"/>
    public static SolutionIons Multiply(SolutionIons solution, double factor) => solution * factor;

    /// <summary>The solution in invariant culture.</summary>
    /// <returns>One line: the ions in mmol/L and the charges in meq/L.</returns>
    public override string ToString() => ToString(null, null);

    /// <summary>The solution as one line of text.</summary>
    /// <param name="format"><c>M</c>, <c>U</c> or nothing: the same units everywhere.</param>
    /// <param name="formatProvider">The culture, or <see langword="null"/> for the invariant one.</param>
    /// <returns>One line: the ions in mmol/L and the charges in meq/L.</returns>
    /// <exception cref="FormatException">The format is another one.</exception>
    public string ToString(string? format, IFormatProvider? formatProvider)
    {
        TextStyle style = TextStyle.Parse(format, formatProvider);
        string ions = string.Join(
            ", ", Concentrations.Select(ion => $"{IonFacts.Of(ion.Ion).Name} {QuantityText.Number(ion.MolesPerLitre * 1000, style)}"));
        return Concentrations.Count == 0 ? "nothing dissolved" : $"{ions} mmol/L; {Balance(style)}";
    }

    DisplayBlock IDisplayable.ToDisplay(TextStyle style) => new(Balance(style))
    {
        Rows =
        [
            .. Concentrations.Select(ion => new DisplayRow(
                IonFacts.Of(ion.Ion).Name,
                $"{QuantityText.Number(ion.MolesPerLitre * 1000, style)} mmol/L, {QuantityText.Of(ion.Mass, style)}")),
        ],
    };

    internal double IonicStrengthMolesPerLitre => Concentrations.Sum(ion => ion.MolesPerLitre * Math.Pow(IonFacts.Of(ion.Ion).Charge, 2)) / 2;

    internal static SolutionIons FromMoles(Func<SolutionIon, double> molesPerLitre) => new(
        [.. IonFacts.All.Select(facts => new IonConcentration(facts.Ion, Molarity.FromMolesPerLiter(molesPerLitre(facts.Ion))))]);

    internal double MolesPerLitre(SolutionIon ion)
    {
        foreach (IonConcentration one in Concentrations)
        {
            if (one.Ion == ion)
                return one.MolesPerLitre;
        }

        return 0;
    }

    /// <summary>Acid and bicarbonate together become carbonic acid, which leaves as carbon dioxide: the lesser of the two goes.</summary>
    internal SolutionIons Neutralised()
    {
        double gone = Math.Min(MolesPerLitre(SolutionIon.Hydrogen), MolesPerLitre(SolutionIon.Bicarbonate));
        return FromMoles(ion => MolesPerLitre(ion) - (ion is SolutionIon.Hydrogen or SolutionIon.Bicarbonate ? gone : 0));
    }

    private double Charge(bool positive)
    {
        double sum = 0;
        foreach (IonConcentration ion in Concentrations)
        {
            int charge = IonFacts.Of(ion.Ion).Charge;
            if (charge > 0 == positive)
                sum += Math.Abs(charge) * ion.MolesPerLitre;
        }

        return sum;
    }

    private string Balance(TextStyle style) =>
        $"cations {QuantityText.Number(Cations.MilliequivalentsPerLitre, style)}, anions {QuantityText.Number(Anions.MilliequivalentsPerLitre, style)} meq/L";
}
