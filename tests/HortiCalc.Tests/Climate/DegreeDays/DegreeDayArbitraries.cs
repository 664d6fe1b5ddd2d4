using FsCheck;
using FsCheck.Fluent;
using HortiCalc.Climate;
using UnitsNet;
using UnitsNet.Units;

namespace HortiCalc.Tests.Climate;

/// <summary>A day and two thresholds, in degrees Celsius.</summary>
public sealed record AnyDay(double Minimum, double Maximum, double Lower, double Upper)
{
    public double Mean => (Minimum + Maximum) / 2;

    public DegreeDayThresholds Thresholds => new(Temperature.FromDegreesCelsius(Lower), Temperature.FromDegreesCelsius(Upper));

    public double Count(DegreeDayMethod method, UpperCutoff cutoff) => DegreeDays.OfDay(
        Temperature.FromDegreesCelsius(Minimum), Temperature.FromDegreesCelsius(Maximum), Thresholds, method, cutoff).CelsiusDays;
}

/// <summary>A method with one of the cutoffs it is defined for.</summary>
public sealed record AnyMethod(DegreeDayMethod Method, UpperCutoff Cutoff);

/// <summary>A record of 5 to 120 days, in which about one day of fifty may be missing; the first and the last are known.</summary>
public sealed record AnyRecord(DailyTemperatures Days);

/// <summary>
/// Days of every climate against thresholds that cut through them or not: whole degrees half of the time, so that a day
/// exactly at a threshold is common, hundredths for the rest.
/// </summary>
public static class DegreeDayArbitraries
{
    public static Arbitrary<AnyDay> Days() => Day(1).Or(Day(100)).ToArbitrary();

    /// <summary>The methods that look at one day alone, with the cutoffs that never count less than nothing.</summary>
    public static Arbitrary<AnyMethod> Methods() => Gen.Elements(DegreeDayMethod.All
        .Where(method => !method.UsesNextMinimum)
        .SelectMany(method => method.Cutoffs.Where(cutoff => cutoff != UpperCutoff.IntermediateBelowZero).Select(cutoff => new AnyMethod(method, cutoff)))
        .ToArray()).ToArbitrary();

    public static Arbitrary<AnyRecord> Records() => (
        from length in Gen.Choose(5, 120)
        from start in Gen.Choose(0, 3000)
        from minima in Hundredths(-10, 20).ListOf(length)
        from ranges in Hundredths(0, 20).ListOf(length)
        from dice in Gen.Choose(1, 50).ListOf(length)
        select new AnyRecord(Record(start, [.. minima], [.. ranges], [.. dice]))).ToArbitrary();

    private static Gen<AnyDay> Day(int perDegree) =>
        from minimum in Steps(-30, 35, perDegree)
        from range in Steps(0, 20, perDegree)
        from lower in Steps(-5, 20, perDegree)
        from span in Steps(1, 30, perDegree)
        select new AnyDay(minimum, minimum + range, lower, lower + span);

    private static Gen<double> Hundredths(int low, int high) => Steps(low, high, 100);

    private static Gen<double> Steps(int low, int high, int perDegree) =>
        Gen.Choose(low * perDegree, high * perDegree).Select(steps => (double)steps / perDegree);

    private static Gen<T> Or<T>(this Gen<T> one, Gen<T> other) => Gen.OneOf(one, other);

    private static DailyTemperatures Record(int start, double[] minima, double[] ranges, int[] dice)
    {
        double[] maxima = new double[minima.Length];
        for (int day = 0; day < minima.Length; day++)
        {
            maxima[day] = minima[day] + ranges[day];
            if (dice[day] != 1 || day == 0 || day == minima.Length - 1)
                continue;

            // The minimum, the maximum or both.
            minima[day] = day % 3 == 0 ? minima[day] : double.NaN;
            maxima[day] = day % 3 == 1 ? maxima[day] : double.NaN;
        }

        return DailyTemperatures.Create(new DateOnly(2015, 1, 1).AddDays(start), minima, maxima, TemperatureUnit.DegreeCelsius);
    }
}
