namespace HortiCalc.Soil;

/// <summary>How far a water is restricted in use.</summary>
public enum WaterRestriction
{
    /// <summary>No restriction.</summary>
    None,

    /// <summary>Slight to moderate: care in the choice of crop and in management.</summary>
    SlightToModerate,

    /// <summary>Severe: for tolerant crops with special management alone.</summary>
    Severe,
}
