using BenchmarkDotNet.Attributes;
using BenchmarkDotNet.Configs;
using HortiCalc.Climate;
using UnitsNet.Units;

namespace HortiCalc.Benchmarks;

/// <summary>A million readings of a thermometer and a hygrometer, beside the loop that a user would write. Every figure is for one reading.</summary>
[MemoryDiagnoser]
[GroupBenchmarksBy(BenchmarkLogicalGroupRule.ByCategory)]
[CategoriesColumn]
public class HumidityBenchmarks
{
    public const int Readings = 1_000_000;

    private readonly double[] temperatures = new double[Readings];
    private readonly double[] humidities = new double[Readings];
    private readonly double[] results = new double[Readings];

    [GlobalSetup]
    public void Setup()
    {
        Random noise = new(1871);
        for (int reading = 0; reading < Readings; reading++)
        {
            temperatures[reading] = 1 + 38 * noise.NextDouble();
            humidities[reading] = 20 + 80 * noise.NextDouble();
        }
    }

    [BenchmarkCategory("deficit"), Benchmark(Baseline = true, OperationsPerInvoke = Readings)]
    public void DeficitLoop()
    {
        for (int reading = 0; reading < Readings; reading++)
            results[reading] = Saturation(temperatures[reading]) * (1 - humidities[reading] / 100);
    }

    [BenchmarkCategory("deficit"), Benchmark(OperationsPerInvoke = Readings)]
    public void Deficit() => Humidity.VapourPressureDeficits(
        temperatures, TemperatureUnit.DegreeCelsius, humidities, SaturationVapourPressure.Wmo, PressureUnit.Kilopascal, results);

    [BenchmarkCategory("deficit"), Benchmark(OperationsPerInvoke = Readings)]
    public void DeficitByHylandWexler() => Humidity.VapourPressureDeficits(
        temperatures, TemperatureUnit.DegreeCelsius, humidities, SaturationVapourPressure.HylandWexler, PressureUnit.Kilopascal, results);

    [BenchmarkCategory("dew point"), Benchmark(Baseline = true, OperationsPerInvoke = Readings)]
    public void DewPointLoop()
    {
        for (int reading = 0; reading < Readings; reading++)
        {
            double y = Math.Log(Saturation(temperatures[reading]) * humidities[reading] / 100 / 0.6112);
            results[reading] = 243.12 * y / (17.62 - y);
        }
    }

    [BenchmarkCategory("dew point"), Benchmark(OperationsPerInvoke = Readings)]
    public void DewPoint() =>
        Humidity.DewPoints(temperatures, TemperatureUnit.DegreeCelsius, humidities, SaturationVapourPressure.Wmo, results);

    private static double Saturation(double celsius) => 0.6112 * Math.Exp(17.62 * celsius / (243.12 + celsius));
}
