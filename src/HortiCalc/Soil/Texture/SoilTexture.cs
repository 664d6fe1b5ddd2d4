namespace HortiCalc.Soil;

/// <summary>The texture of a soil: the twelve classes of the United States Department of Agriculture.</summary>
/// <remarks>
/// Listed from the coarsest to the finest as the trade usually names them. A garden table has columns of its own; each method
/// that reads one says which classes it takes for which column, and refuses those the table has no column for.
/// </remarks>
public enum SoilTexture
{
    /// <summary>Sand.</summary>
    Sand,

    /// <summary>Loamy sand.</summary>
    LoamySand,

    /// <summary>Sandy loam.</summary>
    SandyLoam,

    /// <summary>Loam.</summary>
    Loam,

    /// <summary>Silt loam.</summary>
    SiltLoam,

    /// <summary>Silt.</summary>
    Silt,

    /// <summary>Sandy clay loam.</summary>
    SandyClayLoam,

    /// <summary>Clay loam.</summary>
    ClayLoam,

    /// <summary>Silty clay loam.</summary>
    SiltyClayLoam,

    /// <summary>Sandy clay.</summary>
    SandyClay,

    /// <summary>Silty clay.</summary>
    SiltyClay,

    /// <summary>Clay.</summary>
    Clay,
}
