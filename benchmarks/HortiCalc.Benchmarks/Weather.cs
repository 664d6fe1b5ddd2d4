using HortiCalc.Climate;
using UnitsNet.Units;

namespace HortiCalc.Benchmarks;

/// <summary>Thirty years of made-up days: a season's wave with seeded noise.</summary>
internal static class Weather
{
    public const int Days = 10_957;

    public static readonly DateOnly Start = new(1991, 1, 1);

    public static (double[] MinimaCelsius, double[] MaximaCelsius) Arrays()
    {
        Random noise = new(1991);
        double[] minima = new double[Days];
        double[] maxima = new double[Days];
        for (int day = 0; day < Days; day++)
        {
            double mean = 10 - (10 * Math.Cos(2 * Math.PI * (day - 20) / 365.25)) + (6 * (noise.NextDouble() - 0.5));
            double half = 4 + (3 * noise.NextDouble());
            minima[day] = mean - half;
            maxima[day] = mean + half;
        }

        return (minima, maxima);
    }

    public static DailyTemperatures Series()
    {
        (double[] minima, double[] maxima) = Arrays();
        return DailyTemperatures.Create(Start, minima, maxima, TemperatureUnit.DegreeCelsius);
    }
}
