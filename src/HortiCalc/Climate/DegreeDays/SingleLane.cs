using System.Runtime.CompilerServices;

namespace HortiCalc.Climate;

/// <summary>One lane: plain arithmetic, where the processor has no vectors.</summary>
internal readonly struct SingleLane(double value) : IExponentialLanes<SingleLane>
{
    private readonly double value = value;

    public static int Width => 1;

    public double First => value;

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static SingleLane operator +(SingleLane left, SingleLane right) => new(left.value + right.value);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static SingleLane operator -(SingleLane left, SingleLane right) => new(left.value - right.value);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static SingleLane operator *(SingleLane left, SingleLane right) => new(left.value * right.value);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static SingleLane operator /(SingleLane left, SingleLane right) => new(left.value / right.value);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static SingleLane All(double value) => new(value);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static SingleLane Load(ref double start, int index) => new(Unsafe.Add(ref start, index));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static SingleLane Lesser(SingleLane a, SingleLane b) => a.value < b.value ? a : b;

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static SingleLane Greater(SingleLane a, SingleLane b) => a.value > b.value ? a : b;

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static SingleLane WhereNotAbove(SingleLane a, SingleLane b, SingleLane yes, SingleLane no) => a.value <= b.value ? yes : no;

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static SingleLane Root(SingleLane a) => new(Math.Sqrt(a.value));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static SingleLane Exp(SingleLane power) => new(Math.Exp(power.value));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static SingleLane Log(SingleLane a) => new(Math.Log(a.value));

    public static bool AnyAbove(SingleLane a, double limit) => a.value > limit;

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public void Store(ref double start, int index) => Unsafe.Add(ref start, index) = value;
}
