using FsCheck.Xunit;
using HortiCalc.Climate;
using HortiCalc.Units;
using UnitsNet;
using UnitsNet.Units;

namespace HortiCalc.Tests.Climate;

[Properties(MaxTest = 300)]
public class SoilTemperatureProperties
{
    private const double Rounding = 1e-9;

    [Property]
    public void AtDepth_Zero_IsTheSurfaceWave(ushort a, ushort b, ushort c, ushort d)
    {
        AnnualWave surface = Annual(a, b, c);

        AnnualWave same = surface.AtDepth(Length.Zero, Diffusivity(d));

        Assert.Equal(surface, same);
    }

    [Property]
    public void AtDepth_AnyDepth_KeepsTheMean(ushort a, ushort b, ushort c, ushort d, ushort z) =>
        Assert.Equal(Annual(a, b, c).Mean, Annual(a, b, c).AtDepth(Depth(z), Diffusivity(d)).Mean);

    [Property]
    public void AtDepth_Deeper_NeverHasALargerAmplitude(ushort a, ushort b, ushort c, ushort d, ushort z, ushort more)
    {
        AnnualWave upper = Annual(a, b, c).AtDepth(Depth(z), Diffusivity(d));
        AnnualWave lower = Annual(a, b, c).AtDepth(Length.FromMeters(Math.Min(30, Depth(z).Meters + more / 5000.0)), Diffusivity(d));

        Assert.True(lower.Amplitude <= upper.Amplitude);
    }

    [Property]
    public void Lag_Depth_IsInProportion(ushort d, ushort z)
    {
        Length half = Depth(z) / 2;

        Assert.Equal(
            2 * SoilTemperature.Lag(half, Diffusivity(d), OneYear).Days, SoilTemperature.Lag(Depth(z), Diffusivity(d), OneYear).Days, 1e-6);
    }

    [Property]
    public void Lag_OneDampingDepth_IsThePeriodByTwoPi(ushort d)
    {
        Length damping = SoilTemperature.DampingDepth(Diffusivity(d), OneYear);

        Assert.Equal(365 / (2 * Math.PI), SoilTemperature.Lag(damping, Diffusivity(d), OneYear).Days, 1e-6);
        Assert.Equal(100 / Math.E, SoilTemperature.ShareLeft(damping, damping).Percent, Rounding);
    }

    [Property]
    public void AtDepth_TwoLayersOneAfterTheOther_AreOneOfBoth(ushort a, ushort b, ushort c, ushort d, ushort z)
    {
        Length half = Depth(z) / 2;
        AnnualWave twice = Annual(a, b, c).AtDepth(half, Diffusivity(d)).AtDepth(half, Diffusivity(d));
        AnnualWave once = Annual(a, b, c).AtDepth(Depth(z), Diffusivity(d));

        Assert.Equal(once.Amplitude.DegreesCelsius, twice.Amplitude.DegreesCelsius, Rounding);
        MonthDay day = new(5, 17);
        Assert.Equal(once.On(day).DegreesCelsius, twice.On(day).DegreesCelsius, 1e-7);
    }

    [Property]
    public void DampingDepth_Diffusivity_GoesWithItsRoot(ushort d)
    {
        ThermalDiffusivity one = ThermalDiffusivity.FromSquareMillimetresPerSecond(0.05 + d / 65535.0);
        ThermalDiffusivity four = ThermalDiffusivity.FromSquareMillimetresPerSecond(4 * one.SquareMillimetresPerSecond);

        Assert.Equal(2, SoilTemperature.DampingDepth(four, OneYear) / SoilTemperature.DampingDepth(one, OneYear), Rounding);
    }

    [Property]
    public void DampingDepth_YearToDay_IsTheRootOf365(ushort d) => Assert.Equal(
        Math.Sqrt(365),
        SoilTemperature.DampingDepth(Diffusivity(d), OneYear) / SoilTemperature.DampingDepth(Diffusivity(d), Duration.FromHours(24)),
        Rounding);

    [Property]
    public void Wave_AnyDay_LiesBetweenItsMinimumAndItsMaximum(ushort a, ushort b, ushort c, ushort day)
    {
        AnnualWave wave = Annual(a, b, c);
        Temperature on = wave.On(MonthDay.From(new DateOnly(2001, 1, 1).AddDays(day % 365)));

        Assert.InRange(on.DegreesCelsius, wave.Minimum.DegreesCelsius - Rounding, wave.Maximum.DegreesCelsius + Rounding);
        Assert.Equal(wave.Mean.DegreesCelsius, (wave.Minimum.DegreesCelsius + wave.Maximum.DegreesCelsius) / 2, Rounding);
    }

    [Property]
    public void Wave_HalfAPeriodLater_IsAsFarOnTheOtherSideOfTheMean(ushort a, ushort b, ushort c, ushort minutes)
    {
        DailyWave wave = Daily(a, b, c);
        TimeOnly time = TimeOnly.FromTimeSpan(TimeSpan.FromMinutes(minutes % 1440));

        double sum = wave.At(time).DegreesCelsius + wave.At(time.AddHours(12)).DegreesCelsius;

        Assert.Equal(2 * wave.Mean.DegreesCelsius, sum, 1e-7);
    }

    [Property]
    public void AtDepth_InFeetAndFahrenheit_IsTheSame(ushort a, ushort b, ushort c, ushort d, ushort z)
    {
        AnnualWave metric = Annual(a, b, c);
        AnnualWave us = new(
            metric.Mean.ToUnit(TemperatureUnit.DegreeFahrenheit), metric.Amplitude.ToUnit(TemperatureDeltaUnit.DegreeFahrenheit), metric.Coldest.ToUnit(DurationUnit.Hour));

        AnnualWave metricBelow = metric.AtDepth(Depth(z), Diffusivity(d));
        AnnualWave usBelow = us.AtDepth(Length.FromFeet(Depth(z).Feet), ThermalDiffusivity.FromSquareMetresPerDay(Diffusivity(d).SquareMetresPerDay));

        MonthDay day = new(10, 3);
        Assert.Equal(metricBelow.On(day).DegreesCelsius, usBelow.On(day).DegreesCelsius, 1e-7);
    }

    [Property]
    public void DiffusivityFromAmplitudes_OfTheDampedWave_IsTheOneItWasDampedWith(ushort d, byte upperCm, byte betweenCm)
    {
        Length upper = Length.FromCentimeters(upperCm % 30);
        Length lower = upper + Length.FromCentimeters(1 + betweenCm % 30);
        DailyWave surface = new(Temperature.FromDegreesCelsius(20), TemperatureDelta.FromDegreesCelsius(12), Duration.FromHours(5));

        ThermalDiffusivity found = SoilTemperature.DiffusivityFromAmplitudes(
            upper,
            surface.AtDepth(upper, Diffusivity(d)).Amplitude,
            lower,
            surface.AtDepth(lower, Diffusivity(d)).Amplitude,
            Duration.FromDays(1)).Value;

        Assert.Equal(1, found.SquareMillimetresPerSecond / Diffusivity(d).SquareMillimetresPerSecond, 1e-7);
    }

    [Property(MaxTest = 50)]
    public void Fit_DaysOfAWave_GivesItBackWithoutError(ushort a, ushort b, ushort c)
    {
        AnnualWave wave = Annual(a, b, c);
        double[] means = [.. Enumerable.Range(0, 730).Select(day => wave.On(MonthDay.From(new DateOnly(2021, 1, 1).AddDays(day))).DegreesCelsius)];
        DailyTemperatures days = DailyTemperatures.Create(new DateOnly(2021, 1, 1), means, means, TemperatureUnit.DegreeCelsius);

        AnnualWaveFit fit = AnnualWaveFit.FromDaily(days);

        Assert.Equal(wave.Mean.DegreesCelsius, fit.Wave.Mean.DegreesCelsius, Rounding);
        Assert.Equal(wave.Amplitude.DegreesCelsius, fit.Wave.Amplitude.DegreesCelsius, Rounding);
        Assert.Equal(0, fit.ResidualError.DegreesCelsius, 1e-9);
        MonthDay summer = new(7, 9);
        Assert.Equal(wave.On(summer).DegreesCelsius, fit.Wave.On(summer).DegreesCelsius, 1e-8);
    }

    [Property(MaxTest = 30)]
    public void Fit_AnyRecord_IsNotImprovedByAnotherWave(int seed, sbyte mean, sbyte amplitude, sbyte phase)
    {
        Random weather = new(seed);
        double[] means = [.. Enumerable.Range(1, 365).Select(day => 9 - 8 * Math.Cos((day - 20) * 2 * Math.PI / 365) + 6 * (weather.NextDouble() - 0.5))];
        DailyTemperatures days = DailyTemperatures.Create(new DateOnly(2021, 1, 1), means, means, TemperatureUnit.DegreeCelsius);
        AnnualWave best = AnnualWaveFit.FromDaily(days).Wave;
        AnnualWave other = new(
            best.Mean + TemperatureDelta.FromDegreesCelsius(mean / 50.0),
            TemperatureDelta.FromDegreesCelsius(Math.Max(0, best.Amplitude.DegreesCelsius + amplitude / 50.0)),
            Duration.FromDays((best.Coldest.Days + phase / 10.0 + 365) % 365));

        Assert.True(Squares(best, means) <= Squares(other, means) + 1e-7);
    }

    private static Duration OneYear { get; } = Duration.FromDays(365);

    private static double Squares(AnnualWave wave, double[] means) => means
        .Select((mean, index) => mean - wave.On(MonthDay.From(new DateOnly(2021, 1, 1).AddDays(index))).DegreesCelsius)
        .Sum(residual => residual * residual);

    private static AnnualWave Annual(ushort a, ushort b, ushort c) => new(
        Temperature.FromDegreesCelsius(a % 300 / 10.0),
        TemperatureDelta.FromDegreesCelsius(1 + b % 200 / 10.0),
        Duration.FromDays(c % 3650 / 10.0));

    private static DailyWave Daily(ushort a, ushort b, ushort c) => new(
        Temperature.FromDegreesCelsius(a % 300 / 10.0),
        TemperatureDelta.FromDegreesCelsius(b % 200 / 10.0),
        Duration.FromHours(c % 240 / 10.0));

    private static ThermalDiffusivity Diffusivity(ushort d) => ThermalDiffusivity.FromSquareMillimetresPerSecond(0.05 + 4.9 * d / 65535.0);

    private static Length Depth(ushort z) => Length.FromMeters(z / 65535.0 * 4);
}
