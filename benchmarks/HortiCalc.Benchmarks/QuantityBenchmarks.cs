using System.Globalization;
using BenchmarkDotNet.Attributes;
using HortiCalc.Display;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Benchmarks;

/// <summary>The door: a quantity turned into a number, and a quantity turned into text, beside UnitsNet's own.</summary>
[MemoryDiagnoser]
public class QuantityBenchmarks
{
    private readonly Temperature warm = Temperature.FromDegreesFahrenheit(70);
    private readonly Mass mass = Mass.FromKilograms(1.9);

    [Benchmark]
    public double UnitsNetDegreesCelsius() => warm.DegreesCelsius;

    [Benchmark]
    public double BoundaryCelsius() => Boundary.Celsius(warm);

    [Benchmark]
    public string UnitsNetToString() => mass.ToString(CultureInfo.InvariantCulture);

    [Benchmark]
    public string QuantityTextFormat() => QuantityText.Format(mass, MeasurementSystem.Metric, CultureInfo.InvariantCulture);
}
