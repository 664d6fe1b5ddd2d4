namespace HortiCalc.Mixes;

/// <summary>Formula, charge and the element that counts of each ion; the masses follow from the atomic weights.</summary>
internal sealed record IonFacts(SolutionIon Ion, string Name, string Formula, int Charge, NutrientElement? Element, int Atoms)
{
    private static readonly IonFacts[] Table =
    [
        new(SolutionIon.Ammonium, "ammonium", "NH4", 1, NutrientElement.Nitrogen, 1),
        new(SolutionIon.Potassium, "potassium", "K", 1, NutrientElement.Potassium, 1),
        new(SolutionIon.Sodium, "sodium", "Na", 1, NutrientElement.Sodium, 1),
        new(SolutionIon.Calcium, "calcium", "Ca", 2, NutrientElement.Calcium, 1),
        new(SolutionIon.Magnesium, "magnesium", "Mg", 2, NutrientElement.Magnesium, 1),
        new(SolutionIon.Hydrogen, "hydrogen", "H", 1, null, 0),
        new(SolutionIon.Nitrate, "nitrate", "NO3", -1, NutrientElement.Nitrogen, 1),
        new(SolutionIon.DihydrogenPhosphate, "phosphate", "H2PO4", -1, NutrientElement.Phosphorus, 1),
        new(SolutionIon.Sulfate, "sulfate", "SO4", -2, NutrientElement.Sulfur, 1),
        new(SolutionIon.Chloride, "chloride", "Cl", -1, NutrientElement.Chlorine, 1),
        new(SolutionIon.Bicarbonate, "bicarbonate", "HCO3", -1, null, 0),
        new(SolutionIon.Iron, "iron", "Fe", 2, NutrientElement.Iron, 1),
        new(SolutionIon.IronChelate, "iron chelate", "C10H12FeN2O8", -1, NutrientElement.Iron, 1),
        new(SolutionIon.Manganese, "manganese", "Mn", 2, NutrientElement.Manganese, 1),
        new(SolutionIon.Zinc, "zinc", "Zn", 2, NutrientElement.Zinc, 1),
        new(SolutionIon.Copper, "copper", "Cu", 2, NutrientElement.Copper, 1),
        new(SolutionIon.BoricAcid, "boric acid", "H3BO3", 0, NutrientElement.Boron, 1),
        new(SolutionIon.Molybdate, "molybdate", "MoO4", -2, NutrientElement.Molybdenum, 1),
        new(SolutionIon.Urea, "urea", "CH4N2O", 0, NutrientElement.Nitrogen, 2),
        new(SolutionIon.DihydrogenCitrate, "citrate", "C6H7O7", -1, null, 0),
    ];

    public double GramsPerMole { get; } = ChemicalFormula.GramsPerMole(Formula);

    /// <summary>Grams of the element that a mole of the ion holds.</summary>
    public double ElementGramsPerMole { get; } = Element is NutrientElement element ? Atoms * AtomicWeights.Of(element) : 0;

    public static IReadOnlyList<IonFacts> All => Table;

    public static IonFacts Of(SolutionIon ion) => Table[(int)ion];
}
