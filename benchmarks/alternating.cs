#!/usr/bin/env dotnet
#:project ../src/HortiCalc/HortiCalc.csproj
#:property PublishAot=false
#:property TieredPGO=false

// The ratios of docs/performance.md on a machine that does other work as well: every count in turn, many times over, and the best of each.
// GridBenchmarks measures the same with the usual statistics, which a busy neighbour disturbs.
//     dotnet run -c Release benchmarks/alternating.cs

using System.Diagnostics;
using System.Numerics;
using HortiCalc.Climate;
using UnitsNet;
using UnitsNet.Units;

const int Pairs = 10_000_000;
const int Rounds = 60;
double[] minima = new double[Pairs], maxima = new double[Pairs], counted = new double[Pairs];
double[] from = new double[Pairs + Pairs / 2], to = new double[Pairs + Pairs / 2];
Array.Fill(from, 1.5);
Random noise = new(1991);
for (int day = 0; day < Pairs; day++)
{
    double mean = 12 - 12 * Math.Cos(2 * Math.PI * (day - 20) / 365.25) + 8 * (noise.NextDouble() - 0.5);
    double half = 3 + 6 * noise.NextDouble();
    (minima[day], maxima[day]) = (mean - half, mean + half);
}

DegreeDayThresholds lower = new(Temperature.FromDegreesCelsius(10));
DegreeDayThresholds both = new(Temperature.FromDegreesCelsius(10), Temperature.FromDegreesCelsius(30));
(string Name, Action Count)[] counts =
[
    ("copy of the same bytes", () => Copy(0, from.Length)),
    ("copy, two threads", CopyTwo),
    ("clamped average", () => Part(0, Pairs, both, DegreeDayMethod.ClampedAverage, UpperCutoff.Horizontal)),
    ("clamped average, two threads", () => Two(both, DegreeDayMethod.ClampedAverage, UpperCutoff.Horizontal)),
    ("four cases", () => Part(0, Pairs, lower, DegreeDayMethod.FourCase, UpperCutoff.None)),
    ("triangle, both thresholds", () => Part(0, Pairs, both, DegreeDayMethod.SingleTriangle, UpperCutoff.Horizontal)),
    ("sine, lower threshold", () => Part(0, Pairs, lower, DegreeDayMethod.SingleSine, UpperCutoff.None)),
    ("sine, lower, two threads", () => Two(lower, DegreeDayMethod.SingleSine, UpperCutoff.None)),
    ("sine, both thresholds", () => Part(0, Pairs, both, DegreeDayMethod.SingleSine, UpperCutoff.Horizontal)),
    ("sine, both, two threads", () => Two(both, DegreeDayMethod.SingleSine, UpperCutoff.Horizontal)),
    ("sine, vertical", () => Part(0, Pairs, both, DegreeDayMethod.SingleSine, UpperCutoff.Vertical)),
    ("double sine, both thresholds", () => Part(0, Pairs, both, DegreeDayMethod.DoubleSine, UpperCutoff.Horizontal)),
    ("double sine, vertical", () => Part(0, Pairs, both, DegreeDayMethod.DoubleSine, UpperCutoff.Vertical)),
];

double[][] nanoseconds = [.. counts.Select(_ => new double[Rounds])];
for (int round = -5; round < Rounds; round++)
{
    for (int count = 0; count < counts.Length; count++)
    {
        long start = Stopwatch.GetTimestamp();
        counts[count].Count();
        double taken = Stopwatch.GetElapsedTime(start).TotalNanoseconds / Pairs;
        if (round >= 0)
            nanoseconds[count][round] = taken;
    }
}

double clamped = nanoseconds[Array.FindIndex(counts, count => count.Name == "clamped average")].Min();
Console.WriteLine("| count | best, ns a pair | median | best, times the clamped average |");
Console.WriteLine("|---|---|---|---|");
for (int count = 0; count < counts.Length; count++)
    Console.WriteLine(FormattableString.Invariant($"| {counts[count].Name} | {nanoseconds[count].Min():F3} | {nanoseconds[count].Order().ElementAt(Rounds / 2):F3} | {nanoseconds[count].Min() / clamped:F2} |"));

void Copy(int start, int end)
{
    for (int place = start; place <= end - Vector<double>.Count; place += Vector<double>.Count)
        new Vector<double>(from, place).CopyTo(to, place);
}

void CopyTwo()
{
    Task other = Task.Run(() => Copy(from.Length / 2, from.Length));
    Copy(0, from.Length / 2);
    other.Wait();
}

void Part(int start, int length, DegreeDayThresholds thresholds, DegreeDayMethod method, UpperCutoff cutoff) => DegreeDays.Count(
    minima.AsSpan(start, length), maxima.AsSpan(start, length), TemperatureUnit.DegreeCelsius, thresholds, method, cutoff, counted.AsSpan(start, length));

void Two(DegreeDayThresholds thresholds, DegreeDayMethod method, UpperCutoff cutoff)
{
    Task other = Task.Run(() => Part(Pairs / 2, Pairs / 2, thresholds, method, cutoff));
    Part(0, Pairs / 2, thresholds, method, cutoff);
    other.Wait();
}
