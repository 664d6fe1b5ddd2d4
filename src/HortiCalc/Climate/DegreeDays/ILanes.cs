using System.Numerics;

namespace HortiCalc.Climate;

/// <summary>
/// Some doubles side by side, each in a lane of its own: eight, four, two or one, as the processor has it. A kernel is written once, for
/// any of them.
/// </summary>
/// <remarks>
/// Every operation here is one that the standard for floating-point numbers defines to the last bit, lane by lane, and there is no fused
/// multiply-add among them, so that a kernel gives the same bits whatever the width and the processor.
/// </remarks>
internal interface ILanes<TSelf> :
    IAdditionOperators<TSelf, TSelf, TSelf>,
    ISubtractionOperators<TSelf, TSelf, TSelf>,
    IMultiplyOperators<TSelf, TSelf, TSelf>,
    IDivisionOperators<TSelf, TSelf, TSelf>
    where TSelf : struct, ILanes<TSelf>
{
    /// <summary>How many lanes there are.</summary>
    static abstract int Width { get; }

    /// <summary>The number in the first lane.</summary>
    double First { get; }

    /// <summary>The same number in every lane.</summary>
    static abstract TSelf All(double value);

    /// <summary>The numbers from a place on.</summary>
    static abstract TSelf Load(ref double start, int index);

    /// <summary><c>a &lt; b ? a : b</c>: the second where either is not a number.</summary>
    static abstract TSelf Lesser(TSelf a, TSelf b);

    /// <summary><c>a &gt; b ? a : b</c>: the second where either is not a number.</summary>
    static abstract TSelf Greater(TSelf a, TSelf b);

    /// <summary><c>a &lt;= b ? yes : no</c>.</summary>
    static abstract TSelf WhereNotAbove(TSelf a, TSelf b, TSelf yes, TSelf no);

    /// <summary>The square root.</summary>
    static abstract TSelf Root(TSelf a);

    /// <summary>Whether any lane is above a number.</summary>
    static abstract bool AnyAbove(TSelf a, double limit);

    /// <summary>Writes the numbers from a place on.</summary>
    void Store(ref double start, int index);
}
