using FsCheck.Xunit;
using HortiCalc.Evidence;
using HortiCalc.Json;
using HortiCalc.Plants;
using UnitsNet;
using UnitsNet.Units;

namespace HortiCalc.Tests.Plants;

[Properties(Arbitrary = [typeof(GerminationArbitraries)], MaxTest = 200)]
public class GerminationProperties
{
    private const double Rounding = 1e-9;

    [Property]
    public void Time_AnyTemperature_IsOneDividedByTheRateOrNone(AnyNeed any)
    {
        double rate = any.Rate(any.Celsius);
        Estimate<Duration>? time = Germination.Time(any.Soil, any.Need);

        Assert.Equal(rate == 0, time is null);
        if (time is not null)
            Assert.Equal(1, time.Value.Days * rate, Rounding);
    }

    [Property]
    public void Time_OutsideBaseAndCeiling_IsNone(AnyNeed any, byte tenths)
    {
        Assert.All(
            new[] { any.Base - tenths / 10.0, Math.Min(any.Ceiling + tenths / 10.0, 90) },
            celsius =>
            {
                Assert.Null(Germination.Time(Temperature.FromDegreesCelsius(celsius), any.Need));
                Assert.Equal(0, any.Rate(celsius));
            });
    }

    [Property]
    public void Rate_TowardsTheOptimum_NeverFalls(AnyNeed any, byte part)
    {
        double colder = any.Base + (any.Optimum - any.Base) * (part / 256.0);
        double hotter = any.Ceiling - (any.Ceiling - any.UpperOptimum) * (part / 256.0);

        Assert.True(any.Rate(colder + (any.Optimum - colder) / 2) >= any.Rate(colder) - Rounding);
        if (any.Need.Response.NeedsCeiling)
            Assert.True(any.Rate(hotter - (hotter - any.UpperOptimum) / 2) >= any.Rate(hotter) - Rounding);
    }

    [Property]
    public void Rate_WithCeiling_IsHighestAtTheOptimum(AnyNeed any)
    {
        Assert.All(new[] { GerminationResponse.Segmented, GerminationResponse.Beta }, response =>
        {
            AnyNeed shaped = any.With(response);
            Assert.True(shaped.Rate(any.Celsius) <= shaped.Rate(any.Optimum) + Rounding);
        });
    }

    [Property]
    public void Rate_AtTheOptimum_IsTheSameForEveryShape(AnyNeed any) => Assert.All(
        GerminationResponse.All,
        response => Assert.Equal(
            (any.Optimum - any.Base) / any.Need.Middle.CelsiusDays, any.With(response).Rate(any.Optimum), Rounding));

    [Property]
    public void Rate_BelowTheOptimum_IsTheSameStraightAndSegmented(AnyNeed any, byte part)
    {
        double celsius = any.Base + (any.Optimum - any.Base) * (part / 255.0);

        Assert.Equal(
            any.With(GerminationResponse.Linear).Rate(celsius), any.With(GerminationResponse.Segmented).Rate(celsius), Rounding);
    }

    [Property]
    public void Rate_HalfWayFromTheUpperOptimumToTheCeiling_IsHalfTheSegmentedOne(AnyNeed any)
    {
        AnyNeed segmented = any.With(GerminationResponse.Segmented);

        Assert.Equal(segmented.Rate(any.Optimum), segmented.Rate(any.UpperOptimum), Rounding);
        Assert.Equal(segmented.Rate(any.Optimum) / 2, segmented.Rate((any.UpperOptimum + any.Ceiling) / 2), Rounding);
    }

    [Property]
    public void Time_NeedTimesTwo_TakesTwiceAsLong(AnyNeed any)
    {
        Estimate<Duration>? once = Germination.Time(any.Soil, any.Need);
        Estimate<Duration>? twice = Germination.Time(any.Soil, any.With(any.Need.Response, 2).Need);

        Assert.Equal(once is null, twice is null);
        if (once is not null)
            Assert.Equal(2, twice!.Value / once.Value, Rounding);
    }

    [Property]
    public void Time_InFahrenheit_IsTheSame(AnyNeed any)
    {
        Estimate<Duration>? celsius = Germination.Time(any.Soil, any.Need);
        Estimate<Duration>? fahrenheit = Germination.Time(Temperature.FromDegreesFahrenheit(any.Celsius * 1.8 + 32), any.Need);

        Assert.Equal(celsius is null, fahrenheit is null);
        if (celsius is not null)
            Assert.Equal(1, fahrenheit!.Value / celsius.Value, 1e-6);
    }

    [Property]
    public void Time_PrintedRange_IsAroundTheValue(AnyNeed any)
    {
        if (Germination.Time(any.Soil, any.Need) is not Estimate<Duration> time)
            return;

        Assert.Equal(any.Need.Low == any.Need.High, time.Range is null);
        if (time.Range is not null)
            Assert.InRange(time.Value.Days, time.Range.Low.Days, time.Range.High.Days);
    }

    [Property]
    public void Over_ConstantTemperature_TakesTheTimeAtIt(AnyNeed any)
    {
        Estimate<Duration>? time = Germination.Time(any.Soil, any.Need);
        double[] days = [.. Enumerable.Repeat(any.Celsius, 400)];

        GerminationProgress progress = Over(days, any.Need);

        if (time is null || time.Value.Days > 399)
        {
            Assert.True(time is not null || progress.Elapsed is null);
            return;
        }

        Assert.Equal(time.Value.Days, progress.Elapsed!.Value.Days, 1e-6);
        Assert.InRange(progress.Days, Math.Ceiling(time.Value.Days - 1e-6), Math.Ceiling(time.Value.Days + 1e-6));
        Assert.Equal(progress.Elapsed!.Value.Days, progress.Days - 1 + progress.PartOfDay!.Value.DecimalFractions, Rounding);
    }

    [Property]
    public void Over_ColdDaysBefore_AreLateByThatManyDays(AnyNeed any, AnySeedbed seedbed, byte cold)
    {
        int late = cold % 20;
        GerminationProgress first = Over(seedbed.Celsius, any.Need);
        GerminationProgress later = Over([.. Enumerable.Repeat(any.Base, late), .. seedbed.Celsius], any.Need);

        Assert.Equal(first.DaysTooCold + late, later.DaysTooCold);
        Assert.Equal(first.Sum.CelsiusDays, later.Sum.CelsiusDays, Rounding);
        Assert.Equal(first.Elapsed is null, later.Elapsed is null);
        if (first.Elapsed is Duration elapsed)
            Assert.Equal(elapsed.Days + late, later.Elapsed!.Value.Days, 1e-6);
    }

    [Property]
    public void Over_AnySeedbed_AddsUpTheProgressOfItsDays(AnyNeed any, AnySeedbed seedbed)
    {
        GerminationProgress progress = Over(seedbed.Celsius, any.Need);
        double[] counted = seedbed.Celsius[..progress.Days];
        double rates = counted.Sum(any.Rate);

        Assert.Equal(rates * any.Need.Middle.CelsiusDays, progress.Sum.CelsiusDays, 1e-6);
        Assert.Equal(progress.Elapsed is null, rates < 1 - Rounding);
        Assert.True(counted[..^1].Sum(any.Rate) < 1 + Rounding);
        Assert.Equal(counted.Count(celsius => celsius <= any.Base), progress.DaysTooCold);
        Assert.Equal(counted.Count(celsius => celsius >= any.Ceiling), progress.DaysTooHot);
        Assert.InRange(progress.Progress.Percent, 0, 100);
    }

    [Property]
    public void Over_InFahrenheit_IsTheSame(AnyNeed any, AnySeedbed seedbed)
    {
        GerminationProgress celsius = Over(seedbed.Celsius, any.Need);
        GerminationProgress fahrenheit = Germination.Over(seedbed.Fahrenheit, TemperatureUnit.DegreeFahrenheit, new DateOnly(2025, 4, 1), any.Need);

        // A need met to the last digit at the end of a day may be met in the next by the noise of the unit.
        if (celsius.Days == fahrenheit.Days)
        {
            Assert.Equal(celsius.Sum.CelsiusDays, fahrenheit.Sum.CelsiusDays, 1e-7);
            Assert.Equal(celsius.DaysTooCold, fahrenheit.DaysTooCold);
        }

        Assert.InRange(Math.Abs(celsius.Days - fahrenheit.Days), 0, 1);
    }

    [Property]
    public void JsonOfNeedAndProgress_WrittenAndRead_IsEqual(AnyNeed any, AnySeedbed seedbed)
    {
        GerminationProgress progress = Over(seedbed.Celsius, any.Need);

        Assert.Equal(any.Need, HortiCalcJson.Deserialize<GerminationNeed>(HortiCalcJson.Serialize(any.Need)));
        Assert.Equal(progress, HortiCalcJson.Deserialize<GerminationProgress>(HortiCalcJson.Serialize(progress)));
    }

    private static GerminationProgress Over(double[] celsius, GerminationNeed need) =>
        Germination.Over(celsius, TemperatureUnit.DegreeCelsius, new DateOnly(2025, 4, 1), need);
}
