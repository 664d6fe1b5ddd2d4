using System.Text.Json;
using HortiCalc.Climate;
using HortiCalc.Evidence;
using HortiCalc.Json;
using HortiCalc.Tests.Units;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Tests.Climate;

public class SunEdges
{
    private static readonly Place Tromso = new(Angle.FromDegrees(69.65), Angle.FromDegrees(18.96));
    private static readonly Place Garden = new(Angle.FromDegrees(52.1), Angle.FromDegrees(-1.4));
    private static readonly TimeSpan SummerTime = TimeSpan.FromHours(2);
    private static readonly DateOnly Midsummer = new(2025, 6, 21);

    [Fact]
    public void On_PolarDayAndNight_HaveNoSunriseAndSaySo()
    {
        SunTimes day = Daylight.On(Tromso, Midsummer, SummerTime).Value;
        SunTimes night = Daylight.On(Tromso, new DateOnly(2025, 12, 21), TimeSpan.FromHours(1)).Value;

        Assert.Null(day.Sunrise);
        Assert.Null(day.Sunset);
        Assert.Equal(24, day.DayLength.Hours);
        Assert.Contains("the sun does not set", day.ToString(), StringComparison.Ordinal);
        Assert.Null(night.Sunrise);
        Assert.Null(night.Sunset);
        Assert.Equal(0, night.DayLength.Hours);
        Assert.Contains("the sun does not rise", night.ToString(), StringComparison.Ordinal);
        Assert.Equal(12, night.SolarNoon.Hour + (night.SolarNoon.Minute >= 30 ? 1 : 0));
    }

    [Fact]
    public void On_DaysRoundThePolarDay_GrowToIt()
    {
        double before = 0;
        for (DateOnly date = new(2025, 4, 20); date < new DateOnly(2025, 6, 1); date = date.AddDays(1))
        {
            SunTimes times = Daylight.On(Tromso, date, SummerTime).Value;
            Assert.True(times.DayLength.Hours >= before);
            Assert.Equal(times.DayLength.Hours >= 24, times.Sunrise is null && times.Sunset is null);
            before = times.DayLength.Hours;
        }

        Assert.Equal(24, before);
    }

    [Fact]
    public void On_CivilTwilightOfThePolarNight_IsThere()
    {
        Estimate<SunTimes> twilight = Daylight.On(Tromso, new DateOnly(2025, 12, 21), TimeSpan.FromHours(1), DaylightMethod.CivilTwilight);

        Assert.InRange(twilight.Value.DayLength.Hours, 3, 6);
        Assert.Equal("civil-twilight", twilight.Method.Key);
    }

    [Fact]
    public void On_Geometric_IsItsLengthAboutNoon()
    {
        SunTimes times = Daylight.On(Garden, Midsummer, TimeSpan.Zero, DaylightMethod.Geometric).Value;

        Assert.Equal(Daylight.Length(Garden.Latitude, Midsummer, DaylightMethod.Geometric).Value.Hours, times.DayLength.Hours, 1e-9);
        Assert.Equal((times.SolarNoon - times.Sunrise!.Value).TotalSeconds, (times.Sunset!.Value - times.SolarNoon).TotalSeconds, 1.5);
    }

    [Theory]
    [InlineData(179.9, 12)]
    [InlineData(-171.8, 13)]
    [InlineData(-157.5, 14)]
    [InlineData(-179.9, -12)]
    public void On_EitherSideOfTheDateLine_KeepsTheDateOfTheClock(double longitude, int offset)
    {
        SunTimes times = Daylight.On(new Place(Angle.FromDegrees(-13), Angle.FromDegrees(longitude)), new DateOnly(2024, 2, 29), TimeSpan.FromHours(offset)).Value;

        Assert.Equal(new DateOnly(2024, 2, 29), DateOnly.FromDateTime(times.SolarNoon.DateTime));
        Assert.InRange(times.DayLength.Hours, 12, 13);
    }

    [Fact]
    public void On_OffsetOutOfRangeOrOfSeconds_IsRefused()
    {
        ArgumentOutOfRangeException far = Assert.Throws<ArgumentOutOfRangeException>(
            "utcOffset", () => Daylight.On(Garden, Midsummer, TimeSpan.FromHours(15)));
        Assert.Contains("15 h; allowed: from -14 to 14 h", far.Message, StringComparison.Ordinal);
        Assert.Contains("whole minutes", Assert.Throws<ArgumentException>("utcOffset", () => Daylight.On(Garden, Midsummer, TimeSpan.FromSeconds(3601))).Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(1899)]
    [InlineData(2101)]
    public void Everything_YearOutsideTheTheory_IsRefusedAndTheDomainSaysSo(int year)
    {
        DateOnly date = new(year, 6, 1);
        foreach (Func<object> answer in (Func<object>[])
        [
            () => Daylight.On(Garden, date, TimeSpan.Zero),
            () => Daylight.On(Garden, date, TimeSpan.Zero, DaylightMethod.Geometric),
            () => Daylight.EquationOfTime(date),
            () => Daylight.LengthAbove(Garden.Latitude, date, Angle.Zero),
            () => Daylight.Declination(date, DaylightMethod.CivilTwilight),
        ])
        {
            Assert.Contains("from 1900 to 2100", Assert.Throws<ArgumentOutOfRangeException>("date", answer).Message, StringComparison.Ordinal);
        }

        Assert.Throws<ArgumentOutOfRangeException>("time", () => Daylight.Position(Garden, new DateTimeOffset(date, TimeOnly.MinValue, TimeSpan.Zero)));
        Assert.Throws<ArgumentOutOfRangeException>(
            "span", () => Daylight.Crossings(Garden.Latitude, new DateSpan(date, date.AddDays(5)), Duration.FromHours(12), DaylightMethod.Almanac));
        Assert.False(DaylightMethod.CivilTwilight.Evidence.Domain.Contains("date", year));
    }

    [Fact]
    public void Crossings_DayBeforeTheSpanIsBeforeTheMethod_IsNotLookedAt()
    {
        DateOnly first = new(1900, 1, 1);
        Duration justReached = Daylight.Length(Garden.Latitude, first, DaylightMethod.Almanac).Value - Duration.FromSeconds(10);

        Assert.Empty(Daylight.Crossings(Garden.Latitude, new DateSpan(first, first.AddDays(30)), justReached, DaylightMethod.Almanac).Value.Crossings);
    }

    [Fact]
    public void Length_YearBeforeTheMethod_SaysWhichYears() => Assert.StartsWith(
        "date was 1899; allowed: from 1900 to 2100, which is what",
        Assert.Throws<ArgumentOutOfRangeException>(() => Daylight.Length(Garden.Latitude, new DateOnly(1899, 12, 31), DaylightMethod.Almanac)).Message,
        StringComparison.Ordinal);

    [Fact]
    public void Crossings_CalendarOfOneSine_ReachesTheEndsOfTheCalendar()
    {
        PhotoperiodCrossings all = Daylight.Crossings(
            Garden.Latitude, new DateSpan(DateOnly.MinValue, DateOnly.MinValue.AddDays(364)), Duration.FromHours(12), DaylightMethod.Geometric).Value;

        Assert.Equal([true, false], all.Crossings.Select(crossing => crossing.IsRising));
        Assert.Equal(
            1,
            Daylight.Crossings(Garden.Latitude, new DateSpan(DateOnly.MaxValue, DateOnly.MaxValue), Duration.FromHours(1), DaylightMethod.Geometric).Value.DaysReached);
    }

    [Theory]
    [InlineData(45, 14, 2)]
    [InlineData(-45, 14, 2)]
    [InlineData(0, 14, 0)]
    [InlineData(45, 20, 0)]
    [InlineData(0, 12, 0)]
    public void Crossings_OfAYear_AreRisingAndFallingOrNone(double latitude, double hours, int count)
    {
        Estimate<PhotoperiodCrossings> year = Daylight.Crossings(
            Angle.FromDegrees(latitude), new DateSpan(new DateOnly(2025, 1, 1), new DateOnly(2025, 12, 31)), Duration.FromHours(hours), DaylightMethod.Almanac);

        Assert.Equal(count, year.Value.Crossings.Count);
        if (count == 2)
            Assert.Equal(latitude > 0, year.Value.Crossings[0].IsRising);
        else
            Assert.True(year.Value.DaysReached == (hours == 12 ? 365 : 0));
        Assert.Contains(count == 2 ? "rising" : hours == 12 ? "every day" : "no day", year.Value.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void Length_LeapDay_IsCountedAsTheSixtiethDay() => Assert.Equal(
        SolarRadiation.Extraterrestrial(Garden.Latitude, new DateOnly(2024, 2, 29)).Value,
        SolarRadiation.Extraterrestrial(Garden.Latitude, new DateOnly(2023, 3, 1)).Value);

    [Theory]
    [InlineData(-90.5)]
    [InlineData(91)]
    public void Place_NoAngle_IsRefused(double degrees)
    {
        Assert.Throws<ArgumentOutOfRangeException>("latitude", () => new Place(Angle.FromDegrees(degrees), Angle.Zero));
        ArgumentOutOfRangeException refusal = Assert.Throws<ArgumentOutOfRangeException>(
            "longitude", () => new Place(Angle.Zero, Angle.FromDegrees(degrees * 2)));
        Assert.Contains("from -180 to 180 °", refusal.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void SunTimes_OutOfOrder_IsRefused()
    {
        DateTimeOffset noon = new(Midsummer, new TimeOnly(12, 0), TimeSpan.Zero);

        Assert.Throws<ArgumentOutOfRangeException>("sunrise", () => new SunTimes(Midsummer, noon, noon.AddHours(1), null, Duration.Zero));
        Assert.Throws<ArgumentOutOfRangeException>("sunset", () => new SunTimes(Midsummer, noon, null, noon.AddHours(-1), Duration.Zero));
        Assert.Throws<ArgumentOutOfRangeException>("dayLength", () => new SunTimes(Midsummer, noon, null, null, Duration.FromHours(25)));
    }

    [Fact]
    public void Shadow_SunAt45Degrees_IsAsLongAsTheHedgeIsHigh()
    {
        SunPosition sun = new(Angle.FromDegrees(45), Angle.FromDegrees(180));

        Assert.Equal(2, sun.Shadow(Length.FromMeters(2))!.Value.Meters, 1e-9);
        Assert.Null(new SunPosition(Angle.FromDegrees(-1), Angle.Zero).Shadow(Length.FromMeters(2)));
        Assert.Throws<ArgumentOutOfRangeException>("height", () => sun.Shadow(Length.FromMeters(-1)));
    }

    [Fact]
    public void ExtraterrestrialOfPeriod_NightAndTooLong_AreZeroAndRefused()
    {
        DateTimeOffset midnight = new(Midsummer, TimeOnly.MinValue, TimeSpan.Zero);

        Assert.Equal(0, SolarRadiation.ExtraterrestrialOfPeriod(Garden, midnight, Duration.FromHours(1)).Value.JoulesPerSquareMeter);
        Assert.InRange(SolarRadiation.ExtraterrestrialOfPeriod(Garden, midnight.AddHours(12), Duration.FromHours(1)).Value.MegajoulesPerSquareMeter, 4, 4.5);
        ArgumentOutOfRangeException refusal = Assert.Throws<ArgumentOutOfRangeException>(
            "period", () => SolarRadiation.ExtraterrestrialOfPeriod(Garden, midnight, Duration.FromHours(2)));
        Assert.Contains("2 h; allowed: from 0 to 1 h", refusal.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void FromSunshine_MoreThanTheDay_IsRefusedWithTheDay()
    {
        ArgumentOutOfRangeException refusal = Assert.Throws<ArgumentOutOfRangeException>(
            "sunshine", () => SolarRadiation.FromSunshine(Garden.Latitude, new DateOnly(2025, 12, 21), Duration.FromHours(9)));

        Assert.Contains("9 h; allowed: from 0 to 7.", refusal.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Radiation_PolarNight_IsZeroWithTheCautionOfHighLatitudes()
    {
        Estimate<Irradiation> night = SolarRadiation.FromSunshine(Tromso.Latitude, new DateOnly(2025, 12, 21), Duration.Zero);

        Assert.Equal(0, night.Value.JoulesPerSquareMeter);
        Assert.Equal("sun.high-latitude", Assert.Single(night.Cautions).Code);
        Assert.Empty(SolarRadiation.Extraterrestrial(Garden.Latitude, Midsummer).Cautions);
    }

    [Fact]
    public void FromTemperature_MoreThanClearSky_IsCautioned()
    {
        Estimate<Irradiation> front = SolarRadiation.FromTemperature(
            Garden.Latitude, Midsummer, TemperatureDelta.FromDegreesCelsius(25), LandSetting.Interior);

        Assert.Equal("sun.brighter-than-clear", Assert.Single(front.Cautions).Code);
        Assert.Throws<ArgumentOutOfRangeException>(
            "range", () => SolarRadiation.FromTemperature(Garden.Latitude, Midsummer, TemperatureDelta.FromDegreesCelsius(-1), LandSetting.Interior));
        Assert.Throws<ArgumentOutOfRangeException>(
            "setting", () => SolarRadiation.FromTemperature(Garden.Latitude, Midsummer, TemperatureDelta.FromDegreesCelsius(5), (LandSetting)7));
        Assert.Throws<ArgumentOutOfRangeException>("altitude", () => SolarRadiation.ClearSky(Garden.Latitude, Midsummer, Length.FromMeters(9000)));
        Assert.Throws<ArgumentOutOfRangeException>("sunshine", () => new AngstromCoefficients(0.5, 0.6, AngstromCoefficients.Fao56.Source));
    }

    [Fact]
    public void ToString_InAnyCulture_IsOneHonestLine()
    {
        using CultureScope german = new("de-DE");
        SunTimes times = Daylight.On(Garden, Midsummer, TimeSpan.FromHours(1)).Value;

        Assert.Matches(@"^2025-06-21: 04:44 to 21:30, 16\.8 h, solar noon 13:0\d \(UTC\+01:00\)$", times.ToString());
        Assert.Equal("52.1° north, 1.4° west", Garden.ToString());
        Assert.StartsWith("0.25 + 0.5 n/N [FAO, Rome", AngstromCoefficients.Fao56.ToString(), StringComparison.Ordinal);
        Assert.Equal("elevation 41.5°, azimuth 180°", new SunPosition(Angle.FromDegrees(41.5), Angle.FromDegrees(180)).ToString());
        Assert.StartsWith("32.2 MJ/m²; radiation above the atmosphere, a day [FAO", SolarRadiation.Extraterrestrial(Angle.FromDegrees(-20), new DateOnly(2025, 9, 3)).ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void Json_EveryType_ComesBackEqual()
    {
        RoundTrip(Garden);
        RoundTrip(Daylight.On(Garden, Midsummer, TimeSpan.FromHours(1)));
        RoundTrip(Daylight.On(Tromso, Midsummer, TimeSpan.FromHours(1)));
        RoundTrip(Daylight.Position(Garden, new DateTimeOffset(2025, 6, 21, 10, 0, 0, TimeSpan.Zero)));
        RoundTrip(Daylight.Crossings(
            Garden.Latitude, new DateSpan(new DateOnly(2025, 1, 1), new DateOnly(2025, 12, 31)), Duration.FromHours(14), DaylightMethod.Almanac));
        RoundTrip(SolarRadiation.Extraterrestrial(Tromso.Latitude, Midsummer));
        RoundTrip(AngstromCoefficients.Fao56);
        RoundTrip(LandSetting.Coastal);
        Assert.All(DaylightMethod.All, RoundTrip);
    }

    private static void RoundTrip<T>(T value) => Assert.Equal(
        value, JsonSerializer.Deserialize<T>(JsonSerializer.Serialize(value, HortiCalcJson.Options), HortiCalcJson.Options));
}
