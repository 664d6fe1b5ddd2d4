using System.Numerics;
using BenchmarkDotNet.Attributes;
using HortiCalc.Climate;
using UnitsNet;
using UnitsNet.Units;

namespace HortiCalc.Benchmarks;

/// <summary>
/// Ten million pairs of daily extremes, output a day, beside a plain copy of the same bytes and the loops that a user would write. Every
/// figure is for one pair. benchmarks/degree_days_numpy.py does the same in NumPy.
/// </summary>
[MemoryDiagnoser]
public class GridBenchmarks
{
    public const int Pairs = 10_000_000;

    private const double Lower = 10;
    private const double Upper = 30;

    private static readonly DegreeDayThresholds LowerOnly = new(Temperature.FromDegreesCelsius(Lower));
    private static readonly DegreeDayThresholds Both = new(Temperature.FromDegreesCelsius(Lower), Temperature.FromDegreesCelsius(Upper));

    private readonly double[] minima = new double[Pairs];
    private readonly double[] maxima = new double[Pairs];
    private readonly double[] counted = new double[Pairs];
    private readonly double[] copyFrom = new double[Pairs + Pairs / 2];
    private readonly double[] copyTo = new double[Pairs + Pairs / 2];

    [GlobalSetup]
    public void Setup()
    {
        Random noise = new(1991);
        for (int day = 0; day < Pairs; day++)
        {
            double mean = 12 - 12 * Math.Cos(2 * Math.PI * (day - 20) / 365.25) + 8 * (noise.NextDouble() - 0.5);
            double half = 3 + 6 * noise.NextDouble();
            minima[day] = mean - half;
            maxima[day] = mean + half;
        }

        Array.Fill(copyFrom, 1.5);
    }

    /// <summary>As many bytes read and written together as by a count: three doubles a pair.</summary>
    [Benchmark(Baseline = true, OperationsPerInvoke = Pairs)]
    public void VectorCopy() => Copy(0, copyFrom.Length);

    [Benchmark(OperationsPerInvoke = Pairs)]
    public void VectorCopyTwoThreads()
    {
        Task other = Task.Run(() => Copy(copyFrom.Length / 2, copyFrom.Length));
        Copy(0, copyFrom.Length / 2);
        other.Wait();
    }

    [Benchmark(OperationsPerInvoke = Pairs)]
    public void ClampedAverage() => Count(Both, DegreeDayMethod.ClampedAverage, UpperCutoff.Horizontal);

    [Benchmark(OperationsPerInvoke = Pairs)]
    public void ClampedAverageTwoThreads() => CountOnTwoThreads(Both, DegreeDayMethod.ClampedAverage, UpperCutoff.Horizontal);

    [Benchmark(OperationsPerInvoke = Pairs)]
    public void ClampedAverageScalar()
    {
        for (int day = 0; day < Pairs; day++)
            counted[day] = (Math.Clamp(minima[day], Lower, Upper) + Math.Clamp(maxima[day], Lower, Upper)) / 2 - Lower;
    }

    [Benchmark(OperationsPerInvoke = Pairs)]
    public void SineLower() => Count(LowerOnly, DegreeDayMethod.SingleSine, UpperCutoff.None);

    [Benchmark(OperationsPerInvoke = Pairs)]
    public void SineLowerTwoThreads() => CountOnTwoThreads(LowerOnly, DegreeDayMethod.SingleSine, UpperCutoff.None);

    [Benchmark(OperationsPerInvoke = Pairs)]
    public void SineLowerScalar()
    {
        for (int day = 0; day < Pairs; day++)
            counted[day] = PlainMethods.SineAbove(minima[day], maxima[day], Lower);
    }

    [Benchmark(OperationsPerInvoke = Pairs)]
    public void SineBoth() => Count(Both, DegreeDayMethod.SingleSine, UpperCutoff.Horizontal);

    [Benchmark(OperationsPerInvoke = Pairs)]
    public void SineBothScalar()
    {
        for (int day = 0; day < Pairs; day++)
            counted[day] = PlainMethods.SineAbove(minima[day], maxima[day], Lower) - PlainMethods.SineAbove(minima[day], maxima[day], Upper);
    }

    [Benchmark(OperationsPerInvoke = Pairs)]
    public void SineBothTwoThreads() => CountOnTwoThreads(Both, DegreeDayMethod.SingleSine, UpperCutoff.Horizontal);

    [Benchmark(OperationsPerInvoke = Pairs)]
    public void SineVertical() => Count(Both, DegreeDayMethod.SingleSine, UpperCutoff.Vertical);

    [Benchmark(OperationsPerInvoke = Pairs)]
    public void DoubleSineBoth() => Count(Both, DegreeDayMethod.DoubleSine, UpperCutoff.Horizontal);

    [Benchmark(OperationsPerInvoke = Pairs)]
    public void DoubleSineVertical() => Count(Both, DegreeDayMethod.DoubleSine, UpperCutoff.Vertical);

    [Benchmark(OperationsPerInvoke = Pairs)]
    public void TriangleBoth() => Count(Both, DegreeDayMethod.SingleTriangle, UpperCutoff.Horizontal);

    [Benchmark(OperationsPerInvoke = Pairs)]
    public void TriangleBothScalar()
    {
        for (int day = 0; day < Pairs; day++)
            counted[day] = PlainMethods.TriangleAbove(minima[day], maxima[day], Lower) - PlainMethods.TriangleAbove(minima[day], maxima[day], Upper);
    }

    [Benchmark(OperationsPerInvoke = Pairs)]
    public void FourCase() => Count(LowerOnly, DegreeDayMethod.FourCase, UpperCutoff.None);

    [Benchmark(OperationsPerInvoke = Pairs)]
    public void FourCaseScalar()
    {
        for (int day = 0; day < Pairs; day++)
            counted[day] = PlainMethods.FourCase(minima[day], maxima[day], Lower);
    }

    private void Copy(int start, int end)
    {
        for (int place = start; place <= end - Vector<double>.Count; place += Vector<double>.Count)
            new Vector<double>(copyFrom, place).CopyTo(copyTo, place);
    }

    private void Count(DegreeDayThresholds thresholds, DegreeDayMethod method, UpperCutoff cutoff) =>
        DegreeDays.Count(minima, maxima, TemperatureUnit.DegreeCelsius, thresholds, method, cutoff, counted);

    private void CountOnTwoThreads(DegreeDayThresholds thresholds, DegreeDayMethod method, UpperCutoff cutoff)
    {
        void Half(int from) => DegreeDays.Count(
            minima.AsSpan(from, Pairs / 2), maxima.AsSpan(from, Pairs / 2), TemperatureUnit.DegreeCelsius, thresholds, method, cutoff, counted.AsSpan(from, Pairs / 2));
        Task other = Task.Run(() => Half(Pairs / 2));
        Half(0);
        other.Wait();
    }
}
