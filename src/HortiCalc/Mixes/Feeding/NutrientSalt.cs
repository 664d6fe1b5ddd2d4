using System.Text.Json.Serialization;
using HortiCalc.Evidence;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Mixes;

/// <summary>A salt or acid that nutrient solutions are made from: what it sets free, and what share of the product it is.</summary>
/// <remarks>Immutable; equal by value. <see cref="NutrientSalts"/> holds the usual ones.</remarks>
/// <example><code>
/// NutrientSalt technical = NutrientSalts.PotassiumNitrate.WithPurity(MassFraction.FromPercent(98));
/// double potassium = technical.Share(NutrientElement.Potassium).Percent;   // 37.9
/// </code></example>
public sealed record NutrientSalt
{
    /// <summary>Describes a salt.</summary>
    /// <param name="key">A short stable name, for storage and translation.</param>
    /// <param name="name">The name in plain English.</param>
    /// <param name="formula">The formula with its water, for instance <c>Ca(NO3)2.4H2O</c>; the molar mass follows from it.</param>
    /// <param name="ions">What one formula unit sets free, without charge as a whole.</param>
    /// <param name="purity">The share of the formula in the product; more than 0, at most 100 %. The product's label decides.</param>
    /// <exception cref="ArgumentException">
    /// A text is empty, the formula cannot be read, an ion is named twice, the charges do not cancel, or the formula holds less of an element than
    /// the ions do.
    /// </exception>
    /// <exception cref="ArgumentOutOfRangeException">The purity is outside what is allowed.</exception>
    public NutrientSalt(string key, string name, string formula, IReadOnlyList<SaltIon> ions, MassFraction purity)
    {
        Key = Guard.NotBlank(key);
        Name = Guard.NotBlank(name);
        Formula = Guard.NotBlank(formula);
        Ions = ValueList<SaltIon>.Of(Guard.NotNull(ions));
        double percent = Guard.Positive(Boundary.MassFraction(purity) * 100, "% by mass", nameof(purity));
        Guard.Within(percent, 0, 100, "% by mass", nameof(purity));
        Purity = HouseUnits.Normalise(purity);
        Dictionary<string, double> atoms = AtomsOf(formula);
        GramsPerMole = ChemicalFormula.GramsPerMole(formula);
        if (Ions.Select(ion => ion.Ion).Distinct().Count() < Ions.Count)
            throw new ArgumentException($"{nameof(ions)} of '{name}' names an ion twice; allowed: each once.", nameof(ions));
        double charge = Ions.Sum(ion => ion.Count * IonFacts.Of(ion.Ion).Charge);
        if (Ions.Count == 0 || Math.Abs(charge) > 1e-9)
        {
            throw new ArgumentException(
                $"{nameof(ions)} of '{name}' bear a charge of {Guard.Number(charge)} together; allowed: ions whose charges cancel.", nameof(ions));
        }

        foreach (NutrientElement element in Enum.GetValues<NutrientElement>())
        {
            double needed = AtomsFreed(element);
            double present = atoms.GetValueOrDefault(AtomicWeights.Symbol(element));
            if (needed > present + 1e-9)
            {
                throw new ArgumentException(
                    $"{nameof(ions)} of '{name}' hold {Guard.Number(needed)} {element}, the formula {formula} {Guard.Number(present)}; "
                    + "allowed: no more than the formula holds.",
                    nameof(ions));
            }
        }
    }

    /// <summary>A short stable name.</summary>
    public string Key { get; }

    /// <summary>The name in plain English.</summary>
    public string Name { get; }

    /// <summary>The formula with its water.</summary>
    public string Formula { get; }

    /// <summary>What one formula unit sets free.</summary>
    public IReadOnlyList<SaltIon> Ions { get; }

    /// <summary>The share of the formula in the product.</summary>
    public MassFraction Purity { get; }

    /// <summary>The mass of a mole of the formula, by the atomic weights of IUPAC, https://doi.org/10.1515/pac-2019-0603.</summary>
    [JsonIgnore]
    public MolarMass MolarMass => MolarMass.FromGramsPerMole(GramsPerMole);

    /// <summary>The tank it belongs into: A where it holds calcium or chelated iron, else B.</summary>
    [JsonIgnore]
    public StockTank Tank =>
        Sets(SolutionIon.Calcium) || Sets(SolutionIon.IronChelate) ? StockTank.A : StockTank.B;

    /// <summary>The same salt as a product of another purity.</summary>
    /// <param name="purity">More than 0, at most 100 %.</param>
    /// <returns>The salt.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The purity is outside what is allowed.</exception>
    public NutrientSalt WithPurity(MassFraction purity) => new(Key, Name, Formula, Ions, purity);

    /// <summary>How much of an element the product brings.</summary>
    /// <param name="element">The element.</param>
    /// <returns>Its share of the product by mass; 0 where it brings none.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The element is not a defined one.</exception>
    public MassFraction Share(NutrientElement element) => MassFraction.FromPercent(
        100 * AtomsFreed(Guard.Defined(element)) * AtomicWeights.Of(element) / GramsPerMole * Boundary.MassFraction(Purity));

    /// <summary>The salt's name and formula.</summary>
    /// <returns>For instance <c>potassium nitrate, KNO3</c>.</returns>
    public override string ToString() => $"{Name}, {Formula}";

    internal double GramsPerMole { get; }

    /// <summary>Moles of an ion that a gram of the product sets free.</summary>
    internal double MolesPerGram(SolutionIon ion) =>
        Ions.Where(one => one.Ion == ion).Sum(one => one.Count) / GramsPerMole * Boundary.MassFraction(Purity);

    internal bool Sets(SolutionIon ion) => Ions.Any(one => one.Ion == ion);

    private double AtomsFreed(NutrientElement element) =>
        Ions.Where(ion => IonFacts.Of(ion.Ion).Element == element).Sum(ion => ion.Count * IonFacts.Of(ion.Ion).Atoms);

    private static Dictionary<string, double> AtomsOf(string formula)
    {
        try
        {
            return ChemicalFormula.Atoms(formula);
        }
        catch (FormatException refused)
        {
            throw new ArgumentException(refused.Message, nameof(formula), refused);
        }
    }
}
