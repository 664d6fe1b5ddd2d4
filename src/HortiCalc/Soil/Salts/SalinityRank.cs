namespace HortiCalc.Soil;

/// <summary>How salty a soil is, by its saturated extract.</summary>
public enum SalinityRank
{
    /// <summary>Up to 2 dS/m: hardly a plant is injured.</summary>
    Low,

    /// <summary>2 to 4 dS/m: sensitive plants and seedlings may be injured.</summary>
    Medium,

    /// <summary>4 to 8 dS/m: most plants that do not tolerate salt are injured.</summary>
    High,

    /// <summary>8 to 16 dS/m: tolerant plants grow, others are severely injured.</summary>
    Excessive,

    /// <summary>Above 16 dS/m: very few plants grow.</summary>
    VeryExcessive,
}
