namespace HortiCalc.Season;

/// <summary>A job of the season that has a date.</summary>
public enum PlanStep
{
    /// <summary>Sow, indoors or where the crop grows.</summary>
    Sow,

    /// <summary>Take cuttings.</summary>
    TakeCuttings,

    /// <summary>Move into a larger pot.</summary>
    PotOn,

    /// <summary>Plant into the bed.</summary>
    PlantOut,

    /// <summary>Set pots outside.</summary>
    SetOutside,

    /// <summary>The first harvest.</summary>
    Harvest,

    /// <summary>Prune for the last time before winter.</summary>
    LastPruning,

    /// <summary>Bring pots indoors.</summary>
    BringIndoors,
}
