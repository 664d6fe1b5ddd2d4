using System.Runtime.CompilerServices;
using System.Runtime.Intrinsics;

namespace HortiCalc.Climate;

/// <summary>Two lanes, 128 bits.</summary>
internal readonly struct Lanes128(Vector128<double> lanes) : IExponentialLanes<Lanes128>
{
    private readonly Vector128<double> lanes = lanes;

    public static int Width => Vector128<double>.Count;

    public double First => lanes.ToScalar();

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lanes128 operator +(Lanes128 left, Lanes128 right) => new(left.lanes + right.lanes);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lanes128 operator -(Lanes128 left, Lanes128 right) => new(left.lanes - right.lanes);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lanes128 operator *(Lanes128 left, Lanes128 right) => new(left.lanes * right.lanes);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lanes128 operator /(Lanes128 left, Lanes128 right) => new(left.lanes / right.lanes);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lanes128 All(double value) => new(Vector128.Create(value));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lanes128 Load(ref double start, int index) => new(Vector128.LoadUnsafe(ref start, (nuint)index));

    // Not the native minimum and maximum: on Arm they give the one that is not a number, whichever it is.
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lanes128 Lesser(Lanes128 a, Lanes128 b) => new(Vector128.ConditionalSelect(Vector128.LessThan(a.lanes, b.lanes), a.lanes, b.lanes));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lanes128 Greater(Lanes128 a, Lanes128 b) => new(Vector128.ConditionalSelect(Vector128.GreaterThan(a.lanes, b.lanes), a.lanes, b.lanes));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lanes128 WhereNotAbove(Lanes128 a, Lanes128 b, Lanes128 yes, Lanes128 no) =>
        new(Vector128.ConditionalSelect(Vector128.LessThanOrEqual(a.lanes, b.lanes), yes.lanes, no.lanes));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lanes128 Root(Lanes128 a) => new(Vector128.Sqrt(a.lanes));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lanes128 Exp(Lanes128 power) => new(Vector128.Exp(power.lanes));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lanes128 Log(Lanes128 a) => new(Vector128.Log(a.lanes));

    public static bool AnyAbove(Lanes128 a, double limit) => Vector128.GreaterThanAny(a.lanes, Vector128.Create(limit));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public void Store(ref double start, int index) => lanes.StoreUnsafe(ref start, (nuint)index);
}
