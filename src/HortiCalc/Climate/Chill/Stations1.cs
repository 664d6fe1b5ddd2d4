using System.Runtime.CompilerServices;

namespace HortiCalc.Climate;

/// <summary>One station at a time, for processors without vectors and for single series.</summary>
internal readonly struct Stations1(double value) : IStationLanes<Stations1>
{
    private readonly double value = value;

    public static int Width => 1;

    public double Value => value;

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Stations1 All(double value) => new(value);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Stations1 Load(ref double first) => new(first);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Stations1 operator +(Stations1 left, Stations1 right) => new(left.value + right.value);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Stations1 operator -(Stations1 left, Stations1 right) => new(left.value - right.value);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Stations1 operator *(Stations1 left, Stations1 right) => new(left.value * right.value);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Stations1 operator /(Stations1 left, Stations1 right) => new(left.value / right.value);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Stations1 Exp(Stations1 value) => new(Math.Exp(value.value));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Stations1 Cos(Stations1 value) => new(Math.Cos(value.value));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Stations1 Larger(Stations1 left, Stations1 right) => new(left.value > right.value ? left.value : right.value);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Stations1 WhereAbove(Stations1 left, Stations1 right, Stations1 then, Stations1 otherwise) => left.value > right.value ? then : otherwise;

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Stations1 WhereKnown(Stations1 value, Stations1 then, Stations1 otherwise) => double.IsNaN(value.value) ? otherwise : then;

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static bool AnyAtLeast(Stations1 left, Stations1 right) => left.value >= right.value;

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static void Store(Stations1 value, ref double first) => first = value.value;
}
