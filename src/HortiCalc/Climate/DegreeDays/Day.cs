using System.Runtime.CompilerServices;

namespace HortiCalc.Climate;

/// <summary>The arithmetic that the rules share.</summary>
internal static class Day<TLanes>
    where TLanes : struct, ILanes<TLanes>
{
    /// <summary>(a + b) / 2.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static TLanes Mean(TLanes a, TLanes b) => (a + b) * TLanes.All(0.5);

    /// <summary>The temperature, or as far below a limit as it is above.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static TLanes Reflected(TLanes temperature, TLanes limit) => TLanes.Lesser(temperature, limit + limit - temperature);

    /// <summary>The number, or zero where it is not above rounding; a missing day stays missing.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static TLanes NotNegative(TLanes degreeDays) =>
        TLanes.WhereNotAbove(degreeDays, TLanes.All(DegreeDayKernels.Noise), TLanes.All(0), degreeDays);
}
