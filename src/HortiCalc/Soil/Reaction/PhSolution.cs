namespace HortiCalc.Soil;

/// <summary>What a soil is stirred in to read its pH. The readings differ by up to one unit and never belong in one table.</summary>
public enum PhSolution
{
    /// <summary>Water.</summary>
    Water,

    /// <summary>Calcium chloride, 0.01 mol/L.</summary>
    CalciumChloride,

    /// <summary>Potassium chloride, 1 mol/L.</summary>
    PotassiumChloride,
}
