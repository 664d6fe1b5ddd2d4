namespace HortiCalc.Beds;

/// <summary>What a choice among bags of several sizes is best in.</summary>
public enum BagAim
{
    /// <summary>The lowest price; of equal ones the fewest bags.</summary>
    LeastCost,

    /// <summary>The fewest bags to carry; of equal ones the least left over.</summary>
    FewestBags,

    /// <summary>The least left over; of equal ones the fewest bags.</summary>
    LeastLeftOver,
}
