namespace HortiCalc.Containers;

/// <summary>What a printed depth is of. The three are not one: roots in open ground go deeper than a container must be.</summary>
public enum DepthKind
{
    /// <summary>The medium in a container.</summary>
    Container,

    /// <summary>The soil in a raised bed.</summary>
    RaisedBed,

    /// <summary>How deep roots go.</summary>
    Rooting,
}
