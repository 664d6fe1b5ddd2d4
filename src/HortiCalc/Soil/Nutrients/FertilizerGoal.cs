namespace HortiCalc.Soil;

/// <summary>What the choice of products is to make smallest.</summary>
public enum FertilizerGoal
{
    /// <summary>The sum of what is given above the needs, each in proportion to its need. Every need is met; a linear programme.</summary>
    LeastExcess,

    /// <summary>The cost. Every need is met, and every product must have a price; a linear programme.</summary>
    LeastCost,

    /// <summary>
    /// The sum of squares of what is missing or in excess, each in proportion to its need. The upper limits hold, the needs may not be met; least
    /// squares without negative amounts.
    /// </summary>
    Closest,
}
