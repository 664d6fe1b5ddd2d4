namespace HortiCalc.Climate;

/// <summary>
/// The temperature at an hour of the day, by the clock of the sun, from the extremes of that day and its neighbours. What a neighbour
/// does not know (NaN) makes the hours that need it NaN.
/// </summary>
internal static class DiurnalKernels
{
    // Parton and Logan 1981, air at 150 cm: lag of the maximum after noon (h), coefficient of the night, lag of the minimum after sunrise (h).
    // Printed again at https://search.r-project.org/CRAN/refmans/TrenchR/html/diurnal_temp_variation_sineexp.html
    private const double MaximumLagHours = 1.86;
    private const double NightCoefficient = 2.20;
    private const double MinimumLagHours = -0.17;

    // Cesaraccio et al. 2001: the maximum comes 4 h before sunset; the share of the fall to the next minimum that is done by sunset.
    // Four hours counted by both are at https://rdrr.io/cran/TrenchR/src/tests/testthat/test-22-DTRFunctions.R and tested against.
    private const double MaximumBeforeSunsetHours = 4;
    private const double FallAtSunset = 0.39;

    public static double Sine(in DiurnalDay yesterday, in DiurnalDay today, in DiurnalDay tomorrow, double hour) =>
        (today.MaximumCelsius + today.MinimumCelsius) / 2 + today.RangeCelsius / 2 * Math.Sin(Math.PI * (hour / 12 + 1));

    public static double DoubleSine(in DiurnalDay yesterday, in DiurnalDay today, in DiurnalDay tomorrow, double hour) =>
        hour < 6 ? HalfWave(yesterday.MaximumCelsius, today.MinimumCelsius, hour + 6)
        : hour < 18 ? HalfWave(today.MinimumCelsius, today.MaximumCelsius, hour - 6)
        : HalfWave(today.MaximumCelsius, tomorrow.MinimumCelsius, hour - 18);

    public static double SineLogarithm(in DiurnalDay yesterday, in DiurnalDay today, in DiurnalDay tomorrow, double hour)
    {
        return hour < today.SunriseHour ? Night(yesterday, today, hour + 24)
            : hour <= today.SunsetHour ? Day(today, hour - today.SunriseHour)
            : Night(today, tomorrow, hour);

        static double Day(in DiurnalDay day, double sinceSunriseHours) =>
            day.MinimumCelsius + day.RangeCelsius * Math.Sin(Math.PI * sinceSunriseHours / (day.LengthHours + 4));

        // The logarithm starts an hour after sunset; until then it stays as warm as at sunset.
        static double Night(in DiurnalDay day, in DiurnalDay next, double hour)
        {
            double sunsetCelsius = Day(day, day.LengthHours);
            double share = Math.Log(Math.Max(1, hour - day.SunsetHour)) / Math.Log(day.NightHoursTo(next));
            return sunsetCelsius + (next.MinimumCelsius - sunsetCelsius) * share;
        }
    }

    public static double SineExponential(in DiurnalDay yesterday, in DiurnalDay today, in DiurnalDay tomorrow, double hour)
    {
        return hour < today.SunriseHour + MinimumLagHours ? Night(yesterday, today, hour + 24)
            : hour <= today.SunsetHour ? Day(today, hour - today.SunriseHour - MinimumLagHours)
            : hour < tomorrow.SunriseHour + MinimumLagHours + 24 ? Night(today, tomorrow, hour)
            : Day(tomorrow, hour - 24 - tomorrow.SunriseHour - MinimumLagHours);

        static double Day(in DiurnalDay day, double sinceMinimumHours) =>
            day.MinimumCelsius + day.RangeCelsius * Math.Sin(Math.PI * sinceMinimumHours / (day.LengthHours + 2 * MaximumLagHours));

        static double Night(in DiurnalDay day, in DiurnalDay next, double hour)
        {
            double sunsetCelsius = Day(day, day.LengthHours - MinimumLagHours);
            double decay = Math.Exp(-NightCoefficient * (hour - day.SunsetHour) / day.NightHoursTo(next));
            return next.MinimumCelsius + (sunsetCelsius - next.MinimumCelsius) * decay;
        }
    }

    public static double SineSineSquareRoot(in DiurnalDay yesterday, in DiurnalDay today, in DiurnalDay tomorrow, double hour)
    {
        double maximumHour = today.SunsetHour - MaximumBeforeSunsetHours;
        return hour < today.SunriseHour ? Night(yesterday, today, hour + 24)
            : hour < maximumHour ? today.MinimumCelsius
                + today.RangeCelsius * Math.Sin(Math.PI / 2 * (hour - today.SunriseHour) / (maximumHour - today.SunriseHour))
            : hour <= today.SunsetHour ? Afternoon(today, tomorrow, hour - maximumHour)
            : Night(today, tomorrow, hour);

        static double SunsetCelsius(in DiurnalDay day, in DiurnalDay next) =>
            day.MaximumCelsius - FallAtSunset * (day.MaximumCelsius - next.MinimumCelsius);

        static double Afternoon(in DiurnalDay day, in DiurnalDay next, double sinceMaximumHours)
        {
            double sunsetCelsius = SunsetCelsius(day, next);
            return sunsetCelsius + (day.MaximumCelsius - sunsetCelsius)
                * Math.Sin(Math.PI / 2 * (1 + sinceMaximumHours / MaximumBeforeSunsetHours));
        }

        static double Night(in DiurnalDay day, in DiurnalDay next, double hour)
        {
            double sunsetCelsius = SunsetCelsius(day, next);
            return sunsetCelsius
                + (next.MinimumCelsius - sunsetCelsius) * Math.Sqrt((hour - day.SunsetHour) / day.NightHoursTo(next));
        }
    }

    public static double TwoHarmonics(in DiurnalDay yesterday, in DiurnalDay today, in DiurnalDay tomorrow, double hour)
    {
        // Campbell and Norman 1997, equations 2.2 and 2.3.
        double share = 0.44 - 0.46 * Math.Sin(Math.PI / 12 * hour + 0.9) + 0.11 * Math.Sin(Math.PI / 6 * hour + 0.9);
        return hour <= 5 ? Between(today.MinimumCelsius, yesterday.MaximumCelsius)
            : hour <= 14 ? Between(today.MinimumCelsius, today.MaximumCelsius)
            : Between(tomorrow.MinimumCelsius, today.MaximumCelsius);

        double Between(double minimumCelsius, double maximumCelsius) => maximumCelsius * share + minimumCelsius * (1 - share);
    }

    /// <summary>Half a cosine from one extreme to the next, twelve hours later.</summary>
    private static double HalfWave(double fromCelsius, double toCelsius, double hours) =>
        (fromCelsius + toCelsius) / 2 + (fromCelsius - toCelsius) / 2 * Math.Cos(Math.PI * hours / 12);
}
