namespace HortiCalc.Mixes;

/// <summary>An oxide by which labels state a nutrient that is not there as an oxide.</summary>
public enum NutrientOxide
{
    /// <summary>P₂O₅, for phosphorus: the middle figure of a grade.</summary>
    Phosphate,

    /// <summary>K₂O, for potassium: the last figure of a grade.</summary>
    Potash,

    /// <summary>MgO, for magnesium.</summary>
    Magnesia,

    /// <summary>CaO, for calcium.</summary>
    Lime,

    /// <summary>SO₃, for sulfur.</summary>
    SulfurTrioxide,
}
