using System.Runtime.Intrinsics;
using FsCheck.Xunit;
using HortiCalc.Climate;
using UnitsNet;
using UnitsNet.Units;

namespace HortiCalc.Tests.Climate;

/// <summary>
/// The kernels in lanes of every width. .ci/run runs these again with the vectors of the processor switched off one after another, so that
/// each path is the one that the library itself chooses.
/// </summary>
[Properties(Arbitrary = [typeof(DegreeDayArbitraries)], MaxTest = 100)]
public class KernelTests
{
    private static readonly DegreeDayThresholds Spring = new(Temperature.FromDegreesCelsius(7), Temperature.FromDegreesCelsius(24));

    private static readonly AnyMethod[] EveryWay = [.. DegreeDayMethod.All.Concat(DegreeDayMethod.AllBelow)
        .SelectMany(method => method.Cutoffs.Select(cutoff => new AnyMethod(method, cutoff)))];

    [Theory]
    [InlineData("DOTNET_EnableHWIntrinsic", 128)]
    [InlineData("DOTNET_EnableAVX2", 256)]
    [InlineData("DOTNET_EnableAVX512", 512)]
    public void Switch_OfTheRuntime_TakesTheVectorsAway(string name, int bits)
    {
        if (Environment.GetEnvironmentVariable(name) != "0")
            return;
        bool accelerated = bits switch
        {
            512 => Vector512.IsHardwareAccelerated,
            256 => Vector256.IsHardwareAccelerated,
            _ => Vector128.IsHardwareAccelerated,
        };

        Assert.False(accelerated, $"{name}=0 is no longer a switch of the runtime");
    }

    [Property]
    public void Lanes_OfEveryWidth_GiveTheSameBits(AnyRecord record)
    {
        foreach (AnyMethod any in EveryWay)
        {
            double[] expected = Counted<SingleLane>(record, any);

            AssertSame(expected, Counted<Lanes128>(record, any), any);
            AssertSame(expected, Counted<Lanes256>(record, any), any);
            AssertSame(expected, Counted<Lanes512>(record, any), any);
            double[] chosen = new double[expected.Length];
            any.Method.Count(record.Days.MinimaCelsius, record.Days.MaximaCelsius, NextMinima(record), Spring, any.Cutoff, chosen);
            AssertSame(expected, chosen, any);
        }
    }

    [Property]
    public void Sine_AnyDay_IsTheFormulaWithArcSineAndCosine(AnyDay day)
    {
        double lower = FormulaAbove(day.Minimum, day.Maximum, day.Lower);
        double upper = FormulaAbove(day.Minimum, day.Maximum, day.Upper);

        Assert.Equal(lower, day.Count(DegreeDayMethod.SingleSine, UpperCutoff.None), 1e-12);
        Assert.Equal(lower - upper, day.Count(DegreeDayMethod.SingleSine, UpperCutoff.Horizontal), 1e-12);
    }

    [Fact]
    public void Sine_MillionDays_IsTheFormulaWithArcSineAndCosine()
    {
        Random noise = new(12);
        double[] minima = new double[1_000_003];
        double[] maxima = new double[minima.Length];
        double[] counted = new double[minima.Length];
        for (int day = 0; day < minima.Length; day++)
        {
            minima[day] = -40 + 70 * noise.NextDouble();
            maxima[day] = minima[day] + 30 * noise.NextDouble();
        }

        DegreeDays.Count(minima, maxima, TemperatureUnit.DegreeCelsius, Spring, DegreeDayMethod.SingleSine, UpperCutoff.Horizontal, counted);

        double worst = 0;
        for (int day = 0; day < minima.Length; day++)
            worst = Math.Max(worst, Math.Abs(counted[day] - (FormulaAbove(minima[day], maxima[day], 7) - FormulaAbove(minima[day], maxima[day], 24))));
        Assert.InRange(worst, 0, 1e-12);
    }

    [Fact]
    public void Polynomials_OverADenseGrid_AreWithinTheStatedUlp()
    {
        // Both lie from 1/4 to 1/2. The series are summed in numbers of 28 digits; every point is an exact fraction.
        const int Points = 1 << 14;
        const decimal LastPlaces = 1L << 54;
        decimal worstArea = 0;
        decimal worstShare = 0;
        for (int point = 0; point <= Points; point++)
        {
            double t = (double)point / Points;
            (decimal area, decimal share) = Series((decimal)point / Points);
            worstArea = Math.Max(worstArea, Math.Abs(Places(SinePolynomials<SingleLane>.Area(SingleLane.All(t)).First) - area * LastPlaces));
            worstShare = Math.Max(worstShare, Math.Abs(Places(SinePolynomials<SingleLane>.Share(SingleLane.All(t)).First) - share * LastPlaces));
        }

        Assert.InRange(worstArea, 0.5m, 1.7m);
        Assert.InRange(worstShare, 0.5m, 2.1m);

        static decimal Places(double value) => (long)(value * (1L << 54));
    }

    [Property]
    public void Count_AnySplit_GivesTheSameBits(AnyRecord record, byte cut)
    {
        int split = cut % record.Days.Count;
        double[] minima = record.Days.MinimaCelsius.ToArray();
        double[] maxima = record.Days.MaximaCelsius.ToArray();
        foreach (AnyMethod any in EveryWay)
        {
            double[] whole = new double[minima.Length];
            double[] parts = new double[minima.Length];

            Count(minima, maxima, any, whole);
            int one = any.Method.UsesNextMinimum && split > 0 ? 1 : 0;
            Count(minima.AsSpan(0, split + one), maxima.AsSpan(0, split), any, parts.AsSpan(0, split));
            Count(minima.AsSpan(split), maxima.AsSpan(split), any, parts.AsSpan(split));

            AssertSame(whole, parts, any);
        }
    }

    [Property]
    public void Count_OverItsOwnInput_GivesTheSame(AnyRecord record)
    {
        double[] maxima = record.Days.MaximaCelsius.ToArray();
        foreach (AnyMethod any in EveryWay)
        {
            double[] expected = new double[maxima.Length];
            double[] minima = record.Days.MinimaCelsius.ToArray();
            Count(minima, maxima, any, expected);

            Count(minima, maxima, any, minima);

            AssertSame(expected, minima, any);
        }
    }

    [Property]
    public void Count_InFahrenheitOrKelvin_CountsTheSame(AnyRecord record)
    {
        foreach (AnyMethod any in EveryWay)
        {
            double[] celsius = new double[record.Days.Count];
            Count(record.Days.MinimaCelsius, record.Days.MaximaCelsius, any, celsius);
            foreach ((TemperatureUnit unit, double scale, double zero) in new[] { (TemperatureUnit.DegreeFahrenheit, 1.8, 32.0), (TemperatureUnit.Kelvin, 1.0, 273.15) })
            {
                double[] counted = new double[celsius.Length];
                DegreeDays.Count(
                    [.. record.Days.MinimaCelsius.ToArray().Select(value => value * scale + zero)],
                    [.. record.Days.MaximaCelsius.ToArray().Select(value => value * scale + zero)],
                    unit, Spring, any.Method, any.Cutoff, counted);

                for (int day = 0; day < celsius.Length; day++)
                {
                    bool cliff = any.Cutoff == UpperCutoff.Vertical && record.Days.MaximaCelsius[day] - record.Days.MinimaCelsius[day] < 1e-9;
                    if (!cliff)
                        Assert.Equal(celsius[day] * scale, counted[day], 1e-10);
                }
            }
        }
    }

    [Theory]
    [InlineData(51)]
    [InlineData(54.5)]
    [InlineData(91.9)]
    public void Count_ConstantDayExactlyAtAThresholdPrintedInFahrenheit_IsAtIt(double fahrenheit)
    {
        double[] counted = new double[1];
        DegreeDayThresholds printed = new(Temperature.FromDegreesFahrenheit(40), Temperature.FromDegreesFahrenheit(fahrenheit));

        DegreeDays.Count([fahrenheit], [fahrenheit], TemperatureUnit.DegreeFahrenheit, printed, DegreeDayMethod.SingleSine, UpperCutoff.Vertical, counted);

        Assert.Equal(fahrenheit - 40, counted[0], 1e-12);
    }

    [Theory]
    [InlineData(21, 20, "maxima[5]", "20 °C; allowed: the day's minimum, 21 °C, or more")]
    [InlineData(-91, 20, "minima[5]", "-91 °C; allowed: from -90 to 60 °C")]
    [InlineData(12, double.PositiveInfinity, "maxima[5]", "from -90 to 60 °C")]
    [InlineData(double.NegativeInfinity, 12, "minima[5]", "from -90 to 60 °C")]
    [InlineData(double.PositiveInfinity, double.PositiveInfinity, "minima[5]", "from -90 to 60 °C")]
    public void Count_ExtremesOutOfOrderOrRange_AreRefusedByPlace(double minimum, double maximum, string parameter, string message)
    {
        foreach (int length in new[] { 6, 9, 16, 21 })
        {
            foreach (AnyMethod any in EveryWay)
            {
                double[] minima = [.. Enumerable.Repeat(8.0, length)];
                double[] maxima = [.. Enumerable.Repeat(18.0, length)];
                (minima[5], maxima[5], minima[3]) = (minimum, maximum, double.NaN);

                ArgumentOutOfRangeException refused = Assert.Throws<ArgumentOutOfRangeException>(() => Count(minima, maxima, any, new double[length]));

                if (!any.Method.UsesNextMinimum)
                {
                    Assert.Equal(parameter, refused.ParamName);
                    Assert.Contains(message, refused.Message, StringComparison.Ordinal);
                }
            }
        }
    }

    [Fact]
    public void Count_SpansOfOtherLengths_AreRefused()
    {
        AnyMethod sine = new(DegreeDayMethod.SingleSine, UpperCutoff.None);

        Assert.Throws<ArgumentException>("minima", () => Count(new double[3], new double[2], sine, new double[2]));
        Assert.Throws<ArgumentException>("destination", () => Count(new double[2], new double[2], sine, new double[3]));
        Assert.Throws<ArgumentException>("minima", () => Count(new double[4], new double[2], sine with { Method = DegreeDayMethod.DoubleSine }, new double[2]));
        Assert.Throws<ArgumentException>("nextMinima", () => DegreeDays.Count(
            new double[2], new double[2], new double[1], TemperatureUnit.DegreeCelsius, Spring, DegreeDayMethod.DoubleSine, UpperCutoff.None, new double[2]));
    }

    [Fact]
    public void Count_NoDays_CountsNone()
    {
        foreach (AnyMethod any in EveryWay)
            Count([], [], any, []);

        Assert.Equal(DegreeDayMethod.All.Count + DegreeDayMethod.AllBelow.Count, EveryWay.Select(any => any.Method).Distinct().Count());
    }

    [Fact]
    public void Count_AnotherUnit_IsRefused()
    {
        ArgumentOutOfRangeException refused = Assert.Throws<ArgumentOutOfRangeException>("unit", () => DegreeDays.Count(
            [8], [18], TemperatureUnit.DegreeDelisle, Spring, DegreeDayMethod.SingleSine, UpperCutoff.None, new double[1]));

        Assert.Contains("DegreeDelisle; allowed: DegreeCelsius, DegreeFahrenheit, Kelvin", refused.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Count_OnceWarm_AllocatesNothing()
    {
        double[] minima = [.. Enumerable.Repeat(4.0, 1000)];
        double[] maxima = [.. Enumerable.Repeat(28.0, 1000)];
        double[] counted = new double[1000];
        AnyMethod sine = new(DegreeDayMethod.DoubleSine, UpperCutoff.Vertical);
        Temperature minimum = Temperature.FromDegreesCelsius(4);
        Temperature maximum = Temperature.FromDegreesFahrenheit(82);
        for (int warm = 0; warm < 3; warm++)
        {
            Count(minima, maxima, sine, counted);
            DegreeDays.OfDay(minimum, maximum, Spring, sine.Method, sine.Cutoff);
        }

        long before = GC.GetAllocatedBytesForCurrentThread();
        Count(minima, maxima, sine, counted);
        DegreeDays.OfDay(minimum, maximum, Spring, sine.Method, sine.Cutoff);
        long after = GC.GetAllocatedBytesForCurrentThread();

        Assert.Equal(0, after - before);
    }

    private static void Count(ReadOnlySpan<double> minima, ReadOnlySpan<double> maxima, AnyMethod any, Span<double> destination) =>
        DegreeDays.Count(minima, maxima, TemperatureUnit.DegreeCelsius, Spring, any.Method, any.Cutoff, destination);

    private static double[] Counted<TLanes>(AnyRecord record, AnyMethod any)
        where TLanes : struct, ILanes<TLanes>
    {
        double[] counted = new double[record.Days.Count];
        bool sound = any.Method.Count<TLanes>(any.Cutoff, new DayRun
        {
            Minima = record.Days.MinimaCelsius,
            Maxima = record.Days.MaximaCelsius,
            NextMinima = NextMinima(record),
            Destination = counted,
            Lower = 7,
            Upper = 24,
            Lowest = -90,
            Highest = 60,
        });
        Assert.True(sound);
        return counted;
    }

    private static double[] NextMinima(AnyRecord record) => [.. record.Days.MinimaCelsius[1..], double.NaN];

    private static void AssertSame(double[] expected, double[] actual, AnyMethod any)
    {
        for (int day = 0; day < expected.Length; day++)
        {
            bool same = (double.IsNaN(expected[day]) && double.IsNaN(actual[day]))
                || BitConverter.DoubleToInt64Bits(expected[day]) == BitConverter.DoubleToInt64Bits(actual[day]);
            Assert.True(same, $"{any.Method}, {any.Cutoff}, day {day}: {expected[day]:R} and {actual[day]:R}");
        }
    }

    private static double FormulaAbove(double minimum, double maximum, double threshold)
    {
        double mean = (minimum + maximum) / 2;
        if (threshold >= maximum)
            return 0;
        if (threshold <= minimum)
            return mean - threshold;
        double amplitude = (maximum - minimum) / 2;
        double angle = Math.Asin((threshold - mean) / amplitude);
        return ((mean - threshold) * (Math.PI / 2 - angle) + amplitude * Math.Cos(angle)) / Math.PI;
    }

    private static (decimal Area, decimal Share) Series(decimal t)
    {
        decimal area = 0;
        decimal share = 0;
        decimal term = 0.4501581580785530347775995955m;
        for (int k = 0; k < 100; k++)
        {
            share += term / (2 * k + 1);
            area += term / (2 * k + 1) / (k + 1.5m);
            term = term * t * (2 * k + 1) / (4 * (k + 1));
        }

        return (area, share);
    }
}
