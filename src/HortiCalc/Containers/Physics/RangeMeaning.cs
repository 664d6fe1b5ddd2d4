namespace HortiCalc.Containers;

/// <summary>What a source means by a range.</summary>
public enum RangeMeaning
{
    /// <summary>What a medium should have.</summary>
    Recommended,

    /// <summary>What media were found to have.</summary>
    Found,
}
