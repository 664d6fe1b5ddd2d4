using HortiCalc.Evidence;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Soil;

/// <summary>A liming material: how much acid it neutralises, compared with pure calcium carbonate.</summary>
/// <remarks>
/// Immutable; equal when all members are equal. The pure compounds are computed from the atomic weights of the International Union of
/// Pure and Applied Chemistry (1997) and checked against printed tables. A product's own figure stands on its label.
/// </remarks>
/// <example><code>
/// LimingMaterial product = new("screened limestone", Ratio.FromPercent(88));
/// LimingMaterial british = LimingMaterial.FromCalciumOxideEquivalent("British limestone", Ratio.FromPercent(54));
/// Console.WriteLine(product);
/// Console.WriteLine(british);   // 54 % as calcium oxide is about 96 % as calcium carbonate
/// </code></example>
public sealed record LimingMaterial
{
    // The strongest material is pure magnesium oxide: 248.3 % by molar masses, printed as 250.
    private const double StrongestFraction = 2.5;

    /// <summary>Describes a liming material by its calcium carbonate equivalent, as most labels do.</summary>
    /// <param name="name">The name, for instance <c>ground limestone</c>.</param>
    /// <param name="calciumCarbonateEquivalent">
    /// The mass of pure calcium carbonate that neutralises as much acid as the material, per mass of material; above 0 and up to 250 %.
    /// </param>
    /// <param name="form">
    /// The chemical form; it decides the cautions. Above 120 %, where no carbonate is, the cautions are those of a caustic material in any case.
    /// </param>
    /// <param name="magnesium">The share of the element magnesium by mass, or <see langword="null"/> where it is not stated.</param>
    /// <param name="source">Where the figures come from, or <see langword="null"/> for a product's label.</param>
    /// <exception cref="ArgumentOutOfRangeException">
    /// The equivalent is not above 0 and up to 250 %, the magnesium not from 0 to 100 %, or the form unknown.
    /// </exception>
    public LimingMaterial(
        string name,
        Ratio calciumCarbonateEquivalent,
        LimeForm form = LimeForm.Carbonate,
        MassFraction? magnesium = null,
        Source? source = null)
    {
        Name = Guard.NotBlank(name);
        double percent = Boundary.Fraction(calciumCarbonateEquivalent) * 100;
        if (!(percent > 0 && percent <= StrongestFraction * 100))
            throw Guard.Refused(nameof(calciumCarbonateEquivalent), percent, "%", "above 0 and up to 250 %, which is pure magnesium oxide");
        CalciumCarbonateEquivalent = HouseUnits.Normalise(calciumCarbonateEquivalent);
        Form = Guard.Defined(form);
        if (magnesium is { } share)
        {
            Guard.Within(Boundary.MassFraction(share) * 100, 0, 100, "%", nameof(magnesium));
            Magnesium = HouseUnits.Normalise(share);
        }

        Source = source;
    }

    /// <summary>Ground limestone of 100 % calcium carbonate equivalent, which most recommendations assume.</summary>
    public static LimingMaterial GroundLimestone { get; } =
        new("ground limestone", Ratio.FromPercent(100), source: LimeSources.PennStateHomeGarden);

    /// <summary>Pure calcium carbonate, CaCO₃: 100 % by definition.</summary>
    public static LimingMaterial CalciumCarbonate { get; } = Pure("calcium carbonate", LimeChemistry.CalciumCarbonate, 1, 0);

    /// <summary>Pure magnesium carbonate, MgCO₃: about 119 %.</summary>
    public static LimingMaterial MagnesiumCarbonate { get; } = Pure("magnesium carbonate", LimeChemistry.MagnesiumCarbonate, 1, 1);

    /// <summary>Pure dolomite, CaMg(CO₃)₂: about 108.5 %.</summary>
    public static LimingMaterial Dolomite { get; } = Pure("dolomite", LimeChemistry.Dolomite, 2, 1);

    /// <summary>Pure calcium hydroxide, Ca(OH)₂, the substance of hydrated lime: about 135 %. Caustic.</summary>
    public static LimingMaterial CalciumHydroxide { get; } =
        Pure("calcium hydroxide", LimeChemistry.CalciumHydroxide, 1, 0, LimeForm.Hydroxide);

    /// <summary>Pure magnesium hydroxide, Mg(OH)₂: about 172 %. Caustic.</summary>
    public static LimingMaterial MagnesiumHydroxide { get; } =
        Pure("magnesium hydroxide", LimeChemistry.MagnesiumHydroxide, 1, 1, LimeForm.Hydroxide);

    /// <summary>Pure calcium oxide, CaO, the substance of quicklime: about 178 %. Caustic; not for gardens.</summary>
    public static LimingMaterial CalciumOxide { get; } = Pure("calcium oxide", LimeChemistry.CalciumOxide, 1, 0, LimeForm.Oxide);

    /// <summary>Pure magnesium oxide, MgO: about 248 %; tables with rounded molecular weights print 250. Caustic.</summary>
    public static LimingMaterial MagnesiumOxide { get; } = Pure("magnesium oxide", LimeChemistry.MagnesiumOxide, 1, 1, LimeForm.Oxide);

    /// <summary>The name.</summary>
    public string Name { get; }

    /// <summary>The mass of pure calcium carbonate that neutralises as much acid, per mass of material; may exceed 100 %.</summary>
    public Ratio CalciumCarbonateEquivalent { get; }

    /// <summary>The chemical form.</summary>
    public LimeForm Form { get; }

    /// <summary>The share of the element magnesium by mass, or <see langword="null"/> where it is not stated.</summary>
    public MassFraction? Magnesium { get; }

    /// <summary>Where the figures come from, or <see langword="null"/> for a product's label.</summary>
    public Source? Source { get; }

    /// <summary>Describes a liming material by its neutralising value as calcium oxide, as British, Irish and German labels do.</summary>
    /// <remarks>
    /// Pure calcium carbonate is 56 % by this measure. To read a label of 54 % as a calcium carbonate equivalent would nearly double the
    /// dose; that is why the two measures have two doors.
    /// </remarks>
    /// <param name="name">The name.</param>
    /// <param name="neutralisingValue">
    /// The mass of calcium oxide that neutralises as much acid, per mass of material; above 0 and up to 140 %.
    /// </param>
    /// <param name="form">The chemical form; it decides the cautions.</param>
    /// <param name="magnesium">The share of the element magnesium by mass, or <see langword="null"/> where it is not stated.</param>
    /// <returns>The material, with its calcium carbonate equivalent by the molar masses of both.</returns>
    /// <exception cref="ArgumentOutOfRangeException">
    /// The value is not above 0 and up to 140 %, the magnesium not from 0 to 100 %, or the form unknown.
    /// </exception>
    public static LimingMaterial FromCalciumOxideEquivalent(
        string name, Ratio neutralisingValue, LimeForm form = LimeForm.Carbonate, MassFraction? magnesium = null)
    {
        double percent = Boundary.Fraction(neutralisingValue) * 100;
        if (!(percent > 0 && percent <= 140))
            throw Guard.Refused(nameof(neutralisingValue), percent, "% as CaO", "above 0 and up to 140 % as CaO, which is pure magnesium oxide");
        return new LimingMaterial(name, Ratio.FromPercent(percent * LimeChemistry.CarbonatePerOxide), form, magnesium);
    }

    /// <summary>Describes a liming material by what it is made of: the equivalent and the magnesium by molar masses.</summary>
    /// <param name="name">The name.</param>
    /// <param name="composition">What it is made of.</param>
    /// <returns>The material, in the most caustic form that is in it.</returns>
    /// <exception cref="ArgumentNullException">The composition is <see langword="null"/>.</exception>
    public static LimingMaterial FromComposition(string name, LimeComposition composition)
    {
        Guard.NotNull(composition);
        return new LimingMaterial(
            name,
            Ratio.FromPercent(100 * composition.EquivalentFraction),
            composition.Form,
            MassFraction.FromPercent(100 * composition.MagnesiumFraction),
            LimeSources.AtomicWeights);
    }

    /// <summary>The name and the calcium carbonate equivalent.</summary>
    /// <returns>For instance <c>ground limestone (100 % calcium carbonate equivalent)</c>.</returns>
    public override string ToString() =>
        $"{Name} ({Guard.Number(Math.Round(Fraction * 100, 1, MidpointRounding.AwayFromZero))} % calcium carbonate equivalent)";

    // No carbonate neutralises more than pure magnesium carbonate: 118.7 % by molar masses, printed as 119.
    internal bool IsTooStrongForACarbonate => Form == LimeForm.Carbonate && Fraction > 1.2;

    internal double Fraction => Boundary.Fraction(CalciumCarbonateEquivalent);

    // The carbonates are the moles of calcium carbonate that neutralise as much as one mole of the compound.
    private static LimingMaterial Pure(
        string name, double gramsPerMole, int carbonates, int magnesiumAtoms, LimeForm form = LimeForm.Carbonate) => new(
        name,
        Ratio.FromPercent(100 * carbonates * LimeChemistry.CalciumCarbonate / gramsPerMole),
        form,
        MassFraction.FromPercent(100 * magnesiumAtoms * LimeChemistry.Magnesium / gramsPerMole),
        LimeSources.AtomicWeights);
}
