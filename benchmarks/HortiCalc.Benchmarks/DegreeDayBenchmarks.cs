using BenchmarkDotNet.Attributes;
using HortiCalc.Climate;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Benchmarks;

/// <summary>Thirty years of degree days by the clamped average, beside what a user would write with LINQ over quantities.</summary>
[MemoryDiagnoser]
public class DegreeDayBenchmarks
{
    private readonly DailyTemperatures days = Weather.Series();
    private readonly DegreeDayThresholds thresholds = new(Temperature.FromDegreesCelsius(10), Temperature.FromDegreesCelsius(30));
    private (Temperature Minimum, Temperature Maximum)[] quantities = [];

    [GlobalSetup]
    public void Setup()
    {
        (double[] minima, double[] maxima) = Weather.Arrays();
        quantities = [.. minima.Zip(maxima, (low, high) => (Temperature.FromDegreesCelsius(low), Temperature.FromDegreesCelsius(high)))];
    }

    [Benchmark(Baseline = true)]
    public double LinqOverQuantities()
    {
        Temperature lower = Temperature.FromDegreesCelsius(10);
        Temperature upper = Temperature.FromDegreesCelsius(30);
        return quantities.Sum(day =>
            ((UnitMath.Clamp(day.Minimum, lower, upper) - lower).DegreesCelsius + (UnitMath.Clamp(day.Maximum, lower, upper) - lower).DegreesCelsius) / 2);
    }

    [Benchmark]
    public ThermalTime ClampedAverage() => DegreeDays.Accumulate(days, thresholds, DegreeDayMethod.ClampedAverage, UpperCutoff.Horizontal).Total;

    [Benchmark]
    public ThermalTime SingleSine() => DegreeDays.Accumulate(days, thresholds, DegreeDayMethod.SingleSine, UpperCutoff.Horizontal).Total;
}
