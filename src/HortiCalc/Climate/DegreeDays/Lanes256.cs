using System.Runtime.CompilerServices;
using System.Runtime.Intrinsics;

namespace HortiCalc.Climate;

/// <summary>Four lanes, 256 bits.</summary>
internal readonly struct Lanes256(Vector256<double> lanes) : IExponentialLanes<Lanes256>
{
    private readonly Vector256<double> lanes = lanes;

    public static int Width => Vector256<double>.Count;

    public double First => lanes.ToScalar();

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lanes256 operator +(Lanes256 left, Lanes256 right) => new(left.lanes + right.lanes);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lanes256 operator -(Lanes256 left, Lanes256 right) => new(left.lanes - right.lanes);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lanes256 operator *(Lanes256 left, Lanes256 right) => new(left.lanes * right.lanes);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lanes256 operator /(Lanes256 left, Lanes256 right) => new(left.lanes / right.lanes);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lanes256 All(double value) => new(Vector256.Create(value));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lanes256 Load(ref double start, int index) => new(Vector256.LoadUnsafe(ref start, (nuint)index));

    // Of one instruction each on x86, which gives the second where either is not a number; nothing else has lanes this wide.
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lanes256 Lesser(Lanes256 a, Lanes256 b) => new(Vector256.MinNative(a.lanes, b.lanes));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lanes256 Greater(Lanes256 a, Lanes256 b) => new(Vector256.MaxNative(a.lanes, b.lanes));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lanes256 WhereNotAbove(Lanes256 a, Lanes256 b, Lanes256 yes, Lanes256 no) =>
        new(Vector256.ConditionalSelect(Vector256.LessThanOrEqual(a.lanes, b.lanes), yes.lanes, no.lanes));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lanes256 Root(Lanes256 a) => new(Vector256.Sqrt(a.lanes));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lanes256 Exp(Lanes256 power) => new(Vector256.Exp(power.lanes));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lanes256 Log(Lanes256 a) => new(Vector256.Log(a.lanes));

    public static bool AnyAbove(Lanes256 a, double limit) => Vector256.GreaterThanAny(a.lanes, Vector256.Create(limit));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public void Store(ref double start, int index) => lanes.StoreUnsafe(ref start, (nuint)index);
}
