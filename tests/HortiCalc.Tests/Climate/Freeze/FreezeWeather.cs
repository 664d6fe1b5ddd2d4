using HortiCalc.Climate;
using UnitsNet.Units;

namespace HortiCalc.Tests.Climate;

/// <summary>Invented sites whose true chances are known because they were drawn from them.</summary>
internal static class FreezeWeather
{
    public static readonly MonthDay Cut = new(8, 1);
    public const int FirstYear = 1980;
    public const int Seasons = 30;

    /// <summary>Thirty whole cold seasons, each with a freeze by the share given, on one date about a mean by the normal distribution.</summary>
    public static DailyTemperatures Site(int seed, double share, double meanDaysFromCut, double deviationDays)
    {
        SeededRandom random = new(seed);
        DateOnly start = Cut.InYear(FirstYear);
        double[] minima = new double[Cut.InYear(FirstYear + Seasons).DayNumber - start.DayNumber];
        minima.AsSpan().Fill(FreezeRecords.Mild);
        for (int season = 0; season < Seasons; season++)
        {
            int day = (int)Math.Round(meanDaysFromCut + deviationDays * Normal(ref random));
            if (Uniform(ref random) < share)
                minima[Cut.InYear(FirstYear + season).DayNumber - start.DayNumber + day] = FreezeRecords.Freezing;
        }

        return DailyTemperatures.FromMinima(start, minima, TemperatureUnit.DegreeCelsius);
    }

    // Neighbouring seeds of the platform's generator are alike in their first numbers; those of this one are not.
    public static double Uniform(ref SeededRandom random) => (random.Next() >> 11) * Math.ScaleB(1, -53);

    public static double Normal(ref SeededRandom random) =>
        Math.Sqrt(-2 * Math.Log(1 - Uniform(ref random))) * Math.Cos(Math.Tau * Uniform(ref random));

    /// <summary>Daily minima by a wave over the year and red noise, so that freezes come in spells.</summary>
    public static DailyTemperatures Daily(int seed, int years, double meanCelsius, double amplitudeCelsius)
    {
        SeededRandom random = new(seed);
        DateOnly start = new(1991, 1, 1);
        double[] minima = new double[new DateOnly(1991 + years, 1, 1).DayNumber - start.DayNumber];
        double noise = 0;
        for (int day = 0; day < minima.Length; day++)
        {
            noise = 0.7 * noise + 2.5 * Normal(ref random);
            minima[day] = meanCelsius - amplitudeCelsius * Math.Cos((day - 15) * Math.Tau / 365.25) + noise;
        }

        return DailyTemperatures.FromMinima(start, minima, TemperatureUnit.DegreeCelsius);
    }
}
