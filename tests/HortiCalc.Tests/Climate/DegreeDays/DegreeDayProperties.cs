using FsCheck.Xunit;
using HortiCalc.Climate;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Tests.Climate;

[Properties(Arbitrary = [typeof(DegreeDayArbitraries)], MaxTest = 300)]
public class DegreeDayProperties
{
    private const double Rounding = 1e-11;

    // Where a threshold lies in the last digit of the day's extreme, the time beyond it is the square root of that digit; only the vertical
    // cutoff multiplies that time by whole degrees.
    private static double AreaRounding(UpperCutoff cutoff) => cutoff == UpperCutoff.Vertical ? 1e-6 : 1e-10;

    [Property]
    public void Sine_AnyDayAndCutoff_IsTheAreaUnderTheCurve(AnyDay day) => Assert.All(Enum.GetValues<UpperCutoff>(), cutoff =>
        Assert.Equal(DayQuadrature.Sine(day.Minimum, day.Maximum, day.Lower, day.Upper, cutoff), day.Count(DegreeDayMethod.SingleSine, cutoff), AreaRounding(cutoff)));

    [Property]
    public void Triangle_AnyDayAndCutoff_IsTheAreaUnderTheSides(AnyDay day) => Assert.All(Enum.GetValues<UpperCutoff>(), cutoff =>
        Assert.Equal(DayQuadrature.Triangle(day.Minimum, day.Maximum, day.Lower, day.Upper, cutoff), day.Count(DegreeDayMethod.SingleTriangle, cutoff), AreaRounding(cutoff)));

    [Property]
    public void DoubleMethods_AnyTwoDays_AreHalfTheDayUpAndHalfTheDayDown(AnyDay day, AnyDay next) => Assert.All(Enum.GetValues<UpperCutoff>(), cutoff =>
    {
        static double Floor(double area, UpperCutoff cutoff) => cutoff == UpperCutoff.Intermediate ? Math.Max(0, area) : area;
        UpperCutoff raw = cutoff == UpperCutoff.Intermediate ? UpperCutoff.IntermediateBelowZero : cutoff;
        double low = Math.Min(day.Maximum, next.Minimum);
        double high = Math.Max(day.Maximum, next.Minimum);
        double sine = (DayQuadrature.Sine(day.Minimum, day.Maximum, day.Lower, day.Upper, raw)
            + DayQuadrature.Sine(low, high, day.Lower, day.Upper, raw)) / 2;
        double triangle = (DayQuadrature.Triangle(day.Minimum, day.Maximum, day.Lower, day.Upper, raw)
            + DayQuadrature.Triangle(low, high, day.Lower, day.Upper, raw)) / 2;

        Assert.Equal(Floor(sine, cutoff), Doubled(DegreeDayMethod.DoubleSine), AreaRounding(cutoff));
        Assert.Equal(Floor(triangle, cutoff), Doubled(DegreeDayMethod.DoubleTriangle), AreaRounding(cutoff));

        double Doubled(DegreeDayMethod method) => DegreeDays.OfDay(
            Temperature.FromDegreesCelsius(day.Minimum), Temperature.FromDegreesCelsius(day.Maximum), day.Thresholds, method, cutoff,
            Temperature.FromDegreesCelsius(next.Minimum)).CelsiusDays;
    });

    [Property]
    public void HourlySine_AnyDayAndCutoff_IsTheMeanOfTheHours(AnyDay day) => Assert.All(Enum.GetValues<UpperCutoff>(), cutoff =>
    {
        double[] hours = [.. Enumerable.Range(0, 24).Select(
            hour => day.Mean - (day.Maximum - day.Minimum) / 2 * Math.Cos(2 * Math.PI * (hour + 0.5) / 24))];
        bool grazes = hours.Any(hour => Math.Abs(hour - day.Upper) < 1e-9);

        ThermalTime summed = DegreeDays.OfHours(hours, UnitsNet.Units.TemperatureUnit.DegreeCelsius, day.Thresholds, cutoff);

        if (cutoff != UpperCutoff.Vertical || !grazes)
            Assert.Equal(summed.CelsiusDays, day.Count(DegreeDayMethod.HourlySine, cutoff), 1e-10);
    });

    [Property]
    public void Intermediate_AnyDay_IsTheSignedOneWithoutItsNegatives(AnyDay day) => Assert.All(
        DegreeDayMethod.All.Where(method => method.Cutoffs.Contains(UpperCutoff.IntermediateBelowZero)),
        method => Assert.Equal(
            Math.Max(0, day.Count(method, UpperCutoff.IntermediateBelowZero)), day.Count(method, UpperCutoff.Intermediate), Rounding));

    [Property]
    public void AnyMethod_DayWhollyBetweenTheThresholds_IsTheMeanLessTheBase(AnyDay day, AnyMethod any)
    {
        AnyDay between = day with { Lower = day.Minimum - 0.5, Upper = day.Maximum + 0.5 };
        double counting = any.Method == DegreeDayMethod.MaximumOnly ? between.Maximum : between.Mean;

        Assert.Equal(counting - between.Lower, between.Count(any.Method, any.Cutoff), Rounding);
    }

    [Property]
    public void AnyMethod_DayAtOrBelowTheBase_IsExactlyZero(AnyDay day, AnyMethod any)
    {
        AnyDay cold = day with { Lower = day.Maximum, Upper = day.Maximum + 1 };

        Assert.Equal(0, cold.Count(any.Method, any.Cutoff));
    }

    [Property]
    public void AnyMethod_HigherBase_NeverCountsMore(AnyDay day, AnyMethod any, byte tenths)
    {
        AnyDay higher = day with { Lower = Math.Min(day.Lower + tenths / 10.0, day.Upper - 0.01) };

        Assert.True(higher.Count(any.Method, any.Cutoff) <= day.Count(any.Method, any.Cutoff) + Rounding);
    }

    [Property]
    public void AnyMethod_HigherUpperThreshold_NeverCountsLess(AnyDay day, AnyMethod any, byte tenths)
    {
        AnyDay higher = day with { Upper = Math.Min(day.Upper + tenths / 10.0, 60) };

        Assert.True(higher.Count(any.Method, any.Cutoff) >= day.Count(any.Method, any.Cutoff) - Rounding);
    }

    [Property]
    public void AnyMethod_WarmerDay_NeverCountsLess(AnyDay day, AnyMethod any, byte minimumHundredths, byte maximumHundredths)
    {
        double maximum = Math.Min(day.Maximum + maximumHundredths / 100.0, 60);
        UpperCutoff cutoff = any.Cutoff == UpperCutoff.None || !any.Method.Cutoffs.Contains(UpperCutoff.Horizontal) ? UpperCutoff.None : UpperCutoff.Horizontal;
        if (!any.Method.Cutoffs.Contains(cutoff))
            return;
        AnyDay warmer = day with { Minimum = Math.Min(day.Minimum + minimumHundredths / 100.0, maximum), Maximum = maximum };

        Assert.True(warmer.Count(any.Method, cutoff) >= day.Count(any.Method, cutoff) - Rounding);
    }

    [Property]
    public void AnyMethod_InFahrenheit_CountsTheSame(AnyDay day, AnyMethod any)
    {
        static Temperature Fahrenheit(double celsius) => Temperature.FromDegreesFahrenheit(celsius * 1.8 + 32);

        ThermalTime counted = DegreeDays.OfDay(
            Fahrenheit(day.Minimum), Fahrenheit(day.Maximum), new DegreeDayThresholds(Fahrenheit(day.Lower), Fahrenheit(day.Upper)), any.Method, any.Cutoff);

        Assert.Equal(day.Count(any.Method, any.Cutoff) * 1.8, counted.FahrenheitDays, 1e-10);
    }

    [Property]
    public void AnyMethod_AllTemperaturesShifted_CountsTheSame(AnyDay day, AnyMethod any)
    {
        AnyDay shifted = new(day.Minimum - 7.25, day.Maximum - 7.25, day.Lower - 7.25, day.Upper - 7.25);

        Assert.Equal(day.Count(any.Method, any.Cutoff), shifted.Count(any.Method, any.Cutoff), Rounding);
    }

    [Property]
    public void AnyMethod_AllTemperaturesScaled_CountsInProportion(AnyDay day, AnyMethod any)
    {
        AnyDay scaled = new(day.Minimum / 4, day.Maximum / 4, day.Lower / 4, day.Upper / 4);

        Assert.Equal(day.Count(any.Method, any.Cutoff) / 4, scaled.Count(any.Method, any.Cutoff), Rounding);
    }

    [Property]
    public void AnyMethod_AnyDay_CountsFromNothingUpToTheMaximumLessTheBase(AnyDay day, AnyMethod any)
    {
        double counted = day.Count(any.Method, any.Cutoff);

        Assert.InRange(counted, 0, Math.Max(0, day.Maximum - day.Lower) + Rounding);
    }

    [Property]
    public void BothExtremesClamped_AnyDay_CountsNoMoreThanTheDistanceOfTheThresholds(AnyDay day)
    {
        DegreeDayMethod[] bounded = [DegreeDayMethod.SimpleAverage, DegreeDayMethod.ClampedAverage, DegreeDayMethod.SingleTriangle, DegreeDayMethod.SingleSine];

        Assert.All(bounded, method => Assert.True(day.Count(method, UpperCutoff.Horizontal) <= day.Upper - day.Lower + Rounding));
    }

    [Property]
    public void HorizontalCutoff_MaximumBelowIt_ChangesNothing(AnyDay day, AnyMethod any)
    {
        AnyDay mild = day with { Lower = day.Maximum - 3, Upper = day.Maximum };

        Assert.All(
            any.Method.Cutoffs.Where(_ => any.Method.Cutoffs.Contains(UpperCutoff.None)),
            cutoff => Assert.Equal(mild.Count(any.Method, UpperCutoff.None), mild.Count(any.Method, cutoff), Rounding));
    }

    [Property]
    public void WithoutCutoff_Curves_LieBetweenTheTwoAverages(AnyDay day)
    {
        double floorOnMean = day.Count(DegreeDayMethod.SimpleAverage, UpperCutoff.None);
        double floorOnExtremes = day.Count(DegreeDayMethod.ClampedAverage, UpperCutoff.None);
        double triangle = day.Count(DegreeDayMethod.SingleTriangle, UpperCutoff.None);
        double sine = day.Count(DegreeDayMethod.SingleSine, UpperCutoff.None);

        Assert.True(floorOnMean <= triangle + Rounding);
        Assert.True(triangle <= sine + Rounding);
        Assert.True(sine <= floorOnExtremes + Rounding);
    }

    [Property]
    public void CappedAndRaisedAverage_AnyDay_PartsFromTheClampedOnlyWhereTheMinimumIsAboveTheUpperThreshold(AnyDay day)
    {
        double capped = day.Count(DegreeDayMethod.CappedAndRaisedAverage, UpperCutoff.Horizontal);
        double clamped = day.Count(DegreeDayMethod.ClampedAverage, UpperCutoff.Horizontal);

        Assert.Equal(Math.Max(0, day.Minimum - day.Upper) / 2, capped - clamped, Rounding);
    }

    [Property]
    public void Curves_AreaAboveLessAreaBelow_IsTheMeanLessTheThreshold(AnyDay day)
    {
        (DegreeDayMethod Above, DegreeDayMethod Below)[] pairs =
        [
            (DegreeDayMethod.SingleSine, DegreeDayMethod.SingleSineBelow),
            (DegreeDayMethod.SingleTriangle, DegreeDayMethod.SingleTriangleBelow),
            (DegreeDayMethod.FourCase, DegreeDayMethod.FourCaseBelow),
            (DegreeDayMethod.SimpleAverage, DegreeDayMethod.SimpleAverageBelow),
        ];

        Assert.All(pairs, pair => Assert.Equal(
            day.Mean - day.Lower, day.Count(pair.Above, UpperCutoff.None) - day.Count(pair.Below, UpperCutoff.None), Rounding));
    }

    [Property]
    public void Kernels_AnySplitOfTheRun_GiveTheSameBits(AnyRecord record, AnyMethod any, byte cut)
    {
        int split = cut % record.Days.Count;
        ReadOnlySpan<double> minima = record.Days.MinimaCelsius;
        ReadOnlySpan<double> maxima = record.Days.MaximaCelsius;
        double[] whole = new double[minima.Length];
        double[] parts = new double[minima.Length];

        any.Method.Count(minima, maxima, Spring, any.Cutoff, whole);
        any.Method.Count(minima[..split], maxima[..split], Spring, any.Cutoff, parts.AsSpan(0, split));
        any.Method.Count(minima[split..], maxima[split..], Spring, any.Cutoff, parts.AsSpan(split));

        Assert.True(whole.AsSpan().SequenceEqual(parts));
    }

    [Property]
    public void Accumulate_SplitInTwo_AddsUpToTheWhole(AnyRecord record, AnyMethod any, byte cut)
    {
        DateOnly secondStart = record.Days.Start.AddDays(1 + cut % (record.Days.Count - 1));

        ThermalTime whole = Sum(record.Days, any).Total;
        ThermalTime first = Sum(record.Days.Between(record.Days.Start, secondStart.AddDays(-1)), any).Total;
        ThermalTime second = Sum(record.Days, any, secondStart).Total;

        Assert.Equal(whole.CelsiusDays, (first + second).CelsiusDays, 1e-9);
    }

    [Property]
    public void Accumulate_AnyRecord_RunningSumIsTheSumOfTheDaysSoFar(AnyRecord record, AnyMethod any)
    {
        DegreeDaySeries series = Sum(record.Days, any);

        double sum = 0;
        foreach (DegreeDay day in series.Days)
        {
            sum += day.Value?.CelsiusDays ?? 0;
            Assert.Equal(sum, day.Sum.CelsiusDays, 1e-9);
            Assert.Equal(day.Value is null, series.Missing.Contains(day.Date));
        }

        Assert.Equal(series.Total, series.SumOn(series.End));
    }

    [Property]
    public void Accumulate_AnyRecord_EachDayCountsAsThatDayAlone(AnyRecord record, AnyMethod any)
    {
        DegreeDaySeries series = Sum(record.Days, any);

        Assert.All(record.Days.KnownDays(), day => Assert.Equal(
            DegreeDays.OfDay(day.Minimum, day.Maximum, Spring, any.Method, any.Cutoff), series[day.Date].Value));
    }

    [Property]
    public void DateReached_AnyRequirement_IsTheFirstDayThatHasIt(AnyRecord record, AnyMethod any, byte percent)
    {
        DegreeDaySeries series = Sum(record.Days, any);
        ThermalTime requirement = series.Total * (percent / 200.0);

        DateOnly? reached = series.DateReached(requirement);

        if (requirement > series.Total)
        {
            Assert.True(reached is null || series.Total < ThermalTime.FromCelsiusDays(1e-6));
            return;
        }

        Assert.NotNull(reached);
        Assert.True(series.SumOn(reached.Value).CelsiusDays >= requirement.CelsiusDays - 1e-9);
        Assert.True(reached == series.Start || series.SumOn(reached.Value.AddDays(-1)).CelsiusDays < requirement.CelsiusDays);
    }

    [Property]
    public void Accumulate_DaysThatLackOneTemperature_CountAsThoseThatLackBoth(AnyRecord record, AnyMethod any, bool interpolated)
    {
        DailyTemperatures whole = DailyTemperatures.FromDays(record.Days.KnownDays());
        MissingDays missingDays = interpolated ? MissingDays.Interpolated : MissingDays.LeftOut;

        Assert.Equal(
            DegreeDays.Accumulate(whole, Spring, any.Method, any.Cutoff, missingDays: missingDays, maximumMissing: Ratio.FromPercent(100)),
            DegreeDays.Accumulate(record.Days, Spring, any.Method, any.Cutoff, missingDays: missingDays, maximumMissing: Ratio.FromPercent(100)));
    }

    [Property]
    public void MissingDays_LeftOut_NeverCountMoreThanInterpolated(AnyRecord record, AnyMethod any)
    {
        DegreeDaySeries leftOut = Sum(record.Days, any);
        DegreeDaySeries interpolated = DegreeDays.Accumulate(
            record.Days, Spring, any.Method, any.Cutoff, missingDays: MissingDays.Interpolated, maximumMissing: Ratio.FromPercent(100));

        Assert.True(leftOut.Total <= interpolated.Total);
        Assert.Equal(leftOut.Missing, interpolated.Missing);
        Assert.Equal(record.Days.MissingCount, leftOut.LeftOutCount);
        Assert.Equal(0, interpolated.LeftOutCount);
    }

    private static DegreeDayThresholds Spring { get; } = new(Temperature.FromDegreesCelsius(7), Temperature.FromDegreesCelsius(24));

    private static DegreeDaySeries Sum(DailyTemperatures days, AnyMethod any, DateOnly? from = null) =>
        DegreeDays.Accumulate(days, Spring, any.Method, any.Cutoff, from, maximumMissing: Ratio.FromPercent(99));
}
