using HortiCalc.Evidence;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Climate;

/// <summary>Draws the hours of the day between its lowest and its highest temperature.</summary>
public static class DiurnalCourse
{
    private static readonly Caution Smooth = new(
        "hourly.from-extremes",
        CautionLevel.Note,
        "Hours drawn from daily extremes follow a clear day: fronts, cloud and warm nights are not in them, and counts made from them can differ from counts of readings.",
        Source.CommonPractice("hourly-from-extremes", "a curve through two temperatures knows nothing of the weather between"));

    /// <summary>The temperature of every full hour of a record of daily extremes.</summary>
    /// <param name="days">The daily extremes.</param>
    /// <param name="latitude">The latitude, north positive, from -90 to 90°; it sets sunrise and sunset.</param>
    /// <param name="curve">The course of the day; <see cref="DiurnalCurve.SineLogarithm"/> where nothing else decides.</param>
    /// <param name="daylight">
    /// How the length of the day is reckoned; <see langword="null"/> for <see cref="DaylightMethod.Geometric"/>.
    /// </param>
    /// <returns>
    /// The hours 0 to 23 of each day by the sun, whose noon is 12. An hour is missing where the curve needs a day that is missing
    /// or is outside the record: most curves need the day before until sunrise and the day after from sunset on, so that the first
    /// night and the last are missing. Give a day more at each end.
    /// </returns>
    /// <exception cref="ArgumentNullException">The days or the curve are <see langword="null"/>.</exception>
    /// <exception cref="ArgumentOutOfRangeException">
    /// The latitude is not from -90 to 90°, or a day of the record is too short or too long for the curve.
    /// </exception>
    /// <example><code>
    /// DailyTemperatures days = DailyTemperatures.Create(
    ///     new DateOnly(2024, 11, 1), [4, 6, 5], [14, 15, 12], TemperatureUnit.DegreeCelsius);
    /// Estimate&lt;HourlyTemperatures&gt; hours = DiurnalCourse.Hourly(days, Angle.FromDegrees(45), DiurnalCurve.SineLogarithm);
    /// Temperature? noon = hours.Value[new DateTime(2024, 11, 2, 12, 0, 0)];
    /// </code></example>
    public static Estimate<HourlyTemperatures> Hourly(
        DailyTemperatures days, Angle latitude, DiurnalCurve curve, DaylightMethod? daylight = null)
    {
        Guard.NotNull(days);
        Guard.NotNull(curve);
        double latitudeDegrees = Daylight.Degrees(latitude);
        DaylightMethod method = daylight ?? DaylightMethod.Geometric;
        method.Require(days.Start, nameof(days));
        method.Require(days.End, nameof(days));
        double[] hoursCelsius = new double[days.Count * 24];
        DiurnalDay yesterday = new(double.NaN, double.NaN, LengthHours(days.Start.DayNumber - 1));
        DiurnalDay today = Day(0);
        for (int day = 0; day < days.Count; day++)
        {
            DiurnalDay tomorrow = Day(day + 1);
            RequireLength(today.LengthHours, day);
            for (int hour = 0; hour < 24; hour++)
                hoursCelsius[day * 24 + hour] = curve.At(yesterday, today, tomorrow, hour);
            (yesterday, today) = (today, tomorrow);
        }

        return new Estimate<HourlyTemperatures>(
            HourlyTemperatures.OfCelsius(days.Start.ToDateTime(TimeOnly.MinValue), hoursCelsius), curve.Evidence, cautions: [Smooth]);

        DiurnalDay Day(int day) => day < days.Count
            ? new DiurnalDay(days.MinimaCelsius[day], days.MaximaCelsius[day], LengthHours(days.Start.DayNumber + day))
            : new DiurnalDay(double.NaN, double.NaN, LengthHours(days.Start.DayNumber + day));

        // The day beyond the calendar is as long as the one at its edge.
        double LengthHours(int dayNumber) => method.LengthHours(
            latitudeDegrees, DateOnly.FromDayNumber(Math.Clamp(dayNumber, DateOnly.MinValue.DayNumber, DateOnly.MaxValue.DayNumber)));

        void RequireLength(double lengthHours, int day)
        {
            if (curve.Evidence.Domain.Contains("dayLength", lengthHours))
                return;
            throw new ArgumentOutOfRangeException(
                nameof(latitude),
                $"latitude was {Guard.Number(latitudeDegrees)} °, where {AirTemperature.Text(days.Start.AddDays(day))} has "
                + $"{Guard.Number(lengthHours)} h of daylight; allowed: {curve.Evidence.Domain}.");
        }
    }

    /// <summary>The temperature some time after sunrise, until the next sunrise.</summary>
    /// <param name="sinceSunrise">The time since sunrise, from 0 up to, not including, 24 h.</param>
    /// <param name="minimum">The lowest temperature of the day.</param>
    /// <param name="maximum">The highest temperature of the day, not below the lowest.</param>
    /// <param name="nextMinimum">The lowest temperature of the day after.</param>
    /// <param name="dayLength">The length of the day, from 0 to 24 h; the day after is as long.</param>
    /// <param name="curve">The course of the day.</param>
    /// <returns>The temperature.</returns>
    /// <exception cref="ArgumentNullException">The curve is <see langword="null"/>.</exception>
    /// <exception cref="ArgumentOutOfRangeException">
    /// A value is out of range, or the day is too short or too long for the curve.
    /// </exception>
    /// <exception cref="ArgumentException">The curve needs more than this day and the next minimum at that time.</exception>
    public static Estimate<Temperature> AfterSunrise(
        Duration sinceSunrise, Temperature minimum, Temperature maximum, Temperature nextMinimum, Duration dayLength, DiurnalCurve curve)
    {
        Guard.NotNull(curve);
        double sinceHours = Guard.Within(Boundary.Days(sinceSunrise) * 24, 0, Math.BitDecrement(24.0), "h", nameof(sinceSunrise));
        double minimumCelsius = AirCelsius(minimum, AirTemperature.LowestCelsius, nameof(minimum));
        double maximumCelsius = AirCelsius(maximum, minimumCelsius, nameof(maximum));
        double nextMinimumCelsius = AirCelsius(nextMinimum, AirTemperature.LowestCelsius, nameof(nextMinimum));
        double lengthHours = Guard.Within(Boundary.Days(dayLength) * 24, 0, 24, "h", nameof(dayLength));
        curve.Evidence.Require(lengthHours, "h", nameof(dayLength));

        DiurnalDay unknown = new(double.NaN, double.NaN, lengthHours);
        DiurnalDay today = new(minimumCelsius, maximumCelsius, lengthHours);
        DiurnalDay tomorrow = new(nextMinimumCelsius, double.NaN, lengthHours);
        double hour = today.SunriseHour + sinceHours;
        double celsius = hour < 24
            ? curve.At(unknown, today, tomorrow, hour)
            : curve.At(today, tomorrow, unknown, hour - 24);
        return double.IsNaN(celsius)
            ? throw new ArgumentException(
                $"sinceSunrise was {Guard.Number(sinceHours)} h, where '{curve}' needs the days around; allowed: a time that it takes from this day, or the record with Hourly.",
                nameof(sinceSunrise))
            : new Estimate<Temperature>(Temperature.FromDegreesCelsius(celsius), curve.Evidence, cautions: [Smooth]);
    }

    private static double AirCelsius(Temperature temperature, double lowestCelsius, string parameter) =>
        Guard.Within(Boundary.Celsius(temperature), lowestCelsius, AirTemperature.HighestCelsius, "°C", parameter);
}
