namespace HortiCalc.Season;

/// <summary>A job of the season that has a date.</summary>
public enum PlanStep
{
    /// <summary>Sow, or take cuttings.</summary>
    Start,

    /// <summary>Move into a larger pot.</summary>
    PotOn,

    /// <summary>Plant out, or set pots outside.</summary>
    PlantOut,

    /// <summary>The first harvest.</summary>
    Harvest,

    /// <summary>Prune for the last time before winter.</summary>
    LastPruning,

    /// <summary>Bring pots indoors.</summary>
    BringIndoors,
}
