namespace HortiCalc.Beds;

/// <summary>What a published depth for a crop is. Roots go deeper in open ground than a bed has to be.</summary>
public enum SoilDepthKind
{
    /// <summary>The depth of soil in a raised bed.</summary>
    RaisedBed,

    /// <summary>How deep roots go in open ground.</summary>
    Rooting,
}
