namespace HortiCalc.Soil;

/// <summary>The texture of a soil: the eleven classes of England and Wales, by silt up to 60 µm.</summary>
/// <remarks>Several share a name with a class of <see cref="SoilTexture"/> and not its bounds: clay begins at 35 % here and at 40 % there.</remarks>
public enum UkSoilTexture
{
    /// <summary>Sand.</summary>
    Sand,

    /// <summary>Loamy sand.</summary>
    LoamySand,

    /// <summary>Sandy loam.</summary>
    SandyLoam,

    /// <summary>Sandy silt loam.</summary>
    SandySiltLoam,

    /// <summary>Silt loam.</summary>
    SiltLoam,

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
