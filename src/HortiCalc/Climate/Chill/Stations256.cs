using System.Runtime.CompilerServices;
using System.Runtime.Intrinsics;

namespace HortiCalc.Climate;

/// <summary>4 stations at once, where the processor has vectors of 256 bits.</summary>
internal readonly struct Stations256(Vector256<double> value) : IStationLanes<Stations256>
{
    private readonly Vector256<double> value = value;

    public static int Width => Vector256<double>.Count;

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Stations256 All(double value) => new(Vector256.Create(value));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Stations256 Load(ref double first) => new(Vector256.LoadUnsafe(ref first));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Stations256 operator +(Stations256 left, Stations256 right) => new(left.value + right.value);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Stations256 operator -(Stations256 left, Stations256 right) => new(left.value - right.value);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Stations256 operator *(Stations256 left, Stations256 right) => new(left.value * right.value);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Stations256 operator /(Stations256 left, Stations256 right) => new(left.value / right.value);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Stations256 Exp(Stations256 value) => new(Vector256.Exp(value.value));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Stations256 Cos(Stations256 value) => new(Vector256.Cos(value.value));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Stations256 Larger(Stations256 left, Stations256 right) => new(Vector256.MaxNative(left.value, right.value));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Stations256 WhereAbove(Stations256 left, Stations256 right, Stations256 then, Stations256 otherwise) =>
        new(Vector256.ConditionalSelect(Vector256.GreaterThan(left.value, right.value), then.value, otherwise.value));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Stations256 WhereKnown(Stations256 value, Stations256 then, Stations256 otherwise) =>
        new(Vector256.ConditionalSelect(Vector256.Equals(value.value, value.value), then.value, otherwise.value));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static bool AnyAtLeast(Stations256 left, Stations256 right) => Vector256.GreaterThanOrEqualAny(left.value, right.value);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static void Store(Stations256 value, ref double first) => value.value.StoreUnsafe(ref first);
}
