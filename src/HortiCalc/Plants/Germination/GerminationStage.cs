namespace HortiCalc.Plants;

/// <summary>What a count of days or degree days ends with.</summary>
public enum GerminationStage
{
    /// <summary>The root breaks the seed coat, on moist paper.</summary>
    Germination,

    /// <summary>The seedling comes through the soil, some days later.</summary>
    Emergence,
}
