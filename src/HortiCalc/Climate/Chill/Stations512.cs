using System.Runtime.CompilerServices;
using System.Runtime.Intrinsics;

namespace HortiCalc.Climate;

/// <summary>8 stations at once, where the processor has vectors of 512 bits.</summary>
internal readonly struct Stations512(Vector512<double> value) : IStationLanes<Stations512>
{
    private readonly Vector512<double> value = value;

    public static int Width => Vector512<double>.Count;

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Stations512 All(double value) => new(Vector512.Create(value));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Stations512 Load(ref double first) => new(Vector512.LoadUnsafe(ref first));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Stations512 operator +(Stations512 left, Stations512 right) => new(left.value + right.value);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Stations512 operator -(Stations512 left, Stations512 right) => new(left.value - right.value);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Stations512 operator *(Stations512 left, Stations512 right) => new(left.value * right.value);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Stations512 operator /(Stations512 left, Stations512 right) => new(left.value / right.value);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Stations512 Exp(Stations512 value) => new(Vector512.Exp(value.value));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Stations512 Cos(Stations512 value) => new(Vector512.Cos(value.value));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Stations512 Larger(Stations512 left, Stations512 right) => new(Vector512.MaxNative(left.value, right.value));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Stations512 WhereAbove(Stations512 left, Stations512 right, Stations512 then, Stations512 otherwise) =>
        new(Vector512.ConditionalSelect(Vector512.GreaterThan(left.value, right.value), then.value, otherwise.value));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Stations512 WhereKnown(Stations512 value, Stations512 then, Stations512 otherwise) =>
        new(Vector512.ConditionalSelect(Vector512.Equals(value.value, value.value), then.value, otherwise.value));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static bool AnyAtLeast(Stations512 left, Stations512 right) => Vector512.GreaterThanOrEqualAny(left.value, right.value);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static void Store(Stations512 value, ref double first) => value.value.StoreUnsafe(ref first);
}
