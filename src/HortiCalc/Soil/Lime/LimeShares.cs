namespace HortiCalc.Soil;

/// <summary>How lime is shared out over several applications.</summary>
public enum LimeShares
{
    /// <summary>The same amount each time.</summary>
    Equal,

    /// <summary>As much as one application may hold, and the rest later.</summary>
    FullThenRest,
}
