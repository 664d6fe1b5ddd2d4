#!/usr/bin/env dotnet
#:project HortiCalc.Benchmarks/HortiCalc.Benchmarks.csproj
#:property PublishAot=false
#:property TieredPGO=false

// The table of docs/performance.md on a machine that does other work as well: what GridBenchmarks measures, every count in turn with the copy,
// with the loop that a user would write, with LINQ over quantities and with NumPy, many times over, and the best of each.
//     dotnet run -c Release benchmarks/alternating.cs
//     dotnet run -c Release benchmarks/alternating.cs -- --numpy      (needs Debian's python3-numpy; takes some minutes)

using System.Diagnostics;
using System.Globalization;
using System.Runtime.CompilerServices;
using HortiCalc.Benchmarks;

const int Rounds = 30;
const int LinqDays = 1000;
GridBenchmarks grid = new();
grid.Setup();
OneDayBenchmarks quantities = new();
quantities.Setup();
using Process? numpy = args.Contains("--numpy") ? StartNumPy() : null;

(string Name, Action Count, Action? Loop, Action? TwoThreads)[] counts =
[
    ("copy of the same bytes", grid.VectorCopy, null, grid.VectorCopyTwoThreads),
    ("clamped average", grid.ClampedAverage, grid.ClampedAverageScalar, grid.ClampedAverageTwoThreads),
    ("four cases", grid.FourCase, grid.FourCaseScalar, null),
    ("triangle, both thresholds", grid.TriangleBoth, grid.TriangleBothScalar, null),
    ("sine, lower threshold", grid.SineLower, grid.SineLowerScalar, grid.SineLowerTwoThreads),
    ("sine, both thresholds", grid.SineBoth, grid.SineBothScalar, grid.SineBothTwoThreads),
    ("sine, vertical", grid.SineVertical, null, null),
    ("double sine, both thresholds", grid.DoubleSineBoth, null, null),
    ("double sine, vertical", grid.DoubleSineVertical, null, null),
];

double[] count = Nothing(), loop = Nothing(), two = Nothing(), python = Nothing();
double linq = double.PositiveInfinity;
for (int round = -3; round < Rounds; round++)
{
    for (int row = 0; row < counts.Length; row++)
    {
        count[row] = Better(count[row], counts[row].Count, GridBenchmarks.Pairs, round);
        two[row] = Better(two[row], counts[row].TwoThreads, GridBenchmarks.Pairs, round);

        // These are slow, and every third round is enough of them.
        if (round % 3 != 0)
            continue;
        loop[row] = Better(loop[row], counts[row].Loop, GridBenchmarks.Pairs, round);
        if (numpy is not null && counts[row].Loop is not null)
            python[row] = Math.Min(python[row], NumPy(counts[row].Name));
    }

    linq = Better(linq, () => quantities.LinqOverQuantities(), LinqDays, round);
}

Console.WriteLine("| count | ns a pair | times the clamped average | loop / HortiCalc | NumPy / HortiCalc | one thread / two |");
Console.WriteLine("|---|---|---|---|---|---|");
for (int row = 0; row < counts.Length; row++)
{
    Console.WriteLine(
        $"| {counts[row].Name} | {Number(count[row], "F3")} | {Number(count[row] / count[1], "F2")} | {Number(loop[row] / count[row], "F1")} "
        + $"| {Number(python[row] / count[row], "F1")} | {Number(count[row] / two[row], "F2")} |");
}

Console.WriteLine();
Console.WriteLine($"LINQ over UnitsNet quantities, clamped average: {Number(linq, "F0")} ns a day, {Number(linq / count[1], "F0")} times as long.");

double[] Nothing() => [.. Enumerable.Repeat(double.PositiveInfinity, counts.Length)];

static double Better(double best, Action? action, int pairs, int round)
{
    if (action is null)
        return best;
    long start = Stopwatch.GetTimestamp();
    action();
    double taken = Stopwatch.GetElapsedTime(start).TotalNanoseconds / pairs;

    // The first rounds warm up.
    return round < 0 ? best : Math.Min(best, taken);
}

static string Number(double value, string format) => double.IsFinite(value) && value > 0 ? value.ToString(format, CultureInfo.InvariantCulture) : "";

double NumPy(string name)
{
    numpy!.StandardInput.WriteLine(name);
    return double.Parse(numpy.StandardOutput.ReadLine()!, CultureInfo.InvariantCulture);
}

static Process StartNumPy([CallerFilePath] string here = "")
{
    ProcessStartInfo start = new("/usr/bin/python3", [Path.Combine(Path.GetDirectoryName(here)!, "degree_days_numpy.py"), "--serve"])
    {
        RedirectStandardInput = true,
        RedirectStandardOutput = true,
    };
    return Process.Start(start)!;
}
