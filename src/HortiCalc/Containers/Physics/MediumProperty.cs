namespace HortiCalc.Containers;

/// <summary>What a recommended range of a medium is of.</summary>
public enum MediumProperty
{
    /// <summary>All pores.</summary>
    TotalPorosity,

    /// <summary>The air after watering and draining.</summary>
    AirSpace,

    /// <summary>The water after watering and draining.</summary>
    ContainerCapacity,
}
