namespace HortiCalc.Climate;

/// <summary>The sun of FAO Irrigation and Drainage Paper 56, chapter 3: the same in every year, by the number of the day.</summary>
internal static class Fao56Sun
{
    // The solar constant, MJ/(m²·min).
    private const double SolarConstant = 0.0820;
    private const double HoursPerRadian = 12 / Math.PI;

    /// <summary>Equation 24.</summary>
    public static double DeclinationRadians(int dayOfYear) => 0.409 * Math.Sin(2 * Math.PI / 365 * dayOfYear - 1.39);

    /// <summary>Equation 25: how far from the meridian the sun sets, from 0, the polar night, to π, the polar day.</summary>
    public static double SunsetRadians(double latitudeDegrees, int dayOfYear)
    {
        (double sineOfLatitude, double cosineOfLatitude) = Math.SinCos(double.DegreesToRadians(latitudeDegrees));
        (double sineOfDeclination, double cosineOfDeclination) = Math.SinCos(DeclinationRadians(dayOfYear));

        // The cosine of the hour angle at sunset, before the division that fails at a pole.
        double above = -sineOfLatitude * sineOfDeclination;
        double span = cosineOfLatitude * cosineOfDeclination;
        return above <= -span ? Math.PI : above >= span ? 0 : Math.Acos(above / span);
    }

    /// <summary>Equation 34.</summary>
    public static double DayLengthHours(double latitudeDegrees, int dayOfYear) =>
        2 * HoursPerRadian * SunsetRadians(latitudeDegrees, dayOfYear);

    /// <summary>Equation 21, as the integral of equation 28 from sunrise to sunset.</summary>
    public static double MegajoulesOfDay(double latitudeDegrees, int dayOfYear)
    {
        double sunset = SunsetRadians(latitudeDegrees, dayOfYear);
        return Megajoules(latitudeDegrees, dayOfYear, -sunset, sunset);
    }

    /// <summary>
    /// Equation 28 between two solar time angles, each limited to the time when the sun is up, so that the hours of a day sum to the day.
    /// The angles may lie beyond midnight.
    /// </summary>
    public static double MegajoulesBetween(double latitudeDegrees, int dayOfYear, double fromRadians, double toRadians)
    {
        double sunset = SunsetRadians(latitudeDegrees, dayOfYear);
        double sum = 0;
        for (int day = -2; day <= 2; day++)
        {
            double noon = day * 2 * Math.PI;
            double from = Math.Max(fromRadians, noon - sunset);
            double to = Math.Min(toRadians, noon + sunset);
            if (to > from)
                sum += Megajoules(latitudeDegrees, dayOfYear, from - noon, to - noon);
        }

        return sum;
    }

    /// <summary>Equation 31: the solar time angle at an hour of universal time.</summary>
    public static double SolarTimeRadians(double universalHours, double longitudeDegrees, int dayOfYear) =>
        (universalHours + longitudeDegrees / 15 + SeasonalCorrectionHours(dayOfYear) - 12) / HoursPerRadian;

    /// <summary>Equations 32 and 33.</summary>
    private static double SeasonalCorrectionHours(int dayOfYear)
    {
        double b = 2 * Math.PI * (dayOfYear - 81) / 364;
        return 0.1645 * Math.Sin(2 * b) - 0.1255 * Math.Cos(b) - 0.025 * Math.Sin(b);
    }

    private static double Megajoules(double latitudeDegrees, int dayOfYear, double fromRadians, double toRadians)
    {
        (double sineOfLatitude, double cosineOfLatitude) = Math.SinCos(double.DegreesToRadians(latitudeDegrees));
        (double sineOfDeclination, double cosineOfDeclination) = Math.SinCos(DeclinationRadians(dayOfYear));
        double inverseDistance = 1 + 0.033 * Math.Cos(2 * Math.PI / 365 * dayOfYear); // Equation 23.
        double megajoules = HoursPerRadian * 60 * SolarConstant * inverseDistance
            * ((toRadians - fromRadians) * sineOfLatitude * sineOfDeclination
                + cosineOfLatitude * cosineOfDeclination * (Math.Sin(toRadians) - Math.Sin(fromRadians)));
        return Math.Max(0, megajoules); // A hair below zero at the edge of the polar night.
    }
}
