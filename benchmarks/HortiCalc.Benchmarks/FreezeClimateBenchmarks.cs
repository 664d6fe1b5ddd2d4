using BenchmarkDotNet.Attributes;
using HortiCalc.Climate;
using UnitsNet;

namespace HortiCalc.Benchmarks;

/// <summary>The freeze climate of thirty years of daily minima.</summary>
[MemoryDiagnoser]
public class FreezeClimateBenchmarks
{
    private readonly DailyTemperatures days = Weather.Series();
    private readonly FreezeClimateOptions north = new(Hemisphere.Northern);

    [Benchmark]
    public FreezeClimate FromDaily() => FreezeClimate.FromDaily(days, Temperature.FromDegreesCelsius(0), north);
}
