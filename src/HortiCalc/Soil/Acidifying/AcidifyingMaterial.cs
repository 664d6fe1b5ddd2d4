using HortiCalc.Evidence;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Soil;

/// <summary>An acidifying material: how much pure calcium carbonate its acid dissolves.</summary>
/// <remarks>
/// <para>
/// Immutable; equal when all members are equal. A sulfate salt is sold with more or less water in its crystals, which changes what a kilogram
/// of it does, so that the number of waters is always named.
/// </para>
/// <para>
/// Sulfur and the sulfates are computed from the atomic weights of the International Union of Pure and Applied Chemistry (1997): one mole of
/// sulfur gives two of acid (S + 1½ O₂ + H₂O → H₂SO₄), one of aluminium three as it hydrolyses, one of iron(II) two as it is oxidised and
/// hydrolyses. Soil does this slowly and not to the last grain; published factors between materials stand in <see cref="AcidEquivalent"/>.
/// </para>
/// </remarks>
/// <example><code>
/// AcidifyingMaterial iron = AcidifyingMaterial.IronSulfate(waters: 7);
/// AcidifyingMaterial product = AcidifyingMaterial.ElementalSulfur.WithPurity(Ratio.FromPercent(90));
/// Console.WriteLine(iron);      // iron sulfate with 7 waters (neutralises 36 % of its mass of calcium carbonate)
/// Console.WriteLine(product);
/// </code></example>
public sealed record AcidifyingMaterial
{
    // Pure sulfur neutralises 312 % of its mass; nothing sold for soil is stronger.
    private const double StrongestPercent = 313;

    /// <summary>Describes an acidifying material.</summary>
    /// <param name="name">The name, for instance <c>sulfur chips</c>.</param>
    /// <param name="carbonateNeutralised">
    /// The mass of pure calcium carbonate that the acid of the material dissolves, per mass of material; above 0 and up to 313 %.
    /// </param>
    /// <param name="form">The chemical form; it decides the cautions.</param>
    /// <param name="source">Where the figure comes from, or <see langword="null"/> for a product's label.</param>
    /// <exception cref="ArgumentException">The name is empty.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The mass is not above 0 and up to 313 %, or the form unknown.</exception>
    public AcidifyingMaterial(string name, Ratio carbonateNeutralised, AcidForm form, Source? source = null)
    {
        Name = Guard.NotBlank(name);
        double percent = Boundary.Fraction(carbonateNeutralised) * 100;
        if (!(percent > 0 && percent <= StrongestPercent))
            throw Guard.Refused(nameof(carbonateNeutralised), percent, "%", "above 0 and up to 313 %; pure sulfur neutralises 312 %");
        CarbonateNeutralised = HouseUnits.Normalise(carbonateNeutralised);
        Form = Guard.Defined(form);
        Source = source;
    }

    /// <summary>Pure elemental sulfur, S: neutralises 312 % of its mass; printed as 3.12 and as threefold.</summary>
    public static AcidifyingMaterial ElementalSulfur { get; } = Pure("elemental sulfur", AcidChemistry.Sulfur, 2, AcidForm.Sulfur);

    /// <summary>Ammonium sulfate: neutralises 110 % of its mass by the convention that fertiliser tables keep to, once it is nitrified.</summary>
    /// <remarks>Source: Nutrient Content of Fertilizer Materials, ANR-174, Alabama Cooperative Extension System.</remarks>
    public static AcidifyingMaterial AmmoniumSulfate { get; } =
        new("ammonium sulfate", Ratio.FromPercent(110), AcidForm.AmmoniumFertilizer, AcidSources.Alabama);

    /// <summary>The name.</summary>
    public string Name { get; }

    /// <summary>The mass of pure calcium carbonate that its acid dissolves, per mass of material; may exceed 100 %.</summary>
    public Ratio CarbonateNeutralised { get; }

    /// <summary>The chemical form.</summary>
    public AcidForm Form { get; }

    /// <summary>Where the figure comes from, or <see langword="null"/> for a product's label.</summary>
    public Source? Source { get; }

    /// <summary>Pure aluminium sulfate, Al₂(SO₄)₃·nH₂O.</summary>
    /// <param name="waters">Molecules of water in the crystal, 0 to 18; 18 is the crystallised salt, 14 is common in trade.</param>
    /// <returns>The material.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The waters are not from 0 to 18.</exception>
    public static AcidifyingMaterial AluminiumSulfate(int waters) => Hydrate("aluminium sulfate", AcidChemistry.AluminiumSulfate, waters, 18, 6, AcidForm.AluminiumSulfate);

    /// <summary>Pure iron(II) sulfate, FeSO₄·nH₂O.</summary>
    /// <param name="waters">Molecules of water in the crystal, 0 to 7; 7 are green crystals, 1 the dried powder.</param>
    /// <returns>The material.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The waters are not from 0 to 7.</exception>
    public static AcidifyingMaterial IronSulfate(int waters) => Hydrate("iron sulfate", AcidChemistry.IronSulfate, waters, 7, 2, AcidForm.IronSulfate);

    /// <summary>The same material in a product that holds less than all of it, as its label says.</summary>
    /// <param name="purity">The share by mass; above 0 and up to 100 %.</param>
    /// <returns>The product.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The share is not above 0 and up to 100 %.</exception>
    public AcidifyingMaterial WithPurity(Ratio purity)
    {
        double percent = Boundary.Fraction(purity) * 100;
        if (!(percent > 0 && percent <= 100))
            throw Guard.Refused(nameof(purity), percent, "%", "above 0 and up to 100 %");
        return new AcidifyingMaterial($"{Name}, {Guard.Number(percent)} % pure", Ratio.FromPercent(Fraction * percent), Form, Source);
    }

    /// <summary>The name and what it neutralises.</summary>
    /// <returns>For instance <c>elemental sulfur (neutralises 312.1 % of its mass of calcium carbonate)</c>.</returns>
    public override string ToString() =>
        $"{Name} (neutralises {Guard.Number(Math.Round(Fraction * 100, 1, MidpointRounding.AwayFromZero))} % of its mass of calcium carbonate)";

    internal double Fraction => Boundary.Fraction(CarbonateNeutralised);

    private static AcidifyingMaterial Hydrate(string name, double anhydrousGramsPerMole, int waters, int mostWaters, double acidPerMole, AcidForm form)
    {
        if (waters < 0 || waters > mostWaters)
            throw Guard.Refused(nameof(waters), waters, "", $"from 0 to {Guard.Number(mostWaters)}");
        string words = waters switch
        {
            0 => $"{name} without water",
            1 => $"{name} with 1 water",
            _ => $"{name} with {Guard.Number(waters)} waters",
        };
        return Pure(words, anhydrousGramsPerMole + waters * AcidChemistry.Water, acidPerMole, form);
    }

    private static AcidifyingMaterial Pure(string name, double gramsPerMole, double acidPerMole, AcidForm form) =>
        new(name, Ratio.FromPercent(100 * AcidChemistry.CarbonatePerMass(gramsPerMole, acidPerMole)), form, LimeSources.AtomicWeights);
}
