namespace HortiCalc.Soil;

/// <summary>The soils that a line between two extracts was measured on.</summary>
public enum ExtractTexture
{
    /// <summary>Soils of several textures together.</summary>
    Any,

    /// <summary>Coarse soils.</summary>
    Coarse,

    /// <summary>Medium soils.</summary>
    Medium,

    /// <summary>Fine soils.</summary>
    Fine,

    /// <summary>Sandy soils.</summary>
    Sandy,

    /// <summary>Loamy soils.</summary>
    Loamy,
}
