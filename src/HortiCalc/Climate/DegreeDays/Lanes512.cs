using System.Runtime.CompilerServices;
using System.Runtime.Intrinsics;

namespace HortiCalc.Climate;

/// <summary>Eight lanes, 512 bits.</summary>
internal readonly struct Lanes512(Vector512<double> lanes) : IExponentialLanes<Lanes512>
{
    private readonly Vector512<double> lanes = lanes;

    public static int Width => Vector512<double>.Count;

    public double First => lanes.ToScalar();

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lanes512 operator +(Lanes512 left, Lanes512 right) => new(left.lanes + right.lanes);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lanes512 operator -(Lanes512 left, Lanes512 right) => new(left.lanes - right.lanes);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lanes512 operator *(Lanes512 left, Lanes512 right) => new(left.lanes * right.lanes);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lanes512 operator /(Lanes512 left, Lanes512 right) => new(left.lanes / right.lanes);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lanes512 All(double value) => new(Vector512.Create(value));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lanes512 Load(ref double start, int index) => new(Vector512.LoadUnsafe(ref start, (nuint)index));

    // Of one instruction each on x86, which gives the second where either is not a number; nothing else has lanes this wide.
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lanes512 Lesser(Lanes512 a, Lanes512 b) => new(Vector512.MinNative(a.lanes, b.lanes));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lanes512 Greater(Lanes512 a, Lanes512 b) => new(Vector512.MaxNative(a.lanes, b.lanes));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lanes512 WhereNotAbove(Lanes512 a, Lanes512 b, Lanes512 yes, Lanes512 no) =>
        new(Vector512.ConditionalSelect(Vector512.LessThanOrEqual(a.lanes, b.lanes), yes.lanes, no.lanes));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lanes512 Root(Lanes512 a) => new(Vector512.Sqrt(a.lanes));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lanes512 Exp(Lanes512 power) => new(Vector512.Exp(power.lanes));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lanes512 Log(Lanes512 a) => new(Vector512.Log(a.lanes));

    public static bool AnyAbove(Lanes512 a, double limit) => Vector512.GreaterThanAny(a.lanes, Vector512.Create(limit));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public void Store(ref double start, int index) => lanes.StoreUnsafe(ref start, (nuint)index);
}
