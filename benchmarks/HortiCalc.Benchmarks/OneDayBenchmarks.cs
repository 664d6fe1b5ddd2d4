using BenchmarkDotNet.Attributes;
using HortiCalc.Climate;
using HortiCalc.Units;
using UnitsNet;
using UnitsNet.Units;

namespace HortiCalc.Benchmarks;

/// <summary>One day, quantities in and a quantity out; and LINQ over a thousand days of quantities, for each of them.</summary>
[MemoryDiagnoser]
public class OneDayBenchmarks
{
    private const int Days = 1000;

    private readonly Temperature minimum = Temperature.FromDegreesCelsius(6.5);
    private readonly Temperature maximum = Temperature.FromDegreesFahrenheit(90.5);
    private readonly DegreeDayThresholds thresholds = new(Temperature.FromDegreesCelsius(10), Temperature.FromDegreesCelsius(30));
    private readonly double[] minima = new double[Days];
    private readonly double[] maxima = new double[Days];
    private readonly double[] counted = new double[Days];
    private (Temperature Minimum, Temperature Maximum)[] quantities = [];

    [GlobalSetup]
    public void Setup()
    {
        (double[] lows, double[] highs) = Weather.Arrays();
        lows.AsSpan(0, Days).CopyTo(minima);
        highs.AsSpan(0, Days).CopyTo(maxima);
        quantities = [.. minima.Zip(maxima, (low, high) => (Temperature.FromDegreesCelsius(low), Temperature.FromDegreesCelsius(high)))];
    }

    [Benchmark]
    public ThermalTime OneDayClampedAverage() =>
        DegreeDays.OfDay(minimum, maximum, thresholds, DegreeDayMethod.ClampedAverage, UpperCutoff.Horizontal);

    [Benchmark]
    public ThermalTime OneDaySine() =>
        DegreeDays.OfDay(minimum, maximum, thresholds, DegreeDayMethod.SingleSine, UpperCutoff.Horizontal);

    [Benchmark]
    public ThermalTime OneDayDoubleSineVertical() =>
        DegreeDays.OfDay(minimum, maximum, thresholds, DegreeDayMethod.DoubleSine, UpperCutoff.Vertical);

    [Benchmark(OperationsPerInvoke = Days)]
    public double[] LinqOverQuantities()
    {
        Temperature lower = thresholds.Lower;
        Temperature upper = thresholds.Upper!.Value;
        return [.. quantities.Select(day =>
            ((UnitMath.Clamp(day.Minimum, lower, upper) - lower).DegreesCelsius + (UnitMath.Clamp(day.Maximum, lower, upper) - lower).DegreesCelsius) / 2)];
    }

    [Benchmark(OperationsPerInvoke = Days)]
    public void SpanOfTheSameDays() =>
        DegreeDays.Count(minima, maxima, TemperatureUnit.DegreeCelsius, thresholds, DegreeDayMethod.ClampedAverage, UpperCutoff.Horizontal, counted);
}
