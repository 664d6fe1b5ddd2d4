namespace HortiCalc.Climate;

/// <summary>
/// Where the sun stands at a moment, by the low-precision theory that the solar calculations of NOAA print after Meeus, Astronomical
/// Algorithms, chapters 25 and 28: within about 0.01° from 1900 to 2100. Universal time stands for dynamical time: a minute's
/// difference moves the sun by less than a thousandth of a degree.
/// </summary>
internal static class SolarPosition
{
    private const double DaysPerCentury = 36_525;
    private const double MinutesPerDegree = 4;

    private static readonly int Epoch = new DateOnly(2000, 1, 1).DayNumber;

    /// <summary>Days from 1 January 2000, 12:00 universal time, to 12:00 of a date.</summary>
    public static int NoonDays(DateOnly date) => date.DayNumber - Epoch;

    /// <summary>Days from 1 January 2000, 12:00 universal time, to a moment.</summary>
    public static double Days(DateTimeOffset time)
    {
        DateTime universal = time.UtcDateTime;
        return DateOnly.FromDateTime(universal).DayNumber - Epoch - 0.5 + universal.TimeOfDay.TotalDays;
    }

    public static (double DeclinationRadians, double EquationOfTimeMinutes) At(double days)
    {
        double centuries = days / DaysPerCentury;
        double meanLongitude = Radians(280.46646 + centuries * (36000.76983 + centuries * 0.0003032));
        double anomaly = Radians(357.52911 + centuries * (35999.05029 - 0.0001537 * centuries));
        double eccentricity = 0.016708634 - centuries * (0.000042037 + 0.0000001267 * centuries);
        double centreDegrees = Math.Sin(anomaly) * (1.914602 - centuries * (0.004817 + 0.000014 * centuries))
            + Math.Sin(2 * anomaly) * (0.019993 - 0.000101 * centuries)
            + Math.Sin(3 * anomaly) * 0.000289;
        double node = Radians(125.04 - 1934.136 * centuries);
        double longitude = meanLongitude + Radians(centreDegrees - 0.00569 - 0.00478 * Math.Sin(node));
        double meanObliquityDegrees = 23 + (26 + (21.448 - centuries * (46.815 + centuries * (0.00059 - centuries * 0.001813))) / 60) / 60;
        double obliquity = Radians(meanObliquityDegrees + 0.00256 * Math.Cos(node));

        double y = Math.Tan(obliquity / 2) * Math.Tan(obliquity / 2);
        double equationOfTime = y * Math.Sin(2 * meanLongitude)
            - 2 * eccentricity * Math.Sin(anomaly)
            + 4 * eccentricity * y * Math.Sin(anomaly) * Math.Cos(2 * meanLongitude)
            - 0.5 * y * y * Math.Sin(4 * meanLongitude)
            - 1.25 * eccentricity * eccentricity * Math.Sin(2 * anomaly);
        return (
            Math.Asin(Math.Sin(obliquity) * Math.Sin(longitude)),
            MinutesPerDegree * double.RadiansToDegrees(equationOfTime));
    }

    /// <summary>The moment at which the sun crosses the meridian of a place, nearest to the noon of its mean solar time.</summary>
    public static double MeridianDays(int noonDays, double longitudeDegrees)
    {
        double meanNoon = noonDays - longitudeDegrees / 360;
        double days = meanNoon;

        // The equation of time changes by half a minute a day: the second pass settles it to a hundredth of a second.
        for (int pass = 0; pass < 3; pass++)
            days = meanNoon - At(days).EquationOfTimeMinutes / 1440;
        return days;
    }

    /// <summary>How far the sun is past the meridian, in parts of a turn.</summary>
    public static double HourAngleTurns(double days, double equationOfTimeMinutes, double longitudeDegrees) =>
        days + longitudeDegrees / 360 + equationOfTimeMinutes / 1440;

    private static double Radians(double degrees) => double.DegreesToRadians(degrees);
}
