using FsCheck.Xunit;
using HortiCalc.Climate;
using UnitsNet;

namespace HortiCalc.Tests.Climate;

[Properties(Arbitrary = [typeof(FrostNightArbitraries)], MaxTest = 200)]
public class NightCoolingProperties
{
    private static DateTime TimeAt(NightCooling night, double share) => night.Start.AddTicks((long)((night.Sunrise - night.Start).Ticks * share));

    private static double Between(NightCooling night, double share) =>
        night.TwoHoursAfterSunset.DegreesCelsius + (night.Minimum.DegreesCelsius - night.TwoHoursAfterSunset.DegreesCelsius) * share;

    [Property]
    public void At_BothEnds_AreTheTemperaturesGiven(AnyCooling any)
    {
        NightCooling night = any.Night;
        Assert.Equal(AnyCooling.Sunset.AddHours(2), night.Start);
        Assert.Equal(night.TwoHoursAfterSunset.DegreesCelsius, night.At(night.Start).DegreesCelsius, 1e-12);
        Assert.Equal(night.Minimum.DegreesCelsius, night.At(night.Sunrise).DegreesCelsius, 1e-9);
    }

    [Property]
    public void At_AQuarterOfTheTime_HasCooledByHalf(AnyCooling any)
    {
        NightCooling night = any.Night;
        Assert.Equal(Between(night, 0.5), night.At(TimeAt(night, 0.25)).DegreesCelsius, 1e-6);
    }

    [Property]
    public void At_LaterTimes_IsColderAndBendsUpwards(AnyCooling any)
    {
        NightCooling night = any.Night;
        double last = double.PositiveInfinity;
        double lastStep = double.PositiveInfinity;
        for (int step = 0; step <= 20; step++)
        {
            double celsius = night.At(TimeAt(night, step / 20.0)).DegreesCelsius;
            Assert.True(celsius < last);
            if (step > 1)
                Assert.True(last - celsius < lastStep);
            lastStep = last - celsius;
            last = celsius;
        }
    }

    [Property]
    public void TimeReached_OfTheTemperatureOfATime_IsThatTime(AnyCooling any, AnyShare share)
    {
        NightCooling night = any.Night;
        DateTime time = TimeAt(night, share.Share);
        DateTime? reached = night.TimeReached(night.At(time));

        // At sunrise itself the minimum is compared with itself after rounding.
        if (share.Share < 1)
            Assert.InRange((reached!.Value - time).TotalSeconds, -1, 1);
    }

    [Property]
    public void DurationBelow_AnyTemperature_IsTheShareOfTheMinutesThatCold(AnyCooling any, AnyShare share)
    {
        NightCooling night = any.Night;
        Temperature limit = Temperature.FromDegreesCelsius(Between(night, share.Share));
        int minutes = (int)(night.Sunrise - night.Start).TotalMinutes;
        int cold = Enumerable.Range(0, minutes).Count(minute =>
            night.At(night.Start.AddMinutes(minute + 0.5)).DegreesCelsius <= limit.DegreesCelsius);

        Assert.InRange(night.DurationBelow(limit).Minutes, cold - 1, cold + 1);
    }

    [Property]
    public void DurationBelow_OutsideTheCurve_IsAllOrNothing(AnyCooling any)
    {
        NightCooling night = any.Night;
        Temperature warm = Temperature.FromDegreesCelsius(night.TwoHoursAfterSunset.DegreesCelsius + 0.1);
        Temperature cold = Temperature.FromDegreesCelsius(night.Minimum.DegreesCelsius - 0.1);

        Assert.Equal((night.Sunrise - night.Start).TotalHours, night.DurationBelow(warm).Hours, 1e-9);
        Assert.Equal(night.Start, night.TimeReached(warm));
        Assert.Equal(0, night.DurationBelow(cold).Hours);
        Assert.Null(night.TimeReached(cold));
    }

    [Property]
    public void EnduredFor_ATime_IsTheTemperatureWithThatMuchTimeBelow(AnyCooling any, AnyShare share)
    {
        NightCooling night = any.Night;
        Duration time = Duration.FromHours((night.Sunrise - night.Start).TotalHours * Math.Min(0.999, share.Share));

        Assert.Equal(time.Hours, night.DurationBelow(Temperature.FromDegreesCelsius(night.EnduredFor(time).DegreesCelsius + 1e-12)).Hours, 1e-3);
    }

    [Property]
    public void AtFullHours_AnyNight_AreTheFullHoursOfTheCurve(AnyCooling any)
    {
        NightCooling night = any.Night;
        HourlyTemperatures hours = night.AtFullHours()!;

        Assert.InRange((hours.Start - night.Start).TotalMinutes, 0, 59.999);
        Assert.InRange((night.Sunrise - hours.End).TotalMinutes, 0, 59.999);
        for (DateTime hour = hours.Start; hour <= hours.End; hour = hour.AddHours(1))
            Assert.Equal(night.At(hour).DegreesCelsius, hours[hour]!.Value.DegreesCelsius, 1e-9);
    }

    [Property]
    public void Night_InFahrenheit_IsTheSame(AnyCooling any, AnyShare share)
    {
        NightCooling night = any.Night;
        NightCooling other = new(
            night.Sunset,
            night.Sunrise,
            night.TwoHoursAfterSunset.ToUnit(UnitsNet.Units.TemperatureUnit.DegreeFahrenheit),
            night.Minimum.ToUnit(UnitsNet.Units.TemperatureUnit.DegreeFahrenheit));
        DateTime time = TimeAt(night, share.Share);

        Assert.Equal(night.At(time).DegreesCelsius, other.At(time).DegreesCelsius, 1e-9);
    }
}
