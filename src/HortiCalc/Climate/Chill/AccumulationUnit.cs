namespace HortiCalc.Climate;

/// <summary>What a count of hours is told in.</summary>
public enum AccumulationUnit
{
    /// <summary>Hours of cold.</summary>
    ChillHours,

    /// <summary>Weighted hours of the Utah kind; warmth takes some away.</summary>
    ChillUnits,

    /// <summary>Portions of the dynamic model.</summary>
    ChillPortions,

    /// <summary>Weighted degree hours of warmth.</summary>
    GrowingDegreeHours,
}
