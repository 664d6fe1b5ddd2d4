using System.Text.Json.Serialization;
using HortiCalc.Display;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Mixes;

/// <summary>How much of an ion is dissolved, and the same in the three units of the trade: mmol/L, meq/L, mg/L.</summary>
/// <remarks>Immutable; equal by value. The masses rest on the atomic weights of IUPAC, https://doi.org/10.1515/pac-2019-0603.</remarks>
public sealed record IonConcentration
{
    /// <summary>States how much of an ion is dissolved.</summary>
    /// <param name="ion">The ion.</param>
    /// <param name="concentration">0 or more.</param>
    /// <exception cref="ArgumentOutOfRangeException">The ion is not a defined one, or the concentration is negative or not finite.</exception>
    public IonConcentration(SolutionIon ion, Molarity concentration)
    {
        Ion = Guard.Defined(ion);
        Guard.NotNegative(Boundary.MolesPerLitre(concentration) * 1000, "mmol/L", nameof(concentration));
        Concentration = HouseUnits.Normalise(concentration);
    }

    /// <summary>The ion.</summary>
    public SolutionIon Ion { get; }

    /// <summary>Moles of the ion per volume.</summary>
    public Molarity Concentration { get; }

    /// <summary>The mass of the ion per volume: of NO₃⁻, not of the nitrogen in it.</summary>
    [JsonIgnore]
    public MassConcentration Mass => MassConcentration.FromMilligramsPerLiter(MolesPerLitre * IonFacts.Of(Ion).GramsPerMole * 1000);

    /// <summary>The mass of the element that counts per volume: the N of NO₃⁻; 0 where none does.</summary>
    [JsonIgnore]
    public MassConcentration OfElement =>
        MassConcentration.FromMilligramsPerLiter(MolesPerLitre * IonFacts.Of(Ion).ElementGramsPerMole * 1000);

    /// <summary>The charge per volume without its sign: milliequivalents per litre.</summary>
    [JsonIgnore]
    public VolumetricCharge Charge =>
        VolumetricCharge.FromMilliequivalentsPerLitre(MolesPerLitre * Math.Abs(IonFacts.Of(Ion).Charge) * 1000);

    /// <summary>States an ion by its own mass.</summary>
    /// <param name="ion">The ion.</param>
    /// <param name="mass">The mass of the ion per volume; 0 or more.</param>
    /// <returns>The concentration.</returns>
    /// <remarks>
    /// Analyses state phosphate as PO₄, which weighs 2 % less than H₂PO₄: give its phosphorus, 0.326 of it, to <see cref="FromElement"/>.
    /// </remarks>
    /// <exception cref="ArgumentOutOfRangeException">The ion is not a defined one, or the mass is negative or not finite.</exception>
    public static IonConcentration FromMass(SolutionIon ion, MassConcentration mass) => FromMilligrams(
        ion, Guard.NotNegative(Boundary.MilligramsPerLitre(mass), "mg/L", nameof(mass)), IonFacts.Of(Guard.Defined(ion)).GramsPerMole);

    /// <summary>States an ion by the mass of the element in it: nitrate by its nitrogen, sulfate by its sulfur.</summary>
    /// <param name="ion">The ion; one that holds a nutrient.</param>
    /// <param name="mass">The mass of the element per volume; 0 or more.</param>
    /// <returns>The concentration.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The ion is not a defined one, or the mass is negative or not finite.</exception>
    /// <exception cref="ArgumentException">The ion holds no nutrient to count by, as bicarbonate.</exception>
    public static IonConcentration FromElement(SolutionIon ion, MassConcentration mass)
    {
        IonFacts facts = IonFacts.Of(Guard.Defined(ion));
        if (facts.ElementGramsPerMole == 0)
            throw new ArgumentException($"{nameof(ion)} was {ion}, which holds no nutrient to count by; allowed: one that does.", nameof(ion));
        return FromMilligrams(ion, Guard.NotNegative(Boundary.MilligramsPerLitre(mass), "mg/L", nameof(mass)), facts.ElementGramsPerMole);
    }

    /// <summary>States an ion by its charge.</summary>
    /// <param name="ion">The ion; one with a charge.</param>
    /// <param name="charge">
    /// The charge per volume without its sign. Tables in Japan count phosphate as PO₄³⁻, three to the mole: give a third of their figure.
    /// </param>
    /// <returns>The concentration.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The ion is not a defined one.</exception>
    /// <exception cref="ArgumentException">The substance bears no charge.</exception>
    public static IonConcentration FromCharge(SolutionIon ion, VolumetricCharge charge)
    {
        int perMole = Math.Abs(IonFacts.Of(Guard.Defined(ion)).Charge);
        return perMole > 0
            ? new IonConcentration(ion, Molarity.FromMolesPerLiter(charge.MilliequivalentsPerLitre / 1000 / perMole))
            : throw new ArgumentException($"{nameof(ion)} was {ion}, which bears no charge; allowed: one that does.", nameof(ion));
    }

    /// <summary>One line of text in metric units and invariant culture.</summary>
    /// <returns>For instance <c>nitrate 15 mmol/L</c>.</returns>
    public override string ToString() => $"{IonFacts.Of(Ion).Name} {QuantityText.Number(MolesPerLitre * 1000, TextStyle.Default)} mmol/L";

    internal double MolesPerLitre => Boundary.MolesPerLitre(Concentration);

    private static IonConcentration FromMilligrams(SolutionIon ion, double milligramsPerLitre, double gramsPerMole) =>
        new(ion, Molarity.FromMolesPerLiter(milligramsPerLitre / 1000 / gramsPerMole));
}
