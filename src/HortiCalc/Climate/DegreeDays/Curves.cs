using System.Runtime.CompilerServices;

namespace HortiCalc.Climate;

/// <summary>No course at all: the mean stands for the day.</summary>
internal readonly struct MeanCurve<TLanes> : ICurve<TLanes>
    where TLanes : struct, ILanes<TLanes>
{
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static TLanes Part(TLanes inside, TLanes perAmplitude) => TLanes.All(0);

    public static TLanes Share(TLanes inside, TLanes perAmplitude) => throw new NotSupportedException("A mean has no share of the day.");
}

/// <summary>The four cases of the Met Office: a quarter of the distance to the nearer extreme.</summary>
internal readonly struct FourCaseCurve<TLanes> : ICurve<TLanes>
    where TLanes : struct, ILanes<TLanes>
{
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static TLanes Part(TLanes inside, TLanes perAmplitude) => inside * TLanes.All(0.25);

    public static TLanes Share(TLanes inside, TLanes perAmplitude) => throw new NotSupportedException("The four cases have no share of the day.");
}

/// <summary>Straight up from the minimum to the maximum, and down again.</summary>
internal readonly struct TriangleCurve<TLanes> : ICurve<TLanes>
    where TLanes : struct, ILanes<TLanes>
{
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static TLanes Part(TLanes inside, TLanes perAmplitude) => inside * inside * perAmplitude * TLanes.All(0.25);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static TLanes Share(TLanes inside, TLanes perAmplitude) => inside * perAmplitude * TLanes.All(0.5);
}

/// <summary>A sine wave through the minimum and the maximum.</summary>
internal readonly struct SineCurve<TLanes> : ICurve<TLanes>
    where TLanes : struct, ILanes<TLanes>
{
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static TLanes Part(TLanes inside, TLanes perAmplitude)
    {
        TLanes t = inside * perAmplitude;
        return inside * TLanes.Root(t) * SinePolynomials<TLanes>.Area(t);
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static TLanes Share(TLanes inside, TLanes perAmplitude)
    {
        TLanes t = inside * perAmplitude;
        return TLanes.Root(t) * SinePolynomials<TLanes>.Share(t);
    }
}
