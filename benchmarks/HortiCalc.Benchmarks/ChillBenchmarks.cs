using BenchmarkDotNet.Attributes;
using BenchmarkDotNet.Configs;
using HortiCalc.Climate;
using UnitsNet.Units;

namespace HortiCalc.Benchmarks;

/// <summary>
/// A year of hours at 8 and at 200 stations: each chill model across stations, beside the loop over one station after another that a user would write.
/// </summary>
[MemoryDiagnoser]
[GroupBenchmarksBy(BenchmarkLogicalGroupRule.ByCategory)]
[CategoriesColumn]
public class ChillBenchmarks
{
    private const int Hours = 8760;
    private double[][] series = [];
    private double[] temperatures = [];
    private double[] totals = [];
    private int[] missing = [];

    [Params(8, 200)]
    public int Stations { get; set; }

    [GlobalSetup]
    public void Setup()
    {
        Random noise = new(1990);
        series = [.. Enumerable.Range(0, Stations).Select(station => Year(noise, station))];
        temperatures = new double[Hours * Stations];
        for (int hour = 0; hour < Hours; hour++)
        {
            for (int station = 0; station < Stations; station++)
                temperatures[hour * Stations + station] = series[station][hour];
        }

        totals = new double[Stations];
        missing = new int[Stations];
    }

    [BenchmarkCategory("dynamic"), Benchmark(Baseline = true)]
    public double DynamicLoop() => series.Sum(Dynamic);

    [BenchmarkCategory("dynamic"), Benchmark]
    public double DynamicAcrossStations() => Across(ChillModel.Dynamic);

    [BenchmarkCategory("utah"), Benchmark(Baseline = true)]
    public double UtahLoop() => series.Sum(Utah);

    [BenchmarkCategory("utah"), Benchmark]
    public double UtahAcrossStations() => Across(ChillModel.UtahCelsius);

    [BenchmarkCategory("hours"), Benchmark(Baseline = true)]
    public double HoursLoop() => series.Sum(year => year.Count(celsius => celsius is >= 0 and <= 7.2));

    [BenchmarkCategory("hours"), Benchmark]
    public double HoursAcrossStations() => Across(ChillModel.HoursFromZero);

    [BenchmarkCategory("degree hours"), Benchmark(Baseline = true)]
    public double DegreeHoursLoop() => series.Sum(DegreeHours);

    [BenchmarkCategory("degree hours"), Benchmark]
    public double DegreeHoursAcrossStations()
    {
        GrowingDegreeHours.Totals(temperatures, Stations, TemperatureUnit.DegreeCelsius, totals, missing);
        return totals[0];
    }

    private double Across(ChillModel model)
    {
        Chill.Totals(temperatures, Stations, TemperatureUnit.DegreeCelsius, model, totals, missing);
        return totals[0];
    }

    private static double[] Year(Random noise, int station) =>
    [
        .. Enumerable.Range(0, Hours).Select(hour =>
            9 - 8 * Math.Cos(2 * Math.PI * hour / Hours) - 5 * Math.Cos(Math.PI * hour / 12) + 4 * (noise.NextDouble() - 0.5) + station % 7),
    ];

    private static double Dynamic(double[] year)
    {
        double portions = 0;
        double left = 0;
        foreach (double celsius in year)
        {
            double kelvin = celsius + 273;
            double balance = 139_500 / 2.567e18 * Math.Exp((12888.8 - 4153.5) / kelvin);
            double destruction = 2.567e18 * Math.Exp(-12888.8 / kelvin);
            double product = balance - (balance - left) * Math.Exp(-destruction);
            left = product;
            if (product < 1)
                continue;
            double share = 1 / (1 + Math.Exp(-1.6 * 277 * (kelvin - 277) / kelvin));
            portions += product * share;
            left = product * (1 - share);
        }

        return portions;
    }

    private static double Utah(double[] year)
    {
        double units = 0;
        foreach (double celsius in year)
        {
            units += celsius switch
            {
                <= 1.4 => 0,
                <= 2.4 => 0.5,
                <= 9.1 => 1,
                <= 12.4 => 0.5,
                <= 15.9 => 0,
                <= 18 => -0.5,
                _ => -1,
            };
        }

        return units;
    }

    private static double DegreeHours(double[] year)
    {
        double sum = 0;
        foreach (double celsius in year)
        {
            sum += celsius switch
            {
                <= 4 or >= 36 => 0,
                <= 25 => 10.5 * (1 + Math.Cos(Math.PI + Math.PI * (celsius - 4) / 21)),
                _ => 21 * (1 + Math.Cos(Math.PI / 2 + Math.PI / 2 * (celsius - 25) / 11)),
            };
        }

        return sum;
    }
}
