using System.Runtime.CompilerServices;

namespace HortiCalc.Climate;

/// <summary>Where a temperature lies in the range of a day; <see cref="ICurve{TLanes}"/> says what for.</summary>
internal static class Wave<TLanes>
    where TLanes : struct, ILanes<TLanes>
{
    // Any positive number will do: where the day is constant it is multiplied by zero.
    private const double NoAmplitude = 1e-300;

    /// <summary>max(0, a - b); missing where either is.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static TLanes Outside(TLanes a, TLanes b) => TLanes.Greater(TLanes.All(0), a - b);

    /// <summary>How far a temperature is from the nearer extreme; zero where it is not between them.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static TLanes Inside(TLanes minimum, TLanes maximum, TLanes temperature) =>
        TLanes.Greater(TLanes.Lesser(maximum - temperature, temperature - minimum), TLanes.All(0));

    /// <summary>One over half the range of the day.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static TLanes PerAmplitude(TLanes minimum, TLanes maximum) =>
        TLanes.All(2) / TLanes.Greater(maximum - minimum, TLanes.All(NoAmplitude));
}
