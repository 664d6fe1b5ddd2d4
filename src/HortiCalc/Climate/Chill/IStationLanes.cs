namespace HortiCalc.Climate;

/// <summary>
/// One number a station for as many stations as the processor takes at once. The rules are written once against this, so that all
/// widths do the same arithmetic in the same order; only the exponential and the cosine differ, by a few units in the last place.
/// </summary>
internal interface IStationLanes<TLanes>
    where TLanes : struct, IStationLanes<TLanes>
{
    static abstract int Width { get; }

    static abstract TLanes All(double value);

    static abstract TLanes Load(ref double first);

    static abstract TLanes operator +(TLanes left, TLanes right);

    static abstract TLanes operator -(TLanes left, TLanes right);

    static abstract TLanes operator *(TLanes left, TLanes right);

    static abstract TLanes operator /(TLanes left, TLanes right);

    static abstract TLanes Exp(TLanes value);

    static abstract TLanes Cos(TLanes value);

    /// <summary>The larger of the two; neither is NaN.</summary>
    static abstract TLanes Larger(TLanes left, TLanes right);

    /// <summary>Where the left is above the right, one value; else, and where either is NaN, the other.</summary>
    static abstract TLanes WhereAbove(TLanes left, TLanes right, TLanes then, TLanes otherwise);

    /// <summary>Where the value is a number, one value; where it is NaN, the other.</summary>
    static abstract TLanes WhereKnown(TLanes value, TLanes then, TLanes otherwise);

    static abstract bool AnyAtLeast(TLanes left, TLanes right);

    static abstract void Store(TLanes value, ref double first);
}
