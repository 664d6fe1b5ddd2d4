namespace HortiCalc.Soil;

/// <summary>The uses of land that the German scheme tells apart.</summary>
public enum GermanLandUse
{
    /// <summary>Arable land.</summary>
    Arable,

    /// <summary>Grassland.</summary>
    Grass,
}
