namespace HortiCalc.Soil;

/// <summary>The soil classes of North Carolina's soil test report, by humic matter and weight.</summary>
public enum NorthCarolinaSoilClass
{
    /// <summary>Mineral, printed MIN: lime applied before counts 8 % less each month.</summary>
    Mineral,

    /// <summary>Mineral-organic, printed M-O: lime applied before counts 16 % less each month.</summary>
    MineralOrganic,

    /// <summary>Organic, printed ORG: lime applied before counts 16 % less each month.</summary>
    Organic,
}
