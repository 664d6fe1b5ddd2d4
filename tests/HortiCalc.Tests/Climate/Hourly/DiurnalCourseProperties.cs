using FsCheck.Xunit;
using HortiCalc.Climate;
using HortiCalc.Evidence;
using UnitsNet;
using UnitsNet.Units;

namespace HortiCalc.Tests.Climate;

/// <summary>
/// What each curve does with the day's extremes, where it joins and where it jumps. The curves are asked at any time of the day through
/// <see cref="DiurnalCourse.AfterSunrise"/>, and at full hours of a record through <see cref="DiurnalCourse.Hourly"/>.
/// </summary>
[Properties(Arbitrary = [typeof(DiurnalArbitraries)], MaxTest = 200)]
public class DiurnalCourseProperties
{
    private const double Rounding = 1e-9;
    private const double AMoment = 1e-7;

    private static readonly DiurnalCurve[] BySun =
        [DiurnalCurve.SineLogarithm, DiurnalCurve.SineExponential, DiurnalCurve.SineSineSquareRoot];

    [Property]
    public void BySun_AtTheHourOfTheMaximum_IsTheMaximum(AnyDiurnalDay day)
    {
        // Two hours after noon; 1.86 h after noon less the lag of the minimum; four hours before sunset.
        Assert.Equal(day.Maximum, day.At(DiurnalCurve.SineLogarithm, day.Length / 2 + 2), Rounding);
        Assert.Equal(day.Maximum, day.At(DiurnalCurve.SineExponential, day.Length / 2 + 1.86 - 0.17), Rounding);
        Assert.Equal(day.Maximum, day.At(DiurnalCurve.SineSineSquareRoot, day.Length - 4), Rounding);
    }

    [Property]
    public void BySun_AtSunrise_IsTheMinimumOrJustAbove(AnyDiurnalDay day)
    {
        Assert.Equal(day.Minimum, day.At(DiurnalCurve.SineLogarithm, 0), Rounding);
        Assert.Equal(day.Minimum, day.At(DiurnalCurve.SineSineSquareRoot, 0), Rounding);

        // The minimum of this curve comes ten minutes before sunrise.
        double range = day.Maximum - day.Minimum;
        Assert.InRange(day.At(DiurnalCurve.SineExponential, 0), day.Minimum, day.Minimum + 0.065 * range + Rounding);
    }

    [Property]
    public void BySun_AtSunset_IsContinuous(AnyDiurnalDay day)
    {
        foreach (DiurnalCurve curve in BySun)
            Assert.Equal(day.At(curve, day.Length - AMoment), day.At(curve, day.Length + AMoment), 0.02);
    }

    [Property]
    public void SineSineSquareRoot_AtTheMaximum_IsContinuousAndAtSunsetHasFallenBy39Percent(AnyDiurnalDay day)
    {
        Assert.Equal(day.At(DiurnalCurve.SineSineSquareRoot, day.Length - 4 - AMoment), day.At(DiurnalCurve.SineSineSquareRoot, day.Length - 4 + AMoment), 1e-4);
        Assert.Equal(day.Maximum - 0.39 * (day.Maximum - day.NextMinimum), day.At(DiurnalCurve.SineSineSquareRoot, day.Length), 1e-5);
    }

    [Property]
    public void BySun_JustBeforeTheNextSunrise_IsTheNextMinimumOrKnownToMissIt(AnyDiurnalDay day)
    {
        Assert.Equal(day.NextMinimum, day.At(DiurnalCurve.SineLogarithm, 24 - AMoment), 1e-3);
        Assert.Equal(day.NextMinimum, day.At(DiurnalCurve.SineSineSquareRoot, 24 - AMoment), 1e-3);

        // The exponential leaves exp(-2.2 (1 - 0.17/night)) of what there was at sunset: a ninth and a little.
        double sunset = day.At(DiurnalCurve.SineExponential, day.Length);
        double night = 24 - day.Length;
        double left = Math.Exp(-2.2 * (night - 0.17) / night);
        Assert.Equal(day.NextMinimum + (sunset - day.NextMinimum) * left, day.At(DiurnalCurve.SineExponential, 24 - 0.17 - AMoment), 1e-4);
        Assert.InRange(left, 0.11, 0.14);
    }

    [Property]
    public void BySun_AnyTime_StaysWithinTheExtremes(AnyDiurnalDay day, byte time)
    {
        double low = Math.Min(day.Minimum, day.NextMinimum);
        foreach (DiurnalCurve curve in BySun)
            Assert.InRange(day.At(curve, (24 - 0.18) * time / 255), low - Rounding, day.Maximum + Rounding);
    }

    [Property]
    public void BySun_FromTheMaximumOn_NeverRises(AnyDiurnalDay day, byte time, byte later)
    {
        double peak = day.Length / 2 + 2;
        double first = peak + (24 - 0.18 - peak) * time / 255;
        double second = first + (24 - 0.18 - first) * later / 255;
        // Unless the next minimum is warmer than sunset: then the night warms.
        DiurnalCurve[] falling = [.. new[] { DiurnalCurve.SineLogarithm, DiurnalCurve.SineExponential }
            .Where(curve => day.At(curve, day.Length) >= day.NextMinimum)];
        foreach (DiurnalCurve curve in falling)
            Assert.True(day.At(curve, second) <= day.At(curve, first) + Rounding);
    }

    [Property]
    public void AnyCurve_ScaledDay_ScalesWithIt(AnyDiurnalDay day, byte time, byte factor)
    {
        // A curve knows no temperature but the extremes: shift and stretch them, and every hour goes along.
        double stretch = 0.2 + 0.8 * factor / 255;
        AnyDiurnalDay other = new(stretch * day.Minimum + 3, stretch * day.Maximum + 3, stretch * day.NextMinimum + 3, day.Length);
        double hours = 20.0 * time / 255;
        foreach (DiurnalCurve curve in DiurnalCurve.All.Where(curve => day.Knows(curve, hours)))
            Assert.Equal(stretch * day.At(curve, hours) + 3, other.At(curve, hours), 1e-9);
    }

    [Property]
    public void AnyCurve_ConstantDays_AreConstant(AnyDiurnalDay any, sbyte celsius, byte time)
    {
        double degrees = celsius / 4.0;
        AnyDiurnalDay day = new(degrees, degrees, degrees, any.Length);
        double hours = 20.0 * time / 255;
        foreach (DiurnalCurve curve in DiurnalCurve.All.Where(curve => day.Knows(curve, hours)))
            Assert.Equal(degrees, day.At(curve, hours), Rounding);
    }

    [Property]
    public void Hourly_InFahrenheit_IsTheSame(AnyDiurnalDay[] days, byte place)
    {
        if (days.Length == 0)
            return;
        double[] lows = [.. days.Select(day => day.Minimum)];
        double[] highs = [.. days.Select(day => day.Maximum)];
        DailyTemperatures celsius = DailyTemperatures.Create(new DateOnly(2024, 2, 27), lows, highs, TemperatureUnit.DegreeCelsius);
        DailyTemperatures fahrenheit = DailyTemperatures.Create(
            new DateOnly(2024, 2, 27), [.. lows.Select(Fahrenheit)], [.. highs.Select(Fahrenheit)], TemperatureUnit.DegreeFahrenheit);
        Angle latitude = Angle.FromDegrees(place % 100 - 50);
        foreach (DiurnalCurve curve in DiurnalCurve.All)
        {
            HourlyTemperatures one = DiurnalCourse.Hourly(celsius, latitude, curve).Value;
            HourlyTemperatures other = DiurnalCourse.Hourly(fahrenheit, latitude, curve).Value;
            Assert.Equal(one.Missing, other.Missing);
            for (DateTime hour = one.Start; hour <= one.End; hour = hour.AddHours(1))
                Assert.Equal(one[hour]?.DegreesCelsius ?? 0, other[hour]?.DegreesCelsius ?? 0, 1e-9);
        }

        static double Fahrenheit(double degrees) => degrees * 1.8 + 32;
    }

    [Property]
    public void Hourly_OtherHemisphereHalfAYearLater_IsTheSame(AnyDiurnalDay[] days, byte place)
    {
        // The formula for the declination is a sine of 365 days: half of them later it has the other sign, but for half a day.
        if (days.Length == 0)
            return;
        double[] lows = [.. days.Take(8).Select(day => day.Minimum)];
        double[] highs = [.. days.Take(8).Select(day => day.Maximum)];
        double degrees = place % 45;
        HourlyTemperatures north = DiurnalCourse.Hourly(
            DailyTemperatures.Create(new DateOnly(2023, 1, 3), lows, highs, TemperatureUnit.DegreeCelsius), Angle.FromDegrees(degrees), DiurnalCurve.SineLogarithm).Value;
        HourlyTemperatures south = DiurnalCourse.Hourly(
            DailyTemperatures.Create(new DateOnly(2023, 1, 3).AddDays(182), lows, highs, TemperatureUnit.DegreeCelsius), Angle.FromDegrees(-degrees), DiurnalCurve.SineLogarithm).Value;

        for (int hour = 0; hour < north.Count; hour++)
        {
            double? one = north[north.Start.AddHours(hour)]?.DegreesCelsius;
            double? other = south[south.Start.AddHours(hour)]?.DegreesCelsius;
            if (one is not null && other is not null)
                Assert.Equal(one.Value, other.Value, 0.6);
        }
    }

    [Property]
    public void TwoHarmonics_AnyHour_IsWithin3PercentOfTheRangeOfBothExtremes(AnyDiurnalDay day)
    {
        DailyTemperatures days = DailyTemperatures.Create(
            new DateOnly(2024, 5, 1), [day.Minimum, day.Minimum, day.Minimum], [day.Maximum, day.Maximum, day.Maximum], TemperatureUnit.DegreeCelsius);
        HourlyTemperatures hours = DiurnalCourse.Hourly(days, Angle.FromDegrees(45), DiurnalCurve.TwoHarmonics).Value;
        double[] second = [.. Enumerable.Range(24, 24).Select(hour => hours[hours.Start.AddHours(hour)]!.Value.DegreesCelsius)];
        double range = day.Maximum - day.Minimum;

        Assert.Equal(day.Minimum, second.Min(), 0.03 * range + Rounding);
        Assert.Equal(day.Maximum, second.Max(), 0.03 * range + Rounding);
    }

    [Property]
    public void Sines_OfARecord_KeepTheExtremesOfEveryDay(AnyDiurnalDay[] days)
    {
        if (days.Length == 0)
            return;
        DailyTemperatures record = DailyTemperatures.Create(
            new DateOnly(2024, 5, 1), [.. days.Select(day => day.Minimum)], [.. days.Select(day => day.Maximum)], TemperatureUnit.DegreeCelsius);

        DailyTemperatures back = DailyTemperatures.FromHourly(DiurnalCourse.Hourly(record, Angle.Zero, DiurnalCurve.Sine).Value);

        Assert.Equal(0, back.MissingCount);
        foreach (DailyTemperature day in record.KnownDays())
        {
            Assert.Equal(day.Minimum.DegreesCelsius, back[day.Date]!.Minimum.DegreesCelsius, Rounding);
            Assert.Equal(day.Maximum.DegreesCelsius, back[day.Date]!.Maximum.DegreesCelsius, Rounding);
        }
    }

    [Fact]
    public void Hourly_NeighboursUnknown_LeavesTheNightsMissing()
    {
        DailyTemperatures days = DailyTemperatures.Create(
            new DateOnly(2024, 3, 20), [4, 5, double.NaN, 6], [14, 15, double.NaN, 16], TemperatureUnit.DegreeCelsius);

        HourlyTemperatures hours = DiurnalCourse.Hourly(days, Angle.Zero, DiurnalCurve.SineLogarithm).Value;

        // Day from 6 to 18. Known: the first day, its night, the second day; the last day.
        Assert.Equal(
            [.. Enumerable.Range(6, 24 + 18 - 6 + 1), .. Enumerable.Range(72 + 6, 13)],
            Enumerable.Range(0, 96).Where(hour => hours[hours.Start.AddHours(hour)] is not null));
    }

    [Fact]
    public void Hourly_AnyCurve_CarriesItsEvidenceAndACaution()
    {
        DailyTemperatures days = DailyTemperatures.Create(new DateOnly(2024, 3, 20), [4], [14], TemperatureUnit.DegreeCelsius);
        foreach (DiurnalCurve curve in DiurnalCurve.All)
        {
            Estimate<HourlyTemperatures> hours = DiurnalCourse.Hourly(days, Angle.FromDegrees(40), curve);

            Assert.Equal(curve.Evidence, hours.Method);
            Assert.Contains(hours.Cautions, caution => caution.Code == "hourly.from-extremes");
            Assert.Same(curve, DiurnalCurve.FromKey(curve.Evidence.Key));
        }
    }

    [Theory]
    [InlineData(75, 12)]
    [InlineData(75, 6)]
    [InlineData(-70, 6)]
    public void Hourly_PolarDayOrNight_IsRefusedByCurvesOfTheSunAlone(double latitude, int month)
    {
        DailyTemperatures days = DailyTemperatures.Create(new DateOnly(2024, month, 21), [-10, -9], [-5, -4], TemperatureUnit.DegreeCelsius);
        foreach (DiurnalCurve curve in BySun)
        {
            ArgumentOutOfRangeException refusal = Assert.Throws<ArgumentOutOfRangeException>(
                () => DiurnalCourse.Hourly(days, Angle.FromDegrees(latitude), curve));
            Assert.Equal("latitude", refusal.ParamName);
            Assert.Contains("h of daylight; allowed: dayLength from 5 to 22 h", refusal.Message, StringComparison.Ordinal);
        }

        Assert.Equal(0, DiurnalCourse.Hourly(days, Angle.FromDegrees(latitude), DiurnalCurve.Sine).Value.MissingCount);
    }

    [Fact]
    public void AfterSunrise_OutOfRange_IsRefusedWithTheParameter()
    {
        AnyDiurnalDay day = new(5, 20, 7, 12);

        Assert.Equal("sinceSunrise", Assert.Throws<ArgumentOutOfRangeException>(() => day.At(DiurnalCurve.SineLogarithm, 24)).ParamName);
        Assert.Equal("sinceSunrise", Assert.Throws<ArgumentOutOfRangeException>(() => day.At(DiurnalCurve.SineLogarithm, -0.1)).ParamName);
        Assert.Equal("maximum", Assert.Throws<ArgumentOutOfRangeException>(() => (day with { Maximum = 4 }).At(DiurnalCurve.Sine, 1)).ParamName);
        Assert.Equal("minimum", Assert.Throws<ArgumentOutOfRangeException>(() => (day with { Minimum = -99 }).At(DiurnalCurve.Sine, 1)).ParamName);
        Assert.Equal("dayLength", Assert.Throws<ArgumentOutOfRangeException>(() => (day with { Length = 3 }).At(DiurnalCurve.SineLogarithm, 1)).ParamName);
        Assert.Equal("sinceSunrise", Assert.Throws<ArgumentException>(() => day.At(DiurnalCurve.Sine, 20)).ParamName);
    }

    [Theory]
    [InlineData(8, 17.65367)]
    [InlineData(14, 30)]
    [InlineData(18, 22.98)]
    public void SineSineSquareRoot_HandWorkedHours_ComeOut(double hour, double celsius) =>
        Assert.Equal(celsius, new AnyDiurnalDay(10, 30, 12, 12).At(DiurnalCurve.SineSineSquareRoot, hour - 6), 5e-6);
}
