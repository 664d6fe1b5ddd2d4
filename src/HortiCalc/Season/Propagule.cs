namespace HortiCalc.Season;

/// <summary>What a crop is raised from.</summary>
public enum Propagule
{
    /// <summary>Seed.</summary>
    Seed,

    /// <summary>Cuttings.</summary>
    Cutting,
}
