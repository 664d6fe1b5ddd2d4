using System.Runtime.CompilerServices;

namespace HortiCalc.Climate;

/// <summary>Two neighbouring blocks of stations: the processor works on one while it waits for the other, and for memory.</summary>
internal readonly struct StationPair<TLanes>(TLanes first, TLanes second) : IStationLanes<StationPair<TLanes>>
    where TLanes : struct, IStationLanes<TLanes>
{
    private readonly TLanes first = first;
    private readonly TLanes second = second;

    public static int Width => 2 * TLanes.Width;

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static StationPair<TLanes> All(double value) => new(TLanes.All(value), TLanes.All(value));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static StationPair<TLanes> Load(ref double first) => new(TLanes.Load(ref first), TLanes.Load(ref Unsafe.Add(ref first, TLanes.Width)));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static StationPair<TLanes> operator +(StationPair<TLanes> left, StationPair<TLanes> right) =>
        new(left.first + right.first, left.second + right.second);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static StationPair<TLanes> operator -(StationPair<TLanes> left, StationPair<TLanes> right) =>
        new(left.first - right.first, left.second - right.second);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static StationPair<TLanes> operator *(StationPair<TLanes> left, StationPair<TLanes> right) =>
        new(left.first * right.first, left.second * right.second);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static StationPair<TLanes> operator /(StationPair<TLanes> left, StationPair<TLanes> right) =>
        new(left.first / right.first, left.second / right.second);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static StationPair<TLanes> Exp(StationPair<TLanes> value) => new(TLanes.Exp(value.first), TLanes.Exp(value.second));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static StationPair<TLanes> Cos(StationPair<TLanes> value) => new(TLanes.Cos(value.first), TLanes.Cos(value.second));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static StationPair<TLanes> Larger(StationPair<TLanes> left, StationPair<TLanes> right) =>
        new(TLanes.Larger(left.first, right.first), TLanes.Larger(left.second, right.second));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static StationPair<TLanes> WhereAbove(
        StationPair<TLanes> left, StationPair<TLanes> right, StationPair<TLanes> then, StationPair<TLanes> otherwise) => new(
            TLanes.WhereAbove(left.first, right.first, then.first, otherwise.first),
            TLanes.WhereAbove(left.second, right.second, then.second, otherwise.second));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static StationPair<TLanes> WhereKnown(StationPair<TLanes> value, StationPair<TLanes> then, StationPair<TLanes> otherwise) => new(
        TLanes.WhereKnown(value.first, then.first, otherwise.first),
        TLanes.WhereKnown(value.second, then.second, otherwise.second));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static bool AnyAtLeast(StationPair<TLanes> left, StationPair<TLanes> right) =>
        TLanes.AnyAtLeast(left.first, right.first) || TLanes.AnyAtLeast(left.second, right.second);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static void Store(StationPair<TLanes> value, ref double first)
    {
        TLanes.Store(value.first, ref first);
        TLanes.Store(value.second, ref Unsafe.Add(ref first, TLanes.Width));
    }
}
