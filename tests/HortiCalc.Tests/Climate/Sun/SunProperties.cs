using FsCheck.Xunit;
using HortiCalc.Climate;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Tests.Climate;

[Properties(MaxTest = 150)]
public class SunProperties
{
    private const double Rounding = 1e-9;
    private const double SecondInHours = 1.0 / 3600;

    [Property]
    public void Length_DefinitionsOfTheSameSun_FollowOneAnother(ushort place, ushort day)
    {
        double centre = Hours(Latitude(place), Date(day), DaylightMethod.CentreOnHorizon);
        double almanac = Hours(Latitude(place), Date(day), DaylightMethod.Almanac);
        double twilight = Hours(Latitude(place), Date(day), DaylightMethod.CivilTwilight);

        Assert.True(centre <= almanac && almanac <= twilight);
        Assert.True(centre is 0 or 24 || centre < almanac);
        Assert.True(almanac is 0 or 24 || almanac < twilight);
    }

    [Property]
    public void Length_Equinox_IsNearTwelveHours(byte place, byte year)
    {
        double latitude = place % 61;
        DateOnly equinox = new(1900 + year % 200, 3, 20);

        Assert.Equal(12, Hours(latitude, equinox, DaylightMethod.CentreOnHorizon), 0.15);
        Assert.Equal(12, Hours(-latitude, equinox, DaylightMethod.CentreOnHorizon), 0.15);
    }

    [Property]
    public void Length_FurtherNorthInSummer_IsLonger(byte place, byte year, byte step)
    {
        double latitude = -60 + place % 110;
        DateOnly june = new(1900 + year % 200, 6, 21);

        foreach (DaylightMethod method in DaylightMethod.All)
            Assert.True(Hours(latitude + step / 25.6 + 0.1, june, method) > Hours(latitude, june, method) || Hours(latitude, june, method) == 24);
    }

    [Property]
    public void Length_HalfAYearLater_IsNearThatOfTheOtherHemisphere(ushort place, ushort day)
    {
        // The ellipse makes the seasons unequal by days, the sign of the declination does not.
        double latitude = Latitude(place) / 2;
        double winter = Hours(latitude, Date(day), DaylightMethod.Almanac);
        double there = Hours(-latitude, Date(day).AddDays(183), DaylightMethod.Almanac);

        Assert.Equal(winter, there, 0.35);
    }

    [Property]
    public void Length_TwoHemispheres_SumToTheDayFromCentreToCentre(ushort place, ushort day)
    {
        // The sun moves north or south between one's morning and the other's: seconds away from the poles.
        double latitude = Latitude(place) * 0.7;

        Assert.Equal(
            24, Hours(latitude, Date(day), DaylightMethod.CentreOnHorizon) + Hours(-latitude, Date(day), DaylightMethod.CentreOnHorizon), 0.02);
    }

    [Property]
    public void LengthAbove_Higher_IsNeverLonger(ushort place, ushort day, sbyte low, byte more)
    {
        double elevation = low / 2.0;
        Angle latitude = Angle.FromDegrees(Latitude(place));

        Assert.True(
            Daylight.LengthAbove(latitude, Date(day), Angle.FromDegrees(Math.Min(90, elevation + more / 10.0))).Value
            <= Daylight.LengthAbove(latitude, Date(day), Angle.FromDegrees(elevation)).Value);
    }

    [Property]
    public void On_SunriseAndSunset_AreSymmetricAboutNoonButForTheSunsMotion(ushort place, ushort longitude, ushort day)
    {
        double latitude = Latitude(place) * 0.6;
        SunTimes times = Times(latitude, Longitude(longitude), Date(day), 0);

        double morning = (times.SolarNoon - times.Sunrise!.Value).TotalMinutes;
        double evening = (times.Sunset!.Value - times.SolarNoon).TotalMinutes;

        Assert.Equal(morning, evening, 3.0);
        Assert.Equal(times.DayLength.Hours, (morning + evening) / 60, 2 * SecondInHours);
    }

    [Property]
    public void On_Noon_FallsOnTheDateOfTheClock(ushort place, ushort longitude, ushort day, byte hours)
    {
        int offset = hours % 29 - 14;
        SunTimes times = Times(Latitude(place), Longitude(longitude), Date(day), offset);

        Assert.InRange(times.SolarNoon, new DateTimeOffset(times.Date, TimeOnly.MinValue, TimeSpan.FromHours(offset)).AddSeconds(-1), DateTimeOffset.MaxValue);
        Assert.True(times.SolarNoon <= new DateTimeOffset(times.Date, TimeOnly.MinValue, TimeSpan.FromHours(offset)).AddDays(1).AddSeconds(1));
        Assert.Equal(TimeSpan.FromHours(offset), times.SolarNoon.Offset);
    }

    [Property]
    public void On_AnotherOffset_IsTheSameMoment(ushort place, ushort day)
    {
        double latitude = Latitude(place) * 0.6;

        Assert.Equal(Times(latitude, 10, Date(day), 1).Sunrise, Times(latitude, 10, Date(day), 2).Sunrise);
        Assert.Equal(Times(latitude, 10, Date(day), 1).Sunset, Times(latitude, 10, Date(day), 2).Sunset);
    }

    [Property]
    public void On_FifteenDegreesEast_IsAnHourEarlier(ushort place, ushort day)
    {
        double latitude = Latitude(place) * 0.6;
        TimeSpan earlier = Times(latitude, 0, Date(day), 0).SolarNoon - Times(latitude, 15, Date(day), 0).SolarNoon;

        Assert.Equal(60, earlier.TotalMinutes, 0.1);
    }

    [Property]
    public void Position_AtSunrise_IsAtTheAltitudeOfTheDefinition(ushort place, ushort longitude, ushort day)
    {
        Place where = Where(Latitude(place) * 0.6, Longitude(longitude));
        SunTimes times = Daylight.On(where, Date(day), TimeSpan.Zero).Value;

        Assert.Equal(-50.0 / 60, Daylight.Position(where, times.Sunrise!.Value).Value.Elevation.Degrees, 0.01);
        Assert.Equal(-50.0 / 60, Daylight.Position(where, times.Sunset!.Value).Value.Elevation.Degrees, 0.01);
        Assert.True(Daylight.Position(where, times.Sunrise.Value).Value.Azimuth.Degrees < 180);
        Assert.True(Daylight.Position(where, times.Sunset.Value).Value.Azimuth.Degrees > 180);
    }

    [Property]
    public void Position_AtNoon_IsLatitudeLessDeclinationFromTheZenith(ushort place, ushort longitude, ushort day)
    {
        Place where = Where(Latitude(place), Longitude(longitude));
        SunTimes times = Daylight.On(where, Date(day), TimeSpan.Zero).Value;
        double declination = Daylight.Declination(DateOnly.FromDateTime(times.SolarNoon.UtcDateTime), DaylightMethod.Almanac).Value.Degrees;

        // The declination changes by up to 0.4° a day, and was that of noon at Greenwich.
        Assert.Equal(90 - Math.Abs(where.Latitude.Degrees - declination), Daylight.Position(where, times.SolarNoon).Value.Elevation.Degrees, 0.25);
    }

    [Property]
    public void EquationOfTime_AnyDay_IsNoonBeforeTwelve(ushort day)
    {
        DateTimeOffset noon = Times(30, 0, Date(day), 0).SolarNoon;
        double minutes = (noon.TimeOfDay - TimeSpan.FromHours(12)).TotalMinutes;

        Assert.Equal(-Daylight.EquationOfTime(Date(day)).Value.Minutes, minutes, 0.02);
        Assert.InRange(Daylight.EquationOfTime(Date(day)).Value.Minutes, -14.5, 16.6);
    }

    [Property]
    public void Crossings_EachDate_PassesTheLength(ushort place, byte tenths, byte year)
    {
        Angle latitude = Angle.FromDegrees(Latitude(place));
        DateSpan span = new(new DateOnly(1901 + year % 190, 1, 1), new DateOnly(1901 + year % 190, 12, 31));
        double hours = tenths % 240 / 10.0 + 0.05;

        PhotoperiodCrossings found = Daylight.Crossings(latitude, span, Duration.FromHours(hours), DaylightMethod.Almanac).Value;

        foreach (PhotoperiodCrossing crossing in found.Crossings)
        {
            Assert.Equal(crossing.IsRising, Hours(latitude.Degrees, crossing.Date, DaylightMethod.Almanac) >= hours);
            Assert.Equal(crossing.IsRising, Hours(latitude.Degrees, crossing.Date.AddDays(-1), DaylightMethod.Almanac) < hours);
        }

        Assert.True(found.Crossings.Count > 0 || found.DaysReached is 0 or 365 or 366);
    }

    [Property]
    public void Extraterrestrial_HoursOfADay_SumToTheDay(ushort place, ushort longitude, ushort day)
    {
        Place where = Where(Latitude(place), Longitude(longitude));
        DateTimeOffset midnight = new(Date(day), TimeOnly.MinValue, TimeSpan.FromHours(Math.Round(Longitude(longitude) / 15, MidpointRounding.AwayFromZero)));
        double sum = Enumerable.Range(0, 24)
            .Sum(hour => SolarRadiation.ExtraterrestrialOfPeriod(where, midnight.AddHours(hour), Duration.FromHours(1)).Value.MegajoulesPerSquareMeter);

        Assert.Equal(SolarRadiation.Extraterrestrial(where.Latitude, Date(day)).Value.MegajoulesPerSquareMeter, sum, 1e-6);
    }

    [Property]
    public void ExtraterrestrialOfPeriod_HoursBeforeAndAfterSolarNoon_AreAlike(ushort place, ushort longitude, ushort day)
    {
        // The publication's own correction of solar time is within a minute and a half of the sun's.
        Place where = Where(Latitude(place) / 3, Longitude(longitude));
        DateTimeOffset noon = Daylight.On(where, Date(day), TimeSpan.FromHours(Math.Round(Longitude(longitude) / 15, MidpointRounding.AwayFromZero))).Value.SolarNoon;
        double before = SolarRadiation.ExtraterrestrialOfPeriod(where, noon.AddHours(-4), Duration.FromHours(1)).Value.MegajoulesPerSquareMeter;
        double after = SolarRadiation.ExtraterrestrialOfPeriod(where, noon.AddHours(3), Duration.FromHours(1)).Value.MegajoulesPerSquareMeter;

        Assert.InRange(after / before, 0.96, 1.04);
    }

    [Property]
    public void Radiation_OfOneDay_IsInOrder(ushort place, ushort day, byte sun)
    {
        Angle latitude = Angle.FromDegrees(Latitude(place));
        DateOnly date = Date(day);
        double dayHours = Hours(latitude.Degrees, date, DaylightMethod.Geometric);
        double above = SolarRadiation.Extraterrestrial(latitude, date).Value.MegajoulesPerSquareMeter;
        double clear = SolarRadiation.ClearSky(latitude, date, AngstromCoefficients.Fao56).Value.MegajoulesPerSquareMeter;
        double some = SolarRadiation.FromSunshine(latitude, date, Duration.FromHours(dayHours * sun / 255)).Value.MegajoulesPerSquareMeter;
        double none = SolarRadiation.FromSunshine(latitude, date, Duration.Zero).Value.MegajoulesPerSquareMeter;

        Assert.InRange(above, 0, 50);
        Assert.True(none <= some + Rounding && some <= clear + Rounding && clear <= above);
        Assert.Equal(clear, SolarRadiation.ClearSky(latitude, date, Length.Zero).Value.MegajoulesPerSquareMeter, 1e-6);
        Assert.Equal(above == 0, dayHours == 0);
    }

    [Property]
    public void ClearSky_Altitude_AddsTwoPercentOfTheAtmosphereAKilometre(ushort place, ushort day, ushort metres)
    {
        Angle latitude = Angle.FromDegrees(Latitude(place));
        double height = metres % 5000;
        double added = SolarRadiation.ClearSky(latitude, Date(day), Length.FromMeters(height)).Value.MegajoulesPerSquareMeter
            - SolarRadiation.ClearSky(latitude, Date(day), Length.Zero).Value.MegajoulesPerSquareMeter;

        Assert.Equal(2e-5 * height * SolarRadiation.Extraterrestrial(latitude, Date(day)).Value.MegajoulesPerSquareMeter, added, 1e-6);
    }

    [Property]
    public void FromTemperature_FourTimesTheRange_IsTwice(ushort place, ushort day, byte range)
    {
        Angle latitude = Angle.FromDegrees(Latitude(place));
        TemperatureDelta one = TemperatureDelta.FromDegreesCelsius(range / 20.0);
        foreach (LandSetting setting in Enum.GetValues<LandSetting>())
        {
            double single = SolarRadiation.FromTemperature(latitude, Date(day), one, setting).Value.MegajoulesPerSquareMeter;
            double inFahrenheit = SolarRadiation.FromTemperature(
                latitude, Date(day), TemperatureDelta.FromDegreesFahrenheit(4 * one.DegreesCelsius * 1.8), setting).Value.MegajoulesPerSquareMeter;
            Assert.Equal(2 * single, inFahrenheit, 1e-6);
        }

        Assert.Equal(
            0.19 / 0.16 * SolarRadiation.FromTemperature(latitude, Date(day), one, LandSetting.Interior).Value.MegajoulesPerSquareMeter,
            SolarRadiation.FromTemperature(latitude, Date(day), one, LandSetting.Coastal).Value.MegajoulesPerSquareMeter,
            1e-6);
    }

    [Property]
    public void Everything_LatitudeInRadians_IsTheSame(ushort place, ushort day)
    {
        Angle degrees = Angle.FromDegrees(Math.Round(Latitude(place) * 0.6, 1, MidpointRounding.AwayFromZero));
        Angle radians = Angle.FromRadians(degrees.Radians);

        Assert.Equal(
            SolarRadiation.Extraterrestrial(degrees, Date(day)).Value.MegajoulesPerSquareMeter,
            SolarRadiation.Extraterrestrial(radians, Date(day)).Value.MegajoulesPerSquareMeter,
            Rounding);
        Assert.Equal(new Place(degrees, Angle.Zero), new Place(radians, Angle.Zero));
        Assert.Equal(
            Daylight.On(new Place(degrees, Angle.Zero), Date(day), TimeSpan.Zero).Value.Sunrise,
            Daylight.On(new Place(radians, Angle.Zero), Date(day), TimeSpan.Zero).Value.Sunrise);
    }

    private static double Hours(double latitude, DateOnly date, DaylightMethod method) =>
        Daylight.Length(Angle.FromDegrees(latitude), date, method).Value.Hours;

    private static SunTimes Times(double latitude, double longitude, DateOnly date, int offset) =>
        Daylight.On(Where(latitude, longitude), date, TimeSpan.FromHours(offset)).Value;

    private static Place Where(double latitude, double longitude) => new(Angle.FromDegrees(latitude), Angle.FromDegrees(longitude));

    private static double Latitude(ushort place) => -90 + 180.0 * place / ushort.MaxValue;

    private static double Longitude(ushort place) => -180 + 360.0 * place / ushort.MaxValue;

    /// <summary>A day from 1 January 1900 to the end of 2079.</summary>
    private static DateOnly Date(ushort day) => new DateOnly(1900, 1, 2).AddDays(day);
}
