using FsCheck.Xunit;
using HortiCalc.Climate;
using UnitsNet.Units;

namespace HortiCalc.Tests.Climate;

/// <summary>
/// Counting across stations against counting one series after another. The widths of vectors that the processor has are all run by the first test;
/// with the runtime's switches for its instruction sets the whole class runs at each level.
/// </summary>
public class ChillKernelTests
{
    private const double Tolerance = 1e-9;

    [Theory]
    [InlineData(1)]
    [InlineData(4)]
    [InlineData(8)]
    [InlineData(9)]
    [InlineData(27)]
    public void Totals_AnyNumberOfStations_AreThoseOfEachSeries(int stations)
    {
        double[] temperatures = Weather(stations, 3000, gaps: true);
        double[] totals = new double[stations];
        int[] missing = new int[stations];
        foreach (ChillModel model in ChillModel.All)
        {
            Chill.Totals(temperatures, stations, TemperatureUnit.DegreeCelsius, model, totals, missing, firstHour: 7);
            for (int station = 0; station < stations; station++)
            {
                HourlyAccumulation one = Chill.Accumulate(Series(temperatures, stations, station), model);
                Assert.Equal(one.Total, totals[station], Tolerance);
                Assert.Equal(one.MissingCount, missing[station]);
            }
        }
    }

    [Theory]
    [InlineData(8)]
    [InlineData(13)]
    public void GrowingDegreeHourTotals_Stations_AreThoseOfEachSeries(int stations)
    {
        double[] temperatures = [.. Weather(stations, 2000, gaps: true).Select(celsius => celsius * 1.5 + 4)];
        double[] totals = new double[stations];
        int[] missing = new int[stations];

        GrowingDegreeHours.Totals(temperatures, stations, TemperatureUnit.DegreeCelsius, totals, missing);

        for (int station = 0; station < stations; station++)
            Assert.Equal(GrowingDegreeHours.Accumulate(Series(temperatures, stations, station)).Total, totals[station], Tolerance);
    }

    [Fact]
    public void Blocks_EveryWidth_AgreeWithTheScalar()
    {
        const int Stations = 64;
        double[] temperatures = Weather(Stations, 4000, gaps: true);
        foreach (bool floored in new[] { false, true })
        {
            Compare(new HourlyCounter<DynamicRule>(default, floored), temperatures, Stations);
            Compare(new HourlyCounter<GrowingDegreeHourRule>(default, floored), temperatures, Stations);
            Compare(new HourlyCounter<HoursRule>(new HoursRule(BandRule.At(0), 7.2), floored), temperatures, Stations);
            Compare(new HourlyCounter<BandRule>(new BandRule(0, (1.4, 0.5), (2.4, 1), (9.1, 0.5), (12.4, 0), (15.9, -0.5), (18.0, -1)), floored), temperatures, Stations);
        }
    }

    [Property]
    public void Totals_SplitByStations_AreIdentical(byte cut)
    {
        const int Stations = 24;
        const int Hours = 400;
        int first = 8 * (1 + cut % 2);
        double[] temperatures = Weather(Stations, Hours, gaps: false);
        double[] whole = new double[Stations];
        int[] missing = new int[Stations];
        Chill.Totals(temperatures, Stations, TemperatureUnit.DegreeCelsius, ChillModel.Dynamic, whole, missing);

        double[] part = new double[first];
        double[] left = [.. Enumerable.Range(0, Hours).SelectMany(hour => temperatures.Skip(hour * Stations).Take(first))];
        Chill.Totals(left, first, TemperatureUnit.DegreeCelsius, ChillModel.Dynamic, part, missing);

        Assert.Equal(whole[..first], part);
    }

    [Theory]
    [InlineData(TemperatureUnit.DegreeFahrenheit)]
    [InlineData(TemperatureUnit.Kelvin)]
    public void Totals_InAnotherUnit_AreTheSame(TemperatureUnit unit)
    {
        const int Stations = 9;
        double[] celsius = [.. Weather(Stations, 500, gaps: false).Select(degrees => degrees + 0.053)];
        double[] other = [.. celsius.Select(degrees => unit == TemperatureUnit.Kelvin ? degrees + 273.15 : degrees * 1.8 + 32)];
        double[] expected = new double[Stations];
        double[] totals = new double[Stations];
        int[] missing = new int[Stations];
        foreach (ChillModel model in ChillModel.All)
        {
            Chill.Totals(celsius, Stations, TemperatureUnit.DegreeCelsius, model, expected, missing);
            Chill.Totals(other, Stations, unit, model, totals, missing);
            Assert.All(expected.Zip(totals), pair => Assert.Equal(pair.First, pair.Second, 1e-7));
        }
    }

    [Fact]
    public void Totals_AnyStations_AllocateNothing()
    {
        const int Stations = 8;
        double[] temperatures = Weather(Stations, 200, gaps: false);
        double[] totals = new double[Stations];
        int[] missing = new int[Stations];
        Count();
        long before = GC.GetAllocatedBytesForCurrentThread();

        for (int run = 0; run < 50; run++)
            Count();

        Assert.Equal(0, GC.GetAllocatedBytesForCurrentThread() - before);

        void Count() => Chill.Totals(temperatures, Stations, TemperatureUnit.DegreeCelsius, ChillModel.Dynamic, totals, missing);
    }

    [Fact]
    public void Totals_Arguments_AreRefusedWithTheParameter()
    {
        double[] temperatures = new double[16];
        double[] totals = new double[8];
        int[] missing = new int[8];

        Assert.Equal("stations", Assert.Throws<ArgumentOutOfRangeException>(() => Run(0, TemperatureUnit.DegreeCelsius, 8, 0)).ParamName);
        Assert.Equal("temperatures", Assert.Throws<ArgumentException>(() => Run(5, TemperatureUnit.DegreeCelsius, 8, 0)).ParamName);
        Assert.Equal("totals", Assert.Throws<ArgumentException>(() => Run(8, TemperatureUnit.DegreeCelsius, 7, 0)).ParamName);
        Assert.Equal("unit", Assert.Throws<ArgumentOutOfRangeException>(() => Run(8, TemperatureUnit.DegreeRankine, 8, 0)).ParamName);
        Assert.Equal("firstHour", Assert.Throws<ArgumentOutOfRangeException>(() => Run(8, TemperatureUnit.DegreeCelsius, 8, 24)).ParamName);

        void Run(int stations, TemperatureUnit unit, int room, int firstHour) =>
            Chill.Totals(temperatures, stations, unit, ChillModel.Dynamic, totals.AsSpan(0, room), missing, firstHour);
    }

    private static void Compare<TRule>(HourlyCounter<TRule> counter, double[] temperatures, int stations)
        where TRule : struct, IHourlyRule
    {
        double[] scalar = new double[stations];
        double[] wide = new double[stations];
        int[] gaps = new int[stations];
        int[] wideGaps = new int[stations];
        Assert.Equal(stations, counter.Blocks<Stations1>(temperatures, stations, 0, 0, 1, 5, scalar, gaps));

        // These run on every processor, only slowly where it has no such vectors.
        Assert.Equal(stations, counter.Blocks<Stations256>(temperatures, stations, 0, 0, 1, 5, wide, wideGaps));
        Same();
        Assert.Equal(stations, counter.Blocks<Stations512>(temperatures, stations, 0, 0, 1, 5, wide, wideGaps));
        Same();
        Assert.Equal(stations, counter.Blocks<StationPair<Stations256>>(temperatures, stations, 0, 0, 1, 5, wide, wideGaps));
        Same();
        Assert.Equal(stations, counter.Blocks<StationPair<Stations512>>(temperatures, stations, 0, 0, 1, 5, wide, wideGaps));
        Same();
        Assert.Equal(stations, counter.Blocks<StationPair<StationPair<Stations512>>>(temperatures, stations, 0, 0, 1, 5, wide, wideGaps));
        Same();

        void Same()
        {
            Assert.Equal(gaps, wideGaps);
            Assert.All(scalar.Zip(wide), pair => Assert.Equal(pair.First, pair.Second, Tolerance));
        }
    }

    private static HourlyTemperatures Series(double[] temperatures, int stations, int station) => HourlyTemperatures.Create(
        new DateTime(2024, 11, 1, 7, 0, 0),
        [.. temperatures.Where((_, index) => index % stations == station)],
        TemperatureUnit.DegreeCelsius);

    private static double[] Weather(int stations, int hours, bool gaps)
    {
        Random noise = new(stations);
        return
        [
            .. Enumerable.Range(0, hours * stations).Select(index => gaps && noise.Next(100) == 0
                ? double.NaN
                : Math.Round(
                    7 + index % stations % 5 - 6 * Math.Cos(index / stations * Math.PI / 12) + 8 * (noise.NextDouble() - 0.5),
                    1,
                    MidpointRounding.AwayFromZero)),
        ];
    }
}
