using FsCheck;
using FsCheck.Fluent;
using FsCheck.Xunit;
using HortiCalc.Climate;
using HortiCalc.Evidence;
using HortiCalc.Json;
using HortiCalc.Units;
using UnitsNet;
using UnitsNet.Units;

namespace HortiCalc.Tests.Climate;

/// <summary>A few days of hourly readings that begin at any hour, in hundredths of a degree Celsius.</summary>
public sealed record AnyWholeDays(DateTime Start, double[] Celsius)
{
    public HourlyTemperatures Series => HourlyTemperatures.Create(Start, Celsius, TemperatureUnit.DegreeCelsius);
}

public static class MeasuredHoursArbitraries
{
    public static Arbitrary<AnyWholeDays> Hours() => (
        from day in Gen.Choose(0, 2000)
        from days in Gen.Choose(1, 6)
        from hundredths in Gen.Choose(-1000, 4500).ListOf(days * 24)
        select new AnyWholeDays(new DateTime(2020, 1, 1).AddDays(day), [.. hundredths.Select(value => value / 100.0)])).ToArbitrary();
}

/// <summary>Degree days from readings of each hour.</summary>
[Properties(Arbitrary = [typeof(MeasuredHoursArbitraries), typeof(DegreeDayArbitraries)], MaxTest = 100)]
public class MeasuredHoursTests
{
    private static readonly DegreeDayThresholds Maize = new(Temperature.FromDegreesCelsius(10), Temperature.FromDegreesCelsius(30));

    public static TheoryData<UpperCutoff> Cutoffs => [.. Enum.GetValues<UpperCutoff>()];

    [Property]
    public void AccumulateHours_WholeDays_IsOfHoursDayByDay(AnyWholeDays hours) => Assert.All(Enum.GetValues<UpperCutoff>(), cutoff =>
    {
        DegreeDaySeries series = DegreeDays.AccumulateHours(hours.Series, Maize, cutoff);

        Assert.Equal(hours.Celsius.Length / 24, series.Count);
        Assert.All(series.Days.Index(), day => Assert.Equal(
            DegreeDays.OfHours(hours.Celsius.AsSpan(day.Index * 24, 24), TemperatureUnit.DegreeCelsius, Maize, cutoff), day.Item.Value));
    });

    [Property]
    public void AccumulateHours_ADayDrawnByTheSine_IsTheMethodThatReadsIt(AnyDay day)
    {
        double[] drawn = [.. Enumerable.Range(0, 24).Select(
            hour => day.Mean - (day.Maximum - day.Minimum) / 2 * Math.Cos(2 * Math.PI * (hour + 0.5) / 24))];

        double counted = DegreeDays.AccumulateHours(Series(new DateTime(2024, 6, 1), drawn), day.Thresholds, UpperCutoff.Horizontal).Total.CelsiusDays;

        Assert.Equal(day.Count(DegreeDayMethod.HourlySine, UpperCutoff.Horizontal), counted, 1e-10);
    }

    [Property]
    public void AccumulateHours_Fahrenheit_IsTheSameHeat(AnyWholeDays hours)
    {
        double[] fahrenheit = [.. hours.Celsius.Select(celsius => celsius * 1.8 + 32)];

        ThermalTime total = DegreeDays.AccumulateHours(
            HourlyTemperatures.Create(hours.Start, fahrenheit, TemperatureUnit.DegreeFahrenheit), Maize, UpperCutoff.Horizontal).Total;

        Assert.Equal(DegreeDays.AccumulateHours(hours.Series, Maize, UpperCutoff.Horizontal).Total.CelsiusDays, total.CelsiusDays, 1e-9);
    }

    [Property]
    public void AccumulateHours_AnyCutoff_NeverCountsMoreThanAMilderOne(AnyWholeDays hours)
    {
        double none = Total(UpperCutoff.None);
        double horizontal = Total(UpperCutoff.Horizontal);

        Assert.True(none >= horizontal - 1e-9);
        Assert.True(horizontal >= Total(UpperCutoff.Vertical) - 1e-9);
        Assert.True(horizontal >= Total(UpperCutoff.IntermediateBelowZero) - 1e-9);
        Assert.True(Total(UpperCutoff.Intermediate) >= Total(UpperCutoff.IntermediateBelowZero) - 1e-9);

        double Total(UpperCutoff cutoff) => DegreeDays.AccumulateHours(hours.Series, Maize, cutoff).Total.CelsiusDays;
    }

    [Property]
    public void AccumulateHours_WithoutCutoff_IsNeverBelowTheSimpleAverageOfTheHours(AnyWholeDays hours)
    {
        double ofMeans = hours.Celsius.Chunk(24).Sum(day => Math.Max(0, day.Average() - 10));

        Assert.True(DegreeDays.AccumulateHours(hours.Series, Maize, UpperCutoff.None).Total.CelsiusDays >= ofMeans - 1e-9);
    }

    [Property]
    public void AccumulateHours_Split_AddsUp(AnyWholeDays hours)
    {
        int days = hours.Celsius.Length / 24;
        DateOnly first = DateOnly.FromDateTime(hours.Start);
        DegreeDaySeries whole = DegreeDays.AccumulateHours(hours.Series, Maize, UpperCutoff.Vertical);
        DegreeDaySeries rest = DegreeDays.AccumulateHours(hours.Series, Maize, UpperCutoff.Vertical, from: first.AddDays(days / 2));

        double before = whole.Days.Take(days / 2).Sum(day => day.Value!.Value.CelsiusDays);

        Assert.Equal(whole.Total.CelsiusDays, before + rest.Total.CelsiusDays, 1e-9);
    }

    [Property]
    public void AccumulateHours_OneHourMissing_LosesItsDayAlone(AnyWholeDays hours, PositiveInt which)
    {
        if (hours.Celsius.Length == 24)
            return;
        int gap = which.Get % hours.Celsius.Length;
        double[] gappy = [.. hours.Celsius];
        gappy[gap] = double.NaN;
        DegreeDaySeries whole = DegreeDays.AccumulateHours(hours.Series, Maize, UpperCutoff.Horizontal);

        DegreeDaySeries series = DegreeDays.AccumulateHours(
            Series(hours.Start, gappy), Maize, UpperCutoff.Horizontal, maximumMissing: Ratio.FromPercent(50));

        DateOnly lost = Assert.Single(series.Missing);
        Assert.Equal(DateOnly.FromDateTime(hours.Start.AddHours(gap)), lost);
        Assert.Null(series[lost].Value);
        Assert.Equal(1, series.LeftOutCount);
        Assert.Contains(series.Cautions, caution => caution.Code == "degree-days.missing-left-out");
        Assert.All(whole.Days.Where(day => day.Date != lost), day => Assert.Equal(day.Value, series[day.Date].Value));
    }

    // 12 hours at 9 °C count nothing, 6 at 16 count 6 each, 6 at 34 count 24, 20, 16, 16 or nothing each.
    [Theory]
    [InlineData(UpperCutoff.None, 7.5)]
    [InlineData(UpperCutoff.Horizontal, 6.5)]
    [InlineData(UpperCutoff.Intermediate, 5.5)]
    [InlineData(UpperCutoff.IntermediateBelowZero, 5.5)]
    [InlineData(UpperCutoff.Vertical, 1.5)]
    public void AccumulateHours_WrittenOut_IsATwentyFourthOfTheSum(UpperCutoff cutoff, double expected)
    {
        double[] readings = [.. Enumerable.Repeat(9.0, 12), .. Enumerable.Repeat(16.0, 6), .. Enumerable.Repeat(34.0, 6)];

        Assert.Equal(expected, DegreeDays.AccumulateHours(Series(new DateTime(2024, 6, 1), readings), Maize, cutoff).Total.CelsiusDays, 1e-12);
    }

    [Theory]
    [InlineData(UpperCutoff.Intermediate, 0)]
    [InlineData(UpperCutoff.IntermediateBelowZero, -8)]
    [InlineData(UpperCutoff.Vertical, 0)]
    public void AccumulateHours_SoHotThatIntermediateIsNegative_IsAsTheCutoffSays(UpperCutoff cutoff, double expected)
    {
        DegreeDayThresholds cool = new(Temperature.FromDegreesCelsius(10), Temperature.FromDegreesCelsius(20));
        HourlyTemperatures hours = Series(new DateTime(2024, 6, 1), [.. Enumerable.Repeat(38.0, 24)]);

        Assert.Equal(expected, DegreeDays.AccumulateHours(hours, cool, cutoff).Total.CelsiusDays, 1e-12);
    }

    [Theory]
    [InlineData(10, 0)]
    [InlineData(30, 20)]
    public void AccumulateHours_ExactlyAtAThreshold_IsAsForADay(double celsius, double expected)
    {
        HourlyTemperatures hours = Series(new DateTime(2024, 6, 1), [.. Enumerable.Repeat(celsius, 24)]);

        Assert.Equal(expected, DegreeDays.AccumulateHours(hours, Maize, UpperCutoff.Vertical).Total.CelsiusDays);
    }

    [Fact]
    public void AccumulateHours_RecordFromNoonToNoon_ReportsBothEndsAsMissing()
    {
        HourlyTemperatures hours = Series(new DateTime(2024, 2, 28, 12, 0, 0), [.. Enumerable.Repeat(15.0, 48)]);

        DegreeDaySeries series = DegreeDays.AccumulateHours(hours, Maize, UpperCutoff.None, maximumMissing: Ratio.FromPercent(70));

        Assert.Equal([new DateOnly(2024, 2, 28), new DateOnly(2024, 3, 1)], series.Missing);
        Assert.Equal(5, series.Total.CelsiusDays, 1e-12);
        Assert.Equal(DegreeDayMethod.MeasuredHours, series.Method);
    }

    [Fact]
    public void AccumulateHours_MoreMissingThanAccepted_IsRefusedWithTheNumbers()
    {
        HourlyTemperatures hours = Series(new DateTime(2024, 2, 28, 12, 0, 0), [.. Enumerable.Repeat(15.0, 48)]);

        ArgumentException refused = Assert.Throws<ArgumentException>("hours", () => DegreeDays.AccumulateHours(hours, Maize, UpperCutoff.None));

        Assert.Contains(
            "2 of 3 days without all 24 readings from 2024-02-28 to 2024-03-01; allowed: up to 5 %", refused.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void AccumulateHours_NoWholeDay_IsRefusedWhateverIsAccepted() => Assert.Throws<ArgumentException>("hours", () => DegreeDays.AccumulateHours(
        Series(new DateTime(2024, 6, 1, 1, 0, 0), [.. Enumerable.Repeat(15.0, 23)]), Maize, UpperCutoff.None, maximumMissing: Ratio.FromPercent(100)));

    [Fact]
    public void AccumulateHours_FirstDayOutsideTheRecord_IsRefused() => Assert.Throws<ArgumentOutOfRangeException>("from", () => DegreeDays.AccumulateHours(
        Series(new DateTime(2024, 6, 1), new double[24]), Maize, UpperCutoff.None, from: new DateOnly(2024, 6, 2)));

    [Fact]
    public void AccumulateHours_CutoffWithoutItsThreshold_IsRefused() => Assert.Throws<ArgumentException>("thresholds", () => DegreeDays.AccumulateHours(
        Series(new DateTime(2024, 6, 1), new double[24]), new DegreeDayThresholds(Temperature.FromDegreesCelsius(10)), UpperCutoff.Vertical));

    [Theory]
    [MemberData(nameof(Cutoffs))]
    public void MeasuredHours_AskedForADayByItsExtremes_IsRefused(UpperCutoff cutoff)
    {
        ArgumentException refused = Assert.Throws<ArgumentException>("method", () => DegreeDays.OfDay(
            Temperature.FromDegreesCelsius(5), Temperature.FromDegreesCelsius(20), Maize, DegreeDayMethod.MeasuredHours, cutoff));

        Assert.Contains("'hours measured', which needs readings of each hour", refused.Message, StringComparison.Ordinal);
        Assert.Throws<ArgumentException>("method", () => DegreeDays.Count(
            [5], [20], TemperatureUnit.DegreeCelsius, Maize, DegreeDayMethod.MeasuredHours, cutoff, new double[1]));
    }

    [Fact]
    public void MeasuredHours_AmongTheMethods_IsFoundByKeyAndStandsApart()
    {
        Assert.Same(DegreeDayMethod.MeasuredHours, DegreeDayMethod.FromKey("measured-hours"));
        Assert.DoesNotContain(DegreeDayMethod.MeasuredHours, DegreeDayMethod.All);
        Assert.True(DegreeDayMethod.MeasuredHours.NeedsHours);
        Assert.DoesNotContain(DegreeDayMethod.All.Concat(DegreeDayMethod.AllBelow), method => method.NeedsHours);
    }

    [Fact]
    public void CautionsFor_HoursAgainstARequirementForTheSine_NamesTheMethod()
    {
        HeatRequirement requirement = new(
            ThermalTime.FromCelsiusDays(100), Maize, DegreeDayMethod.SingleSine, UpperCutoff.Horizontal, new Source("page", "A page", "A publisher", 1982, null));
        DegreeDaySeries series = DegreeDays.AccumulateHours(
            Series(new DateTime(2024, 6, 1), [.. Enumerable.Repeat(15.0, 24)]), Maize, UpperCutoff.Horizontal);

        Assert.Equal("heat-requirement.other-method", Assert.Single(requirement.CautionsFor(series)).Code);
    }

    [Fact]
    public void Json_SeriesOfHours_ComesBackEqual()
    {
        double[] readings = [.. Enumerable.Repeat(15.0, 30 * 24)];
        readings[100] = double.NaN;
        DegreeDaySeries series = DegreeDays.AccumulateHours(Series(new DateTime(2024, 6, 1), readings), Maize, UpperCutoff.Intermediate);

        Assert.Equal(series, HortiCalcJson.Deserialize<DegreeDaySeries>(HortiCalcJson.Serialize(series)));
    }

    private static HourlyTemperatures Series(DateTime start, double[] celsius) =>
        HourlyTemperatures.Create(start, celsius, TemperatureUnit.DegreeCelsius);
}
