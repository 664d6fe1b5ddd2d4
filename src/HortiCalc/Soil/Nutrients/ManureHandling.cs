namespace HortiCalc.Soil;

/// <summary>What is done with farmyard manure.</summary>
public enum ManureHandling
{
    /// <summary>Left on the surface.</summary>
    Surface,

    /// <summary>Old, and dug in within a day.</summary>
    OldDugIn,

    /// <summary>Fresh, and dug in within a day.</summary>
    FreshDugIn,
}
