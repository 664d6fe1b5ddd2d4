namespace HortiCalc.Climate;

/// <summary>How a day is counted: a small structure holding the thresholds, so that a loop over days is compiled for it alone.</summary>
internal interface IDayRule<TLanes>
    where TLanes : struct, ILanes<TLanes>
{
    /// <summary>Whether the rule looks at the next day's minimum; where not, it is never read.</summary>
    static abstract bool UsesNextMinimum { get; }

    /// <summary>What the day counts; not a number where an extreme is missing.</summary>
    TLanes Count(TLanes minimum, TLanes maximum, TLanes nextMinimum);
}
