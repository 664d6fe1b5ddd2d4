namespace HortiCalc.Soil;

/// <summary>The texture of a soil in three groups, as tables of rooting have it.</summary>
public enum SoilTextureGroup
{
    /// <summary>Sandy soils.</summary>
    Sandy,

    /// <summary>Silty soils.</summary>
    Silty,

    /// <summary>Clayey soils.</summary>
    Clayey,
}
