namespace HortiCalc.Soil;

/// <summary>Which nitrogen a share is of.</summary>
public enum NitrogenPool
{
    /// <summary>The organic nitrogen.</summary>
    Organic,

    /// <summary>All nitrogen.</summary>
    Total,
}
