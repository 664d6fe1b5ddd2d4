#!/usr/bin/env dotnet
#:project HortiCalc.Benchmarks/HortiCalc.Benchmarks.csproj
#:property PublishAot=false

// The chill table of docs/performance.md on a machine that does other work as well: what ChillBenchmarks measures, each model and its plain loop in turn,
// many times over, and the best of each.
//     dotnet run -c Release benchmarks/alternating-chill.cs

using System.Diagnostics;
using HortiCalc.Benchmarks;

Console.WriteLine("| model | stations | loop, ns a station and hour | HortiCalc | loop / HortiCalc |");
Console.WriteLine("|---|---|---|---|---|");
foreach (int stations in (int[])[8, 200])
{
    ChillBenchmarks chill = new() { Stations = stations };
    chill.Setup();
    Compare("hours", stations, chill.HoursLoop, chill.HoursAcrossStations);
    Compare("Utah", stations, chill.UtahLoop, chill.UtahAcrossStations);
    Compare("growing degree hours", stations, chill.DegreeHoursLoop, chill.DegreeHoursAcrossStations);
    Compare("dynamic", stations, chill.DynamicLoop, chill.DynamicAcrossStations);
}

static void Compare(string model, int stations, Func<double> loop, Func<double> across)
{
    double bestLoop = double.PositiveInfinity, bestAcross = double.PositiveInfinity;
    Stopwatch since = Stopwatch.StartNew();
    for (int round = 0; round < 30 || since.ElapsedMilliseconds < 1500; round++)
    {
        bestLoop = Math.Min(bestLoop, Taken(loop));
        bestAcross = Math.Min(bestAcross, Taken(across));
    }

    double values = 8760.0 * stations;
    Console.WriteLine(FormattableString.Invariant(
        $"| {model} | {stations} | {bestLoop / values:F3} | {bestAcross / values:F3} | {bestLoop / bestAcross:F1} |"));
}

static double Taken(Func<double> count)
{
    long start = Stopwatch.GetTimestamp();
    count();
    return Stopwatch.GetElapsedTime(start).TotalNanoseconds;
}
