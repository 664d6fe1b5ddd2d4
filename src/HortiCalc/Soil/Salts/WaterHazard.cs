namespace HortiCalc.Soil;

/// <summary>What an irrigation water may do harm by.</summary>
public enum WaterHazard
{
    /// <summary>Salt, by the conductivity.</summary>
    Salinity,

    /// <summary>Salt, by the dissolved solids.</summary>
    DissolvedSolids,

    /// <summary>Slow infiltration, by the sodium adsorption ratio and the conductivity together: a water can be too pure.</summary>
    Infiltration,

    /// <summary>Sodium through the roots, by the sodium adsorption ratio.</summary>
    SodiumToRoots,

    /// <summary>Sodium on wetted leaves.</summary>
    SodiumToLeaves,

    /// <summary>Chloride through the roots.</summary>
    ChlorideToRoots,

    /// <summary>Chloride on wetted leaves.</summary>
    ChlorideToLeaves,

    /// <summary>Boron.</summary>
    Boron,

    /// <summary>Nitrogen as nitrate: late growth and ripening.</summary>
    Nitrate,

    /// <summary>Bicarbonate: white deposits on wetted leaves and fruit.</summary>
    Bicarbonate,
}
