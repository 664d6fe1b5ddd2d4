using HortiCalc.Evidence;
using UnitsNet;

namespace HortiCalc.Mixes;

/// <summary>Published nutrient solutions: the salts where those were printed, the elements where only those were.</summary>
public static class NutrientFormulas
{
    // Grams in a litre of a stock of which each litre of the solution gets a millilitre: the same number in milligrams per litre.
    private static readonly (NutrientSalt Salt, double GramsPerLitre)[] HoaglandTrace =
    [
        (NutrientSalts.BoricAcid, 2.86),
        (NutrientSalts.ManganeseChloride, 1.81),
        (NutrientSalts.ZincSulfate, 0.22),
        (NutrientSalts.CopperSulfate, 0.08),
        (NutrientSalts.MolybdicAcid.WithPurity(MassFraction.FromPercent(85)), 0.02),
    ];

    /// <summary>Hoagland's solution no. 1, with nitrate alone: 5 mL/L of molar KNO3 and Ca(NO3)2, 1 of KH2PO4, 2 of MgSO4.</summary>
    public static NutrientFormula HoaglandOne { get; } = Hoagland(
        "hoagland-1",
        "Hoagland solution no. 1",
        (NutrientSalts.PotassiumNitrate, 5),
        (NutrientSalts.CalciumNitrate, 5),
        (NutrientSalts.MonopotassiumPhosphate, 1),
        (NutrientSalts.MagnesiumSulfate, 2));

    /// <summary>Hoagland's solution no. 2, with some ammonium: 6 mL/L of molar KNO3, 4 of Ca(NO3)2, 1 of NH4H2PO4, 2 of MgSO4.</summary>
    public static NutrientFormula HoaglandTwo { get; } = Hoagland(
        "hoagland-2",
        "Hoagland solution no. 2",
        (NutrientSalts.PotassiumNitrate, 6),
        (NutrientSalts.CalciumNitrate, 4),
        (NutrientSalts.MonoammoniumPhosphate, 1),
        (NutrientSalts.MagnesiumSulfate, 2));

    /// <summary>
    /// Twelve standard solutions of the literature by their ions, in the order of the paper that compared them. Chloride and the trace elements boron
    /// and molybdenum are not among what could be read; the names of the columns neither. The fifth is Hoagland's no. 1.
    /// </summary>
    /// <remarks>
    /// Source: Comparison of the mineral composition of twelve standard nutrient solutions, Journal of Plant Nutrition 21:2115, 1998. Iron is counted
    /// as chelate.
    /// </remarks>
    public static IReadOnlyList<SolutionIons> TwelveStandard { get; } = ValueList<SolutionIons>.Of(
    [
        // Milligrams of the element per litre: K, Ca, Mg, N of ammonium, Na, Fe, Mn, Cu, Zn, N of nitrate, P, S.
        Of(132.93, 136.27, 19.69, 0, 0, 36.86, 0, 0, 0, 123.82, 103.45, 25.97),
        Of(187.28, 36.07, 18.71, 4.9, 0.23, 2.79, 0.62, 0.06, 0.01, 77.46, 42.74, 27.9),
        Of(241.24, 149.09, 37.19, 2.1, 1.15, 4.02, 1.23, 0.01, 0.01, 161.5, 64.74, 54.51),
        Of(312.79, 163.52, 49.34, 18.91, 0.46, 0, 0, 0, 0, 226.63, 40.89, 65.09),
        Of(236.15, 200.39, 48.61, 0, 0, 1.44, 0.5, 0.02, 0.05, 210.1, 30.97, 64.13),
        Of(237.33, 160.31, 24.31, 28.01, 0.46, 1.12, 0.11, 0.03, 0.13, 196.09, 61.95, 32.07),
        Of(89.54, 161.11, 55.9, 19.61, 0, 1.12, 0.14, 0, 0.13, 112.75, 71.24, 96.84),
        Of(157.57, 120.23, 48.61, 0, 2.07, 5.03, 0.4, 0.02, 0.05, 112.05, 61.95, 64.13),
        Of(261.57, 184.76, 49.1, 0, 0.46, 1.34, 0.62, 0.01, 0.11, 167.8, 30.66, 111.59),
        Of(302.23, 172.34, 50.55, 0.03, 0.69, 1.9, 1.98, 0.1, 0.1, 201.28, 59.78, 67.98),
        Of(430.08, 220.43, 36.46, 0.01, 8.74, 7.1, 2.4, 0.04, 0.12, 241.62, 69.69, 87.22),
        Of(312.79, 160.31, 34.03, 17.51, 0.69, 0.84, 0.55, 0.04, 0.03, 224.11, 38.72, 44.89),
    ]);

    private static NutrientFormula Hoagland(string key, string name, params (NutrientSalt Salt, double MillimolesPerLitre)[] salts) => new(
        key,
        name,
        FeedingSources.Hershey,
        [.. salts.Select(salt => SaltAmount.FromMolarity(salt.Salt, Molarity.FromMillimolesPerLiter(salt.MillimolesPerLitre)))],
        [.. HoaglandTrace.Select(salt => new SaltAmount(salt.Salt, MassConcentration.FromMilligramsPerLiter(salt.GramsPerLitre)))]);

    private static SolutionIons Of(params double[] milligramsPerLitre)
    {
        SolutionIon[] order =
        [
            SolutionIon.Potassium, SolutionIon.Calcium, SolutionIon.Magnesium, SolutionIon.Ammonium, SolutionIon.Sodium, SolutionIon.IronChelate,
            SolutionIon.Manganese, SolutionIon.Copper, SolutionIon.Zinc, SolutionIon.Nitrate, SolutionIon.DihydrogenPhosphate, SolutionIon.Sulfate,
        ];
        return new SolutionIons(
            [.. order.Zip(milligramsPerLitre, (ion, amount) => IonConcentration.FromElement(ion, MassConcentration.FromMilligramsPerLiter(amount)))]);
    }
}
