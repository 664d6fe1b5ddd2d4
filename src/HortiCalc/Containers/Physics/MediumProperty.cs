namespace HortiCalc.Containers;

/// <summary>What a range of a medium is of.</summary>
public enum MediumProperty
{
    /// <summary>All pores.</summary>
    TotalPorosity,

    /// <summary>The air after watering and draining.</summary>
    AirSpace,

    /// <summary>The water after watering and draining.</summary>
    ContainerCapacity,

    /// <summary>The water given up between suctions of 10 and 50 cm of water.</summary>
    EasilyAvailableWater,

    /// <summary>The water given up between suctions of 50 and 100 cm of water, a reserve for a hot day.</summary>
    WaterBufferingCapacity,

    /// <summary>The water given up between suctions of 10 and 100 cm of water: the two together.</summary>
    AvailableWater,
}
