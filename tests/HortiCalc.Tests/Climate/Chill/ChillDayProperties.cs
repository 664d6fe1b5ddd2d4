using FsCheck.Xunit;
using HortiCalc.Climate;
using HortiCalc.Evidence;
using HortiCalc.Units;
using MathNet.Numerics.Integration;
using UnitsNet;
using UnitsNet.Units;

namespace HortiCalc.Tests.Climate;

[Properties(Arbitrary = [typeof(DegreeDayArbitraries)], MaxTest = 300)]
public class ChillDayProperties
{
    [Property]
    public void OfDay_AnyDay_IsTheAreaOfTheTriangleBetweenFreezingOrTheMinimumAndTheThreshold(AnyDay day, byte tenths)
    {
        double threshold = tenths / 10.0;
        double floor = Math.Max(0, day.Minimum);

        // Sides cut at the two levels, so that each part is straight.
        double[] cuts = [0, Cut(floor), Cut(threshold), 1];
        Array.Sort(cuts);
        double area = Enumerable.Range(0, 3).Sum(part => GaussLegendreRule.Integrate(Height, cuts[part], cuts[part + 1], 8));

        Assert.Equal(area, Of(day, threshold), 1e-10);

        double Height(double time) =>
            Math.Max(0, Math.Clamp(day.Minimum + (day.Maximum - day.Minimum) * time, floor, Math.Max(floor, threshold)) - floor);

        double Cut(double level) => day.Maximum > day.Minimum ? Math.Clamp((level - day.Minimum) / (day.Maximum - day.Minimum), 0, 1) : 0;
    }

    [Property]
    public void OfDay_HigherThreshold_NeverCountsLess(AnyDay day, byte tenths, byte more) =>
        Assert.True(Of(day, tenths / 10.0) <= Of(day, (tenths + more) / 10.0) + 1e-12);

    [Property]
    public void OfDay_WhollyAboveTheThresholdOrBelowFreezing_IsNothing(AnyDay day)
    {
        AnyDay warm = day with { Minimum = Math.Abs(day.Minimum), Maximum = Math.Abs(day.Minimum) + 5 };
        AnyDay frozen = day with { Minimum = -Math.Abs(day.Minimum) - 5, Maximum = -Math.Abs(day.Minimum) };

        Assert.Equal(0, Of(warm, warm.Minimum));
        Assert.Equal(0, Of(frozen, 10));
    }

    [Property]
    public void OfDay_InFahrenheit_IsTheSame(AnyDay day, byte tenths) => Assert.Equal(
        Of(day, tenths / 10.0),
        ChillDays.OfDay(Fahrenheit(day.Minimum), Fahrenheit(day.Maximum), Fahrenheit(tenths / 10.0 + 1e-13)).CelsiusDays,
        1e-9);

    [Fact]
    public void Sum_WithAGap_AddsTheKnownDaysAndSaysSo()
    {
        DailyTemperatures days = DailyTemperatures.Create(
            new DateOnly(2024, 1, 1), [2, double.NaN, -4], [8, double.NaN, 4], TemperatureUnit.DegreeCelsius);

        Estimate<ThermalTime> sum = ChillDays.Sum(days, Temperature.FromDegreesCelsius(10), Ratio.FromPercent(50));

        Assert.Equal(3 + 1, sum.Value.CelsiusDays, 1e-12);
        Assert.Equal("chill-days.missing-left-out", Assert.Single(sum.Cautions).Code);
        Assert.Equal("days", Assert.Throws<ArgumentException>(() => ChillDays.Sum(days, Temperature.FromDegreesCelsius(10))).ParamName);
        ArgumentOutOfRangeException refusal = Assert.Throws<ArgumentOutOfRangeException>(
            () => ChillDays.Sum(days, Temperature.FromDegreesCelsius(-1)));
        Assert.Equal("threshold", refusal.ParamName);
        Assert.Contains("from 0 to 60 °C", refusal.Message, StringComparison.Ordinal);
    }

    private static double Of(AnyDay day, double threshold) => ChillDays.OfDay(
        Temperature.FromDegreesCelsius(day.Minimum), Temperature.FromDegreesCelsius(day.Maximum), Temperature.FromDegreesCelsius(threshold)).CelsiusDays;

    private static Temperature Fahrenheit(double celsius) => Temperature.FromDegreesFahrenheit(celsius * 1.8 + 32);
}
