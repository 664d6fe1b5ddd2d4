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
        Random random = new(seed);
        DateOnly start = Cut.InYear(FirstYear);
        double[] minima = new double[Cut.InYear(FirstYear + Seasons).DayNumber - start.DayNumber];
        minima.AsSpan().Fill(FreezeRecords.Mild);
        for (int season = 0; season < Seasons; season++)
        {
            double normal = Math.Sqrt(-2 * Math.Log(1 - random.NextDouble())) * Math.Cos(Math.Tau * random.NextDouble());
            int day = (int)Math.Round(meanDaysFromCut + deviationDays * normal);
            if (random.NextDouble() < share)
                minima[Cut.InYear(FirstYear + season).DayNumber - start.DayNumber + day] = FreezeRecords.Freezing;
        }

        return DailyTemperatures.FromMinima(start, minima, TemperatureUnit.DegreeCelsius);
    }

    /// <summary>Daily minima by a wave over the year and red noise, so that freezes come in spells.</summary>
    public static DailyTemperatures Daily(int seed, int years, double meanCelsius, double amplitudeCelsius)
    {
        Random random = new(seed);
        DateOnly start = new(1991, 1, 1);
        double[] minima = new double[new DateOnly(1991 + years, 1, 1).DayNumber - start.DayNumber];
        double noise = 0;
        for (int day = 0; day < minima.Length; day++)
        {
            double normal = Math.Sqrt(-2 * Math.Log(1 - random.NextDouble())) * Math.Cos(Math.Tau * random.NextDouble());
            noise = 0.7 * noise + 2.5 * normal;
            minima[day] = meanCelsius - amplitudeCelsius * Math.Cos((day - 15) * Math.Tau / 365.25) + noise;
        }

        return DailyTemperatures.FromMinima(start, minima, TemperatureUnit.DegreeCelsius);
    }
}
