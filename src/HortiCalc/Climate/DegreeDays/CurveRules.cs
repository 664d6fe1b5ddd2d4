using System.Runtime.CompilerServices;

namespace HortiCalc.Climate;

/// <summary>A rule that reads one course of a day from two extremes, before the floor at zero.</summary>
internal interface ICourse<TLanes>
    where TLanes : struct, ILanes<TLanes>
{
    static abstract bool MayBeNegative { get; }

    TLanes Area(TLanes minimum, TLanes maximum);
}

/// <summary>The area of a course above L, less what the cutoff takes from it above U.</summary>
internal readonly struct AreaAbove<TLanes, TCurve, TCutoff>(TLanes lower, TLanes upper) : ICourse<TLanes>
    where TLanes : struct, ILanes<TLanes>
    where TCurve : struct, ICurve<TLanes>
    where TCutoff : struct, ICutoff
{
    public static bool MayBeNegative => TCutoff.BelowZero;

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public TLanes Area(TLanes minimum, TLanes maximum)
    {
        TLanes mean = Day<TLanes>.Mean(minimum, maximum);
        TLanes perAmplitude = Wave<TLanes>.PerAmplitude(minimum, maximum);
        TLanes area = Wave<TLanes>.Outside(mean, lower) + TCurve.Part(Wave<TLanes>.Inside(minimum, maximum, lower), perAmplitude);
        if (TCutoff.Times == 0)
            return area;

        TLanes inside = Wave<TLanes>.Inside(minimum, maximum, upper);
        TLanes above = Wave<TLanes>.Outside(mean, upper) + TCurve.Part(inside, perAmplitude);
        if (TCutoff.Times == 2)
            return area - (above + above);
        if (!TCutoff.Vertical)
            return area - above;

        TLanes share = TCurve.Share(inside, perAmplitude);
        TLanes shareAbove = TLanes.WhereNotAbove(mean, upper, share, TLanes.All(1) - share);
        return area - above - (upper - lower) * shareAbove;
    }
}

/// <summary>The area of a course below L.</summary>
internal readonly struct AreaBelow<TLanes, TCurve>(TLanes lower) : ICourse<TLanes>
    where TLanes : struct, ILanes<TLanes>
    where TCurve : struct, ICurve<TLanes>
{
    public static bool MayBeNegative => false;

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public TLanes Area(TLanes minimum, TLanes maximum) =>
        Wave<TLanes>.Outside(lower, Day<TLanes>.Mean(minimum, maximum))
        + TCurve.Part(Wave<TLanes>.Inside(minimum, maximum, lower), Wave<TLanes>.PerAmplitude(minimum, maximum));
}

/// <summary>The mean of what the sine of the day gives in the middle of each of the 24 hours.</summary>
internal readonly struct HourlySine<TLanes, TCutoff>(TLanes lower, TLanes upper) : ICourse<TLanes>
    where TLanes : struct, ILanes<TLanes>
    where TCutoff : struct, ICutoff
{
    public static bool MayBeNegative => TCutoff.BelowZero;

    // -cos(15° (h + 1/2)) for the hours from the minimum to the maximum; the hours back are the same again.
    private static ReadOnlySpan<double> Hours =>
    [
        -0.9914448613738104, -0.9238795325112867, -0.7933533402912352, -0.6087614290087207, -0.3826834323650898, -0.13052619222005157,
        0.13052619222005157, 0.3826834323650898, 0.6087614290087207, 0.7933533402912352, 0.9238795325112867, 0.9914448613738104,
    ];

    public TLanes Area(TLanes minimum, TLanes maximum)
    {
        TLanes mean = Day<TLanes>.Mean(minimum, maximum);
        TLanes amplitude = (maximum - minimum) * TLanes.All(0.5);
        TLanes sum = TLanes.All(0);
        foreach (double wave in Hours)
            sum += Rate(mean + amplitude * TLanes.All(wave));
        return sum / TLanes.All(12);
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private TLanes Rate(TLanes temperature)
    {
        TLanes rate = TLanes.Greater(TLanes.All(0), temperature - lower);
        if (TCutoff.Times == 0)
            return rate;
        if (TCutoff.Vertical)
            return TLanes.WhereNotAbove(temperature, upper, rate, temperature - temperature);
        TLanes above = TLanes.Greater(TLanes.All(0), temperature - upper);
        return TCutoff.Times == 2 ? rate - (above + above) : rate - above;
    }
}

/// <summary>One course for the day.</summary>
internal readonly struct SingleCourse<TLanes, TCourse>(TCourse course) : IDayRule<TLanes>
    where TLanes : struct, ILanes<TLanes>
    where TCourse : struct, ICourse<TLanes>
{
    public static bool UsesNextMinimum => false;

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public TLanes Count(TLanes minimum, TLanes maximum, TLanes nextMinimum) => Finished(course.Area(minimum, maximum));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static TLanes Finished(TLanes degreeDays)
    {
        if (!TCourse.MayBeNegative)
            return Day<TLanes>.NotNegative(degreeDays);
        TLanes least = TLanes.All(-DegreeDayKernels.Noise);
        return TLanes.WhereNotAbove(degreeDays, least, degreeDays, Day<TLanes>.NotNegative(degreeDays));
    }
}

/// <summary>
/// Half a course up from the day's minimum, and half a course down to the next day's. Where the next minimum is above the maximum the
/// two change places; where it is missing the day falls back to its own.
/// </summary>
internal readonly struct DoubleCourse<TLanes, TCourse>(TCourse course) : IDayRule<TLanes>
    where TLanes : struct, ILanes<TLanes>
    where TCourse : struct, ICourse<TLanes>
{
    public static bool UsesNextMinimum => true;

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public TLanes Count(TLanes minimum, TLanes maximum, TLanes nextMinimum)
    {
        TLanes next = TLanes.WhereNotAbove(nextMinimum, nextMinimum, nextMinimum, minimum);
        TLanes low = minimum;
        TLanes high = maximum;
        TLanes sum = TLanes.All(0);

        // A loop, and not the course written out twice: the compiler would give up on putting so much in line.
        for (int half = 0; half < 2; half++)
        {
            sum += course.Area(low, high);
            low = TLanes.Lesser(next, maximum);
            high = TLanes.Greater(next, maximum);
        }

        return SingleCourse<TLanes, TCourse>.Finished(sum * TLanes.All(0.5));
    }
}
