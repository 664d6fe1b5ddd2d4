using HortiCalc.Evidence;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Climate;

/// <summary>Where the sun is, when it rises and sets, and how long it is up.</summary>
/// <remarks>Every published way stands behind one signature and is chosen by a <see cref="DaylightMethod"/>.</remarks>
public static class Daylight
{
    private const double LargestOffsetHours = 14;

    /// <summary>The time from sunrise to sunset.</summary>
    /// <param name="latitude">The latitude, north positive, from -90 to 90°.</param>
    /// <param name="date">The date. 29 February is the 60th day of its year, as the sources count.</param>
    /// <param name="method">
    /// Where the sun is and what counts as sunrise: <see cref="DaylightMethod.Geometric"/> with rules of crop water
    /// and of hourly temperature, <see cref="DaylightMethod.Almanac"/> for what a clock shows.
    /// </param>
    /// <returns>From 0 h, the polar night, to 24 h, the polar day. Both are what they are: no error, and no caution.</returns>
    /// <exception cref="ArgumentOutOfRangeException">
    /// The latitude is not from -90 to 90°, or the year is not one that the method was published for.
    /// </exception>
    /// <exception cref="ArgumentNullException">The method is <see langword="null"/>.</exception>
    /// <example><code>
    /// Estimate&lt;Duration&gt; midsummer = Daylight.Length(Angle.FromDegrees(52), new DateOnly(2025, 6, 21), DaylightMethod.Geometric);
    /// Console.WriteLine(midsummer.Value.Hours); // 16.5
    /// </code></example>
    public static Estimate<Duration> Length(Angle latitude, DateOnly date, DaylightMethod method)
    {
        Guard.NotNull(method).Require(date, nameof(date));
        return new Estimate<Duration>(Duration.FromDays(method.LengthHours(Degrees(latitude), date) / 24), method.Evidence);
    }

    /// <summary>How long the sun stands above an elevation: above a hedge all round, or high enough to reach into a yard.</summary>
    /// <param name="latitude">The latitude, north positive, from -90 to 90°.</param>
    /// <param name="date">The date.</param>
    /// <param name="elevation">The elevation of the sun's centre, without refraction, from -90 to 90°.</param>
    /// <returns>From 0 h to 24 h.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An angle is not from -90 to 90°, or the year is not from 1900 to 2100.</exception>
    public static Estimate<Duration> LengthAbove(Angle latitude, DateOnly date, Angle elevation)
    {
        SunEvidence.Position.Require(date.Year, "", nameof(date));
        SolarDay day = SolarDay.Around(SolarPosition.NoonDays(date), Degrees(latitude), 0, Degrees(elevation, nameof(elevation)));
        return new Estimate<Duration>(Duration.FromDays(day.LengthHours / 24), SunEvidence.Position);
    }

    /// <summary>When the sun rises, stands highest and sets.</summary>
    /// <param name="place">The place.</param>
    /// <param name="date">The date by the clock.</param>
    /// <param name="utcOffset">
    /// What the clock is ahead of universal time, summer time included, from -14 to 14 hours and whole minutes; never guessed from the machine.
    /// </param>
    /// <param name="method">What counts as sunrise; <see langword="null"/> for <see cref="DaylightMethod.Almanac"/>, as almanacs print.</param>
    /// <returns>
    /// The times, to the second. Mean refraction and a level horizon are assumed: hills, weather and altitude move a real sunrise by minutes.
    /// </returns>
    /// <exception cref="ArgumentNullException">The place is <see langword="null"/>.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The offset is not from -14 to 14 hours, or the year is not from 1900 to 2100.</exception>
    /// <exception cref="ArgumentException">The offset is not of whole minutes.</exception>
    /// <example><code>
    /// Place garden = new(Angle.FromDegrees(52.1), Angle.FromDegrees(-1.4));
    /// Estimate&lt;SunTimes&gt; day = Daylight.On(garden, new DateOnly(2025, 6, 21), TimeSpan.FromHours(1));
    /// Console.WriteLine(day.Value.Sunrise?.ToString("HH:mm")); // 04:44
    /// </code></example>
    public static Estimate<SunTimes> On(Place place, DateOnly date, TimeSpan utcOffset, DaylightMethod? method = null)
    {
        Guard.NotNull(place);
        Guard.Within(utcOffset.TotalHours, -LargestOffsetHours, LargestOffsetHours, "h", nameof(utcOffset));
        if (utcOffset.Ticks % TimeSpan.TicksPerMinute != 0)
            throw new ArgumentException($"utcOffset was {utcOffset}; allowed: whole minutes.", nameof(utcOffset));
        DaylightMethod way = method ?? DaylightMethod.Almanac;
        way.Require(date, nameof(date));
        SunEvidence.Position.Require(date.Year, "", nameof(date));

        // The noon that falls on the date by this clock, which may keep the date of a country on the other side of the date line.
        int noonDays = SolarPosition.NoonDays(date);
        SolarDay day = way.Around(noonDays, place.LatitudeDegrees, place.LongitudeDegrees, date);
        double noonOfClock = day.NoonDays - noonDays + 0.5 + utcOffset.TotalDays;
        int shift = -(int)Math.Floor(noonOfClock);
        if (shift != 0)
            day = way.Around(noonDays + shift, place.LatitudeDegrees, place.LongitudeDegrees, date);
        DateTimeOffset noon = Clock(day.NoonDays);
        return new Estimate<SunTimes>(
            new SunTimes(
                date,
                noon,
                day.RiseDays is double rise ? Clock(rise) : null,
                day.SetDays is double set ? Clock(set) : null,
                Duration.FromDays(day.LengthHours / 24)),
            way.Evidence);

        DateTimeOffset Clock(double days)
        {
            double seconds = Math.Round((days - noonDays + 0.5) * 86_400, MidpointRounding.AwayFromZero);
            return new DateTimeOffset(date, TimeOnly.MinValue, TimeSpan.Zero).AddSeconds(seconds).ToOffset(utcOffset);
        }
    }

    /// <summary>Where the sun stands in the sky.</summary>
    /// <param name="place">The place.</param>
    /// <param name="time">The moment.</param>
    /// <returns>Elevation of the sun's centre, without refraction (which lifts it by half a degree at the horizon), and azimuth.</returns>
    /// <exception cref="ArgumentNullException">The place is <see langword="null"/>.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The year is not from 1900 to 2100.</exception>
    /// <example><code>
    /// Place garden = new(Angle.FromDegrees(52.1), Angle.FromDegrees(-1.4));
    /// Estimate&lt;SunPosition&gt; sun = Daylight.Position(garden, new DateTimeOffset(2025, 12, 21, 12, 0, 0, TimeSpan.Zero));
    /// Console.WriteLine(sun.Value.Shadow(Length.FromMeters(2))); // how far a 2 m hedge shades the bed behind it
    /// </code></example>
    public static Estimate<SunPosition> Position(Place place, DateTimeOffset time)
    {
        Guard.NotNull(place);
        SunEvidence.Position.Require(time.UtcDateTime.Year, "", nameof(time));
        double days = SolarPosition.Days(time);
        (double declination, double equationOfTime) = SolarPosition.At(days);
        double hourAngle = 2 * Math.PI * Math.IEEERemainder(SolarPosition.HourAngleTurns(days, equationOfTime, place.LongitudeDegrees), 1);
        (double sineOfLatitude, double cosineOfLatitude) = Math.SinCos(double.DegreesToRadians(place.LatitudeDegrees));
        (double sine, double cosine) = Math.SinCos(declination);
        double up = sineOfLatitude * sine + cosineOfLatitude * cosine * Math.Cos(hourAngle);
        double north = cosineOfLatitude * sine - sineOfLatitude * cosine * Math.Cos(hourAngle);
        double east = -cosine * Math.Sin(hourAngle);
        double azimuth = double.RadiansToDegrees(Math.Atan2(east, north));
        return new Estimate<SunPosition>(
            new SunPosition(
                Angle.FromDegrees(double.RadiansToDegrees(Math.Asin(Math.Clamp(up, -1, 1)))),
                Angle.FromDegrees(azimuth < 0 ? azimuth + 360 : azimuth)),
            SunEvidence.Position);
    }

    /// <summary>How far north of the equator the sun stands overhead at noon of Greenwich.</summary>
    /// <param name="date">The date.</param>
    /// <param name="method">How the declination is reckoned.</param>
    /// <returns>From about -23.5° at the December solstice to 23.5° at the June one.</returns>
    /// <exception cref="ArgumentNullException">The method is <see langword="null"/>.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The year is not one that the method was published for.</exception>
    public static Estimate<Angle> Declination(DateOnly date, DaylightMethod method)
    {
        Guard.NotNull(method).Require(date, nameof(date));
        return new Estimate<Angle>(Angle.FromDegrees(double.RadiansToDegrees(method.DeclinationRadians(date))), method.Evidence);
    }

    /// <summary>How far a sundial is ahead of a clock that keeps mean solar time, at noon of Greenwich.</summary>
    /// <param name="date">The date.</param>
    /// <returns>From about -14 minutes in February to 16 minutes in November.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The year is not from 1900 to 2100.</exception>
    public static Estimate<Duration> EquationOfTime(DateOnly date)
    {
        SunEvidence.Position.Require(date.Year, "", nameof(date));
        return new Estimate<Duration>(
            Duration.FromMinutes(SolarPosition.At(SolarPosition.NoonDays(date)).EquationOfTimeMinutes), SunEvidence.Position);
    }

    /// <summary>The dates on which the length of the day passes a given length: when onions begin to bulb, when strawberries set buds.</summary>
    /// <param name="latitude">The latitude, north positive, from -90 to 90°.</param>
    /// <param name="span">The days to look at.</param>
    /// <param name="dayLength">The length, from 0 to 24 h.</param>
    /// <param name="method">What counts as day; a critical length holds with the definition it was measured with.</param>
    /// <returns>
    /// The crossings, each on the first day on its other side. A first day that is long enough is no crossing unless the day before it was shorter,
    /// which cannot be told where the method was not published for the year of that day.
    /// </returns>
    /// <exception cref="ArgumentNullException">The method is <see langword="null"/>.</exception>
    /// <exception cref="ArgumentOutOfRangeException">
    /// The latitude or the length is outside its range, or a year of the span is not one that the method was published for.
    /// </exception>
    /// <example><code>
    /// Estimate&lt;PhotoperiodCrossings&gt; longDays = Daylight.Crossings(
    ///     Angle.FromDegrees(45), new DateSpan(new DateOnly(2025, 1, 1), new DateOnly(2025, 12, 31)), Duration.FromHours(14), DaylightMethod.Almanac);
    /// Console.WriteLine(longDays.Value.Crossings[0]); // the first day of 14 h
    /// </code></example>
    public static Estimate<PhotoperiodCrossings> Crossings(Angle latitude, DateSpan span, Duration dayLength, DaylightMethod method)
    {
        Guard.NotNull(method).Require(span.From, nameof(span));
        method.Require(span.To, nameof(span));
        double degrees = Degrees(latitude);
        double hours = Guard.Within(Boundary.Days(dayLength) * 24, 0, 24, "h", nameof(dayLength));
        List<PhotoperiodCrossing> crossings = [];
        int reached = 0;
        bool? wasLong = span.From > DateOnly.MinValue && method.Holds(span.From.AddDays(-1)) ? IsLong(span.From.DayNumber - 1) : null;
        for (int day = span.From.DayNumber; day <= span.To.DayNumber; day++)
        {
            bool isLong = IsLong(day);
            if (isLong == !wasLong)
                crossings.Add(new PhotoperiodCrossing(DateOnly.FromDayNumber(day), isLong));
            reached += isLong ? 1 : 0;
            wasLong = isLong;
        }

        return new Estimate<PhotoperiodCrossings>(new PhotoperiodCrossings(dayLength, span, crossings, reached), method.Evidence);

        bool IsLong(int day) => method.LengthHours(degrees, DateOnly.FromDayNumber(day)) >= hours;
    }

    internal static double Degrees(Angle latitude, string parameter = "latitude") =>
        Guard.Within(Boundary.Degrees(latitude), -90, 90, "°", parameter);
}
