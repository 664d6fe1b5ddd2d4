namespace HortiCalc.Soil;

/// <summary>How salty a soilless medium is.</summary>
public enum MediumSaltLevel
{
    /// <summary>Very low: plants may starve.</summary>
    VeryLow,

    /// <summary>Low: for seedlings and plants that dislike salt.</summary>
    Low,

    /// <summary>Normal: for most plants that grow.</summary>
    Normal,

    /// <summary>High: for plants that feed heavily.</summary>
    High,

    /// <summary>Very high: growth may suffer.</summary>
    VeryHigh,

    /// <summary>Extreme: most plants are injured.</summary>
    Extreme,
}
