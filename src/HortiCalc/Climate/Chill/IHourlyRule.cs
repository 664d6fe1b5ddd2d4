namespace HortiCalc.Climate;

/// <summary>What one hour adds to a count, and what it leaves behind for the next.</summary>
internal interface IHourlyRule
{
    /// <summary>Whether an hour leaves anything behind.</summary>
    static abstract bool KeepsState { get; }

    /// <summary>Whether an hour costs so little that memory is what it waits for.</summary>
    static abstract bool WaitsForMemory { get; }

    /// <summary>What the hour adds. The temperature is known; the state is zero at the start.</summary>
    TLanes Add<TLanes>(TLanes celsius, ref TLanes state)
        where TLanes : struct, IStationLanes<TLanes>;
}
