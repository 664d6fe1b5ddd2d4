using System.Text.Json;
using HortiCalc.Climate;
using HortiCalc.Display;
using HortiCalc.Evidence;
using HortiCalc.Json;
using HortiCalc.Units;
using UnitsNet;
using UnitsNet.Units;

namespace HortiCalc.Tests.Climate;

public class HeatRequirementTests
{
    private static readonly Source Page = new("page", "A page", "A publisher", 1982, null);
    private static readonly DegreeDayThresholds Scale = new(Temperature.FromDegreesFahrenheit(51), Temperature.FromDegreesFahrenheit(90));
    private static readonly HeatRequirement Crawlers = new(
        ThermalTime.FromFahrenheitDays(405), Scale, DegreeDayMethod.SingleSine, UpperCutoff.Horizontal, Page);

    [Fact]
    public void CautionsFor_CountedAsPublished_AreNone() => Assert.Empty(Crawlers.CautionsFor(Crawlers.Count(Days())));

    [Theory]
    [InlineData("double-sine", UpperCutoff.Horizontal, 51, "heat-requirement.other-method")]
    [InlineData("single-sine", UpperCutoff.Vertical, 51, "heat-requirement.other-cutoff")]
    [InlineData("single-sine", UpperCutoff.Horizontal, 52, "heat-requirement.other-thresholds")]
    public void CautionsFor_CountedOtherwise_SayWhatDiffers(string method, UpperCutoff cutoff, double lower, string code)
    {
        DegreeDayThresholds thresholds = new(Temperature.FromDegreesFahrenheit(lower), Scale.Upper);

        DegreeDaySeries series = DegreeDays.Accumulate(Days(), thresholds, DegreeDayMethod.FromKey(method), cutoff);

        Caution caution = Assert.Single(Crawlers.CautionsFor(series));
        Assert.Equal(code, caution.Code);
        Assert.Equal(CautionLevel.Care, caution.Level);
    }

    [Fact]
    public void CautionsFor_ThresholdsPrintedToATenthInCelsius_AreTheSame()
    {
        DegreeDayThresholds metric = new(Temperature.FromDegreesCelsius(10.6), Temperature.FromDegreesCelsius(32.2));

        Assert.Empty(Crawlers.CautionsFor(DegreeDays.Accumulate(Days(), metric, DegreeDayMethod.SingleSine, UpperCutoff.Horizontal)));
    }

    [Fact]
    public void CautionsFor_MethodNotStated_SaySo()
    {
        HeatRequirement unnamed = new(ThermalTime.FromCelsiusDays(353), Scale, null, UpperCutoff.None, Page);

        Assert.Equal("heat-requirement.method-not-stated", Assert.Single(unnamed.CautionsFor(unnamed.Count(Days()))).Code);
        Assert.Contains("method not stated", unnamed.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void Constructor_CutoffThatTheMethodIsNotDefinedFor_IsRefused()
    {
        ArgumentException refused = Assert.Throws<ArgumentException>("cutoff", () => new HeatRequirement(
            ThermalTime.FromCelsiusDays(100), Scale, DegreeDayMethod.FourCase, UpperCutoff.Vertical, Page));

        Assert.Contains("Vertical; allowed with the method 'four cases of the Met Office': None", refused.Message, StringComparison.Ordinal);
        Assert.Throws<ArgumentOutOfRangeException>("sum", () => new HeatRequirement(
            ThermalTime.FromCelsiusDays(-1), Scale, null, UpperCutoff.None, Page));
    }

    [Fact]
    public void ToString_Requirement_IsOneHonestLine()
    {
        Assert.Equal("225 °C·d, 10.6 °C to 32.2 °C, single sine, cutoff horizontal [A publisher, A page (1982)]", Crawlers.ToString());
        Assert.StartsWith("405 °F·d, 51 °F to 90 °F", Crawlers.ToString("U", null), StringComparison.Ordinal);
    }

    [Fact]
    public void WhenReached_InTheMiddleOfADay_IsThePartThatWasNeeded()
    {
        DegreeDaySeries series = DegreeDays.Accumulate(
            Days(), new DegreeDayThresholds(Temperature.FromDegreesCelsius(10)), DegreeDayMethod.SimpleAverage, UpperCutoff.None);

        Assert.Equal(new TimeReached(new DateOnly(2020, 5, 3), Ratio.FromPercent(50)), series.WhenReached(ThermalTime.FromCelsiusDays(25)));
        Assert.Equal(new TimeReached(new DateOnly(2020, 5, 2), Ratio.FromPercent(100)), series.WhenReached(ThermalTime.FromCelsiusDays(20)));
        Assert.Equal(new TimeReached(new DateOnly(2020, 5, 1), Ratio.FromPercent(0)), series.WhenReached(ThermalTime.Zero));
        Assert.Null(series.WhenReached(ThermalTime.FromCelsiusDays(101)));
        Assert.Equal("2020-05-03, 50 % into the day", series.WhenReached(ThermalTime.FromCelsiusDays(25))!.ToString());
    }

    [Fact]
    public void SumBetween_TwoDays_IsTheSumOverBoth()
    {
        DegreeDaySeries series = DegreeDays.Accumulate(
            Days(), new DegreeDayThresholds(Temperature.FromDegreesCelsius(10)), DegreeDayMethod.SimpleAverage, UpperCutoff.None);

        Assert.Equal(30, series.SumBetween(new DateOnly(2020, 5, 3), new DateOnly(2020, 5, 5)).CelsiusDays, 1e-12);
        Assert.Equal(series.Total, series.SumBetween(series.Start, series.End));
        Assert.Throws<ArgumentOutOfRangeException>("last", () => series.SumBetween(new DateOnly(2020, 5, 3), new DateOnly(2020, 5, 2)));
    }

    [Fact]
    public void AccumulateEach_SeveralThresholds_AreCountedInOrder()
    {
        DegreeDayThresholds[] bases = [.. new double[] { 5, 10, 15 }.Select(celsius => new DegreeDayThresholds(Temperature.FromDegreesCelsius(celsius)))];

        IReadOnlyList<DegreeDaySeries> each = DegreeDays.AccumulateEach(Days(), bases, DegreeDayMethod.SimpleAverage, UpperCutoff.None);

        Assert.Equal([150, 100, 50], each.Select(series => Math.Round(series.Total.CelsiusDays, 9)));
    }

    [Fact]
    public void Compare_OneRecord_CountsEveryMethodAndCutoff()
    {
        DegreeDayComparison all = DegreeDays.Compare(Days(), Scale);
        DegreeDayComparison lowerOnly = DegreeDays.Compare(Days(), new DegreeDayThresholds(Temperature.FromDegreesFahrenheit(51)));

        Assert.Equal(DegreeDayMethod.All.Sum(method => method.Cutoffs.Count), all.Totals.Count);
        Assert.All(lowerOnly.Totals, total => Assert.Equal(UpperCutoff.None, total.Cutoff));
        Assert.Equal(Crawlers.Count(Days()).Total, all.TotalBy(DegreeDayMethod.SingleSine, UpperCutoff.Horizontal));
        Assert.Null(all.TotalBy(DegreeDayMethod.FourCase, UpperCutoff.Vertical));
        Assert.True(all.Least().Sum <= all.Greatest().Sum);
        Assert.Contains("single sine, cutoff vertical", DisplayText.Plain(((IDisplayable)all).ToDisplay(TextStyle.Default)), StringComparison.Ordinal);
    }

    [Fact]
    public void OfDay_HotDoubleDay_UsesTheNextMinimum()
    {
        static double Counted(double? next) => DegreeDays.OfDay(
            Temperature.FromDegreesCelsius(10), Temperature.FromDegreesCelsius(20), new DegreeDayThresholds(Temperature.FromDegreesCelsius(10)),
            DegreeDayMethod.DoubleTriangle, UpperCutoff.None, next is double celsius ? Temperature.FromDegreesCelsius(celsius) : null).CelsiusDays;

        Assert.Equal(5, Counted(null), 1e-12);
        Assert.Equal(6, Counted(14), 1e-12);
        Assert.Equal(8.5, Counted(24), 1e-12);
    }

    [Theory]
    [InlineData(UpperCutoff.Intermediate, 0)]
    [InlineData(UpperCutoff.IntermediateBelowZero, -2)]
    public void OfDay_SoHotThatIntermediateIsNegative_IsAsTheCutoffSays(UpperCutoff cutoff, double expected)
    {
        DegreeDayThresholds thresholds = new(Temperature.FromDegreesCelsius(10), Temperature.FromDegreesCelsius(20));

        foreach (DegreeDayMethod method in DegreeDayMethod.All.Where(method => method.Cutoffs.Contains(UpperCutoff.IntermediateBelowZero)))
        {
            Assert.Equal(expected, DegreeDays.OfDay(
                Temperature.FromDegreesCelsius(26), Temperature.FromDegreesCelsius(38), thresholds, method, cutoff).CelsiusDays, 1e-12);
        }
    }

    [Fact]
    public void OfHours_MissingHour_IsRefusedByPlace()
    {
        ArgumentOutOfRangeException refused = Assert.Throws<ArgumentOutOfRangeException>(
            () => DegreeDays.OfHours([12, double.NaN], TemperatureUnit.DegreeCelsius, Scale, UpperCutoff.None));

        Assert.Equal("temperatures[1]", refused.ParamName);
        Assert.Equal(1, DegreeDays.OfHours([62, 62, 62, 62, 62, 62, 62, 62], TemperatureUnit.DegreeFahrenheit, new(Temperature.FromDegreesFahrenheit(59)), UpperCutoff.None).FahrenheitDays, 1e-12);
    }

    [Fact]
    public void Json_RequirementTimeAndComparison_ComeBackEqual()
    {
        DegreeDayComparison comparison = DegreeDays.Compare(Days(), Scale);
        TimeReached time = new(new DateOnly(2020, 5, 3), Ratio.FromPercent(50));

        Assert.Equal(Crawlers, RoundTrip(Crawlers, HortiCalcJsonContext.Default.HeatRequirement));
        Assert.Equal(time, RoundTrip(time, HortiCalcJsonContext.Default.TimeReached));
        Assert.Equal(comparison.Totals[0], RoundTrip(comparison.Totals[0], HortiCalcJsonContext.Default.DegreeDayTotal));
        Assert.Equal(comparison, RoundTrip(comparison, HortiCalcJsonContext.Default.DegreeDayComparison));
    }

    private static T? RoundTrip<T>(T value, System.Text.Json.Serialization.Metadata.JsonTypeInfo<T> info) =>
        JsonSerializer.Deserialize(JsonSerializer.Serialize(value, info), info);

    /// <summary>Ten days of 15 to 25 °C.</summary>
    private static DailyTemperatures Days() => DailyTemperatures.Create(
        new DateOnly(2020, 5, 1), [.. Enumerable.Repeat(15.0, 10)], [.. Enumerable.Repeat(25.0, 10)], TemperatureUnit.DegreeCelsius);
}
