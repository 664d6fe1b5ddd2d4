namespace HortiCalc.Mixes;

/// <summary>Name, formula and nutrient of each acid.</summary>
internal sealed record AcidFacts(string Name, string Formula, NutrientElement? Element)
{
    public double GramsPerMole { get; } = ChemicalFormula.GramsPerMole(Formula);

    private static readonly AcidFacts Nitric = new("nitric acid", "HNO3", NutrientElement.Nitrogen);
    private static readonly AcidFacts Sulfuric = new("sulfuric acid", "H2SO4", NutrientElement.Sulfur);
    private static readonly AcidFacts Phosphoric = new("phosphoric acid", "H3PO4", NutrientElement.Phosphorus);
    private static readonly AcidFacts Citric = new("citric acid", "C6H8O7", null);

    public static AcidFacts Of(WaterAcid acid) => acid switch
    {
        WaterAcid.Nitric => Nitric,
        WaterAcid.Sulfuric => Sulfuric,
        WaterAcid.Phosphoric => Phosphoric,
        _ => Citric,
    };
}
