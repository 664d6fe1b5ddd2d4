using System.Runtime.CompilerServices;
using System.Runtime.InteropServices;
using System.Runtime.Intrinsics;

namespace HortiCalc.Climate;

/// <summary>
/// The degree days of each day of a run, from its minimum and maximum. No allocation, no state, the same bits whatever the split and the
/// processor, a missing day (NaN) in, a missing day out. Without an upper threshold it is infinite. Any unit of temperature will do.
/// </summary>
internal static class DegreeDayKernels
{
    /// <summary>
    /// A threshold and a day that are the same in Fahrenheit may differ by a few units of the last place in Celsius. What is
    /// not above this is nothing, so that a day exactly at the threshold counts exactly zero.
    /// </summary>
    public const double Noise = 1e-12;

    /// <summary>Counts by the widest lanes that the processor itself has: in software they would be many times slower than plain numbers.</summary>
    /// <returns>Whether every extreme was missing or within the limits, and no maximum below its minimum.</returns>
    public static bool Count(DegreeDayRule rule, UpperCutoff cutoff, in DayRun run) =>
        run.Destination.Length == 1 ? Count<SingleLane>(rule, cutoff, run)
        : Vector512.IsHardwareAccelerated ? Count<Lanes512>(rule, cutoff, run)
        : Vector256.IsHardwareAccelerated ? Count<Lanes256>(rule, cutoff, run)
        : Vector128.IsHardwareAccelerated ? Count<Lanes128>(rule, cutoff, run)
        : Count<SingleLane>(rule, cutoff, run);

    /// <summary>Counts by lanes of one width.</summary>
    public static bool Count<TLanes>(DegreeDayRule rule, UpperCutoff cutoff, in DayRun run)
        where TLanes : struct, ILanes<TLanes>
    {
        TLanes lower = TLanes.All(run.Lower);
        TLanes upper = TLanes.All(run.Upper);
        return rule switch
        {
            DegreeDayRule.SimpleAverage => Run<TLanes, SimpleAverageRule<TLanes>>(new(lower, upper), run),
            DegreeDayRule.CappedMaximum => Run<TLanes, CappedMaximumRule<TLanes>>(new(lower, upper), run),
            DegreeDayRule.Clamped => Run<TLanes, ClampedRule<TLanes>>(new(lower, upper), run),
            DegreeDayRule.CappedAndRaised => Run<TLanes, CappedAndRaisedRule<TLanes>>(new(lower, upper), run),
            DegreeDayRule.ReflectedMaximum => Run<TLanes, ReflectedMaximumRule<TLanes>>(new(lower, upper), run),
            DegreeDayRule.MaximumOnly => Run<TLanes, MaximumOnlyRule<TLanes>>(new(lower, upper), run),
            DegreeDayRule.FourCase => Single<TLanes, AreaAbove<TLanes, FourCaseCurve<TLanes>, NoCutoff>>(new(lower, upper), run),
            DegreeDayRule.SimpleAverageBelow => Single<TLanes, AreaBelow<TLanes, MeanCurve<TLanes>>>(new(lower), run),
            DegreeDayRule.FourCaseBelow => Single<TLanes, AreaBelow<TLanes, FourCaseCurve<TLanes>>>(new(lower), run),
            DegreeDayRule.TriangleBelow => Single<TLanes, AreaBelow<TLanes, TriangleCurve<TLanes>>>(new(lower), run),
            DegreeDayRule.SineBelow => Single<TLanes, AreaBelow<TLanes, SineCurve<TLanes>>>(new(lower), run),
            DegreeDayRule.Triangle => Curve<TLanes, TriangleCurve<TLanes>>(cutoff, lower, upper, run),
            DegreeDayRule.Sine => Curve<TLanes, SineCurve<TLanes>>(cutoff, lower, upper, run),
            DegreeDayRule.DoubleTriangle => DoubleCurve<TLanes, TriangleCurve<TLanes>>(cutoff, lower, upper, run),
            DegreeDayRule.DoubleSine => DoubleCurve<TLanes, SineCurve<TLanes>>(cutoff, lower, upper, run),
            DegreeDayRule.HourlySine => Hourly(cutoff, lower, upper, run),
            _ => throw new NotSupportedException("Hours that were measured are not counted from extremes."),
        };
    }

    private static bool Curve<TLanes, TCurve>(UpperCutoff cutoff, TLanes lower, TLanes upper, in DayRun run)
        where TLanes : struct, ILanes<TLanes>
        where TCurve : struct, ICurve<TLanes> => cutoff switch
        {
            UpperCutoff.Horizontal => Single<TLanes, AreaAbove<TLanes, TCurve, HorizontalCutoff>>(new(lower, upper), run),
            UpperCutoff.Intermediate => Single<TLanes, AreaAbove<TLanes, TCurve, IntermediateCutoff>>(new(lower, upper), run),
            UpperCutoff.IntermediateBelowZero => Single<TLanes, AreaAbove<TLanes, TCurve, IntermediateBelowZeroCutoff>>(new(lower, upper), run),
            UpperCutoff.Vertical => Single<TLanes, AreaAbove<TLanes, TCurve, VerticalCutoff>>(new(lower, upper), run),
            _ => Single<TLanes, AreaAbove<TLanes, TCurve, NoCutoff>>(new(lower, upper), run),
        };

    private static bool DoubleCurve<TLanes, TCurve>(UpperCutoff cutoff, TLanes lower, TLanes upper, in DayRun run)
        where TLanes : struct, ILanes<TLanes>
        where TCurve : struct, ICurve<TLanes> => cutoff switch
        {
            UpperCutoff.Horizontal => Double<TLanes, AreaAbove<TLanes, TCurve, HorizontalCutoff>>(new(lower, upper), run),
            UpperCutoff.Intermediate => Double<TLanes, AreaAbove<TLanes, TCurve, IntermediateCutoff>>(new(lower, upper), run),
            UpperCutoff.IntermediateBelowZero => Double<TLanes, AreaAbove<TLanes, TCurve, IntermediateBelowZeroCutoff>>(new(lower, upper), run),
            UpperCutoff.Vertical => Double<TLanes, AreaAbove<TLanes, TCurve, VerticalCutoff>>(new(lower, upper), run),
            _ => Double<TLanes, AreaAbove<TLanes, TCurve, NoCutoff>>(new(lower, upper), run),
        };

    private static bool Hourly<TLanes>(UpperCutoff cutoff, TLanes lower, TLanes upper, in DayRun run)
        where TLanes : struct, ILanes<TLanes> => cutoff switch
        {
            UpperCutoff.Horizontal => Single<TLanes, HourlySine<TLanes, HorizontalCutoff>>(new(lower, upper), run),
            UpperCutoff.Intermediate => Single<TLanes, HourlySine<TLanes, IntermediateCutoff>>(new(lower, upper), run),
            UpperCutoff.IntermediateBelowZero => Single<TLanes, HourlySine<TLanes, IntermediateBelowZeroCutoff>>(new(lower, upper), run),
            UpperCutoff.Vertical => Single<TLanes, HourlySine<TLanes, VerticalCutoff>>(new(lower, upper), run),
            _ => Single<TLanes, HourlySine<TLanes, NoCutoff>>(new(lower, upper), run),
        };

    private static bool Single<TLanes, TCourse>(TCourse course, in DayRun run)
        where TLanes : struct, ILanes<TLanes>
        where TCourse : struct, ICourse<TLanes> => Run<TLanes, SingleCourse<TLanes, TCourse>>(new(course), run);

    private static bool Double<TLanes, TCourse>(TCourse course, in DayRun run)
        where TLanes : struct, ILanes<TLanes>
        where TCourse : struct, ICourse<TLanes> => Run<TLanes, DoubleCourse<TLanes, TCourse>>(new(course), run);

    private static bool Run<TLanes, TRule>(TRule rule, in DayRun run)
        where TLanes : struct, ILanes<TLanes>
        where TRule : struct, IDayRule<TLanes>
    {
        ref double minima = ref MemoryMarshal.GetReference(run.Minima);
        ref double maxima = ref MemoryMarshal.GetReference(run.Maxima);
        ref double next = ref MemoryMarshal.GetReference(TRule.UsesNextMinimum ? run.NextMinima : run.Minima);
        ref double destination = ref MemoryMarshal.GetReference(run.Destination);
        int count = run.Destination.Length;
        TLanes lowest = TLanes.All(run.Lowest);
        TLanes highest = TLanes.All(run.Highest);
        TLanes worst = TLanes.All(0);

        int day = 0;
        for (; day <= count - TLanes.Width; day += TLanes.Width)
        {
            TLanes minimum = TLanes.Load(ref minima, day);
            TLanes maximum = TLanes.Load(ref maxima, day);
            TLanes nextMinimum = TRule.UsesNextMinimum ? TLanes.Load(ref next, day) : minimum;
            worst = Worst(worst, minimum, maximum, nextMinimum, lowest, highest, TRule.UsesNextMinimum);
            rule.Count(minimum, maximum, nextMinimum).Store(ref destination, day);
        }

        // The days that do not fill the lanes are done one by one by the same operations, so that a split changes no bit.
        for (; day < count; day++)
        {
            TLanes minimum = TLanes.All(Unsafe.Add(ref minima, day));
            TLanes maximum = TLanes.All(Unsafe.Add(ref maxima, day));
            TLanes nextMinimum = TRule.UsesNextMinimum ? TLanes.All(Unsafe.Add(ref next, day)) : minimum;
            worst = Worst(worst, minimum, maximum, nextMinimum, lowest, highest, TRule.UsesNextMinimum);
            Unsafe.Add(ref destination, day) = rule.Count(minimum, maximum, nextMinimum).First;
        }

        return !TLanes.AnyAbove(worst, 0);
    }

    /// <summary>By how much any extreme so far was out of order or out of range. What is missing is in order.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static TLanes Worst<TLanes>(
        TLanes worst, TLanes minimum, TLanes maximum, TLanes nextMinimum, TLanes lowest, TLanes highest, bool usesNextMinimum)
        where TLanes : struct, ILanes<TLanes>
    {
        worst = TLanes.Greater(minimum - maximum, worst);
        worst = TLanes.Greater(lowest - minimum, worst);
        worst = TLanes.Greater(maximum - highest, worst);
        if (!usesNextMinimum)
            return worst;
        worst = TLanes.Greater(lowest - nextMinimum, worst);
        return TLanes.Greater(nextMinimum - highest, worst);
    }
}
