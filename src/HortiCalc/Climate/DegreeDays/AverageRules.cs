using System.Runtime.CompilerServices;

namespace HortiCalc.Climate;

/// <summary>max(0, min(M, U) - L), M the mean of the two.</summary>
internal readonly struct SimpleAverageRule<TLanes>(TLanes lower, TLanes upper) : IDayRule<TLanes>
    where TLanes : struct, ILanes<TLanes>
{
    public static bool UsesNextMinimum => false;

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public TLanes Count(TLanes minimum, TLanes maximum, TLanes nextMinimum) =>
        Day<TLanes>.NotNegative(TLanes.Lesser(upper, Day<TLanes>.Mean(minimum, maximum)) - lower);
}

/// <summary>max(0, M - L), M the mean of the minimum and of the maximum, the latter taken for U where it is above.</summary>
internal readonly struct CappedMaximumRule<TLanes>(TLanes lower, TLanes upper) : IDayRule<TLanes>
    where TLanes : struct, ILanes<TLanes>
{
    public static bool UsesNextMinimum => false;

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public TLanes Count(TLanes minimum, TLanes maximum, TLanes nextMinimum) =>
        Day<TLanes>.NotNegative(Day<TLanes>.Mean(minimum, TLanes.Lesser(upper, maximum)) - lower);
}

/// <summary>M - L, M the mean of the two after each is brought within L and U.</summary>
internal readonly struct ClampedRule<TLanes>(TLanes lower, TLanes upper) : IDayRule<TLanes>
    where TLanes : struct, ILanes<TLanes>
{
    public static bool UsesNextMinimum => false;

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public TLanes Count(TLanes minimum, TLanes maximum, TLanes nextMinimum) =>
        Day<TLanes>.NotNegative(Day<TLanes>.Mean(Within(minimum), Within(maximum)) - lower);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private TLanes Within(TLanes extreme) => TLanes.Greater(lower, TLanes.Lesser(upper, extreme));
}

/// <summary>max(0, M - L), M the mean of the minimum, L where it is below, and of the maximum, U where it is above.</summary>
internal readonly struct CappedAndRaisedRule<TLanes>(TLanes lower, TLanes upper) : IDayRule<TLanes>
    where TLanes : struct, ILanes<TLanes>
{
    public static bool UsesNextMinimum => false;

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public TLanes Count(TLanes minimum, TLanes maximum, TLanes nextMinimum) =>
        Day<TLanes>.NotNegative(Day<TLanes>.Mean(TLanes.Greater(lower, minimum), TLanes.Lesser(upper, maximum)) - lower);
}

/// <summary>max(0, M - L), M the mean of the minimum and of the maximum, the latter thrown back from U by as much as it is above.</summary>
internal readonly struct ReflectedMaximumRule<TLanes>(TLanes lower, TLanes upper) : IDayRule<TLanes>
    where TLanes : struct, ILanes<TLanes>
{
    public static bool UsesNextMinimum => false;

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public TLanes Count(TLanes minimum, TLanes maximum, TLanes nextMinimum) =>
        Day<TLanes>.NotNegative(Day<TLanes>.Mean(minimum, Day<TLanes>.Reflected(maximum, upper)) - lower);
}

/// <summary>max(0, maximum - L), the maximum thrown back from U by as much as it is above. A missing minimum makes the day missing too.</summary>
internal readonly struct MaximumOnlyRule<TLanes>(TLanes lower, TLanes upper) : IDayRule<TLanes>
    where TLanes : struct, ILanes<TLanes>
{
    public static bool UsesNextMinimum => false;

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public TLanes Count(TLanes minimum, TLanes maximum, TLanes nextMinimum) =>
        Day<TLanes>.NotNegative(Day<TLanes>.Reflected(maximum, upper) - lower + (minimum - minimum));
}
