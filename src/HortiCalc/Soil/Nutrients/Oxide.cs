namespace HortiCalc.Soil;

/// <summary>The compounds that fertiliser labels and laboratories count nutrients as.</summary>
public enum Oxide
{
    /// <summary>Phosphate, P₂O₅, of phosphorus.</summary>
    Phosphate,

    /// <summary>Potash, K₂O, of potassium.</summary>
    Potash,

    /// <summary>Magnesium oxide, MgO.</summary>
    MagnesiumOxide,

    /// <summary>Calcium oxide, CaO.</summary>
    CalciumOxide,

    /// <summary>Sulfur trioxide, SO₃.</summary>
    SulfurTrioxide,

    /// <summary>Sodium oxide, Na₂O.</summary>
    SodiumOxide,

    /// <summary>Common salt, NaCl, as labels count sodium.</summary>
    SodiumChloride,
}
