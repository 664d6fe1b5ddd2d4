using System.Globalization;
using System.Text.Json;
using HortiCalc.Climate;
using HortiCalc.Display;
using HortiCalc.Evidence;
using HortiCalc.Json;
using HortiCalc.Units;
using UnitsNet;
using UnitsNet.Units;

namespace HortiCalc.Tests.Climate;

public class DegreeDaySeriesTests
{
    private static readonly DegreeDayThresholds Maize = new(Temperature.FromDegreesFahrenheit(50), Temperature.FromDegreesFahrenheit(86));
    private static readonly DegreeDayThresholds Base10 = new(Temperature.FromDegreesCelsius(10));

    [Fact]
    public void Accumulate_ThreeDaysOfMaize_GivesDailyValuesSumsAndTotal()
    {
        DailyTemperatures days = DailyTemperatures.Create(new DateOnly(2018, 5, 1), [65, 46, 42], [90, 72, 63], TemperatureUnit.DegreeFahrenheit);

        DegreeDaySeries series = DegreeDays.Accumulate(days, Maize, DegreeDayMethod.ClampedAverage, UpperCutoff.Horizontal);

        Assert.Equal([25.5, 11, 6.5], series.Days.Select(day => Math.Round(day.Value!.Value.FahrenheitDays, 9)));
        Assert.Equal([25.5, 36.5, 43], series.Days.Select(day => Math.Round(day.Sum.FahrenheitDays, 9)));
        Assert.Equal(43, series.Total.FahrenheitDays, 1e-9);
        Assert.Equal(36.5, series.SumOn(new DateOnly(2018, 5, 2)).FahrenheitDays, 1e-9);
        Assert.Equal((new DateOnly(2018, 5, 1), new DateOnly(2018, 5, 3), 3), (series.Start, series.End, series.Count));
    }

    [Fact]
    public void Accumulate_ExampleOfTheDocumentation_IsReachedOnTheDayItSays()
    {
        DailyTemperatures days = DailyTemperatures.Create(
            new DateOnly(2024, 2, 28), [8, 9, 11, 12], [15, 18, 19, 21], TemperatureUnit.DegreeCelsius);
        DegreeDaySeries heat = DegreeDays.Accumulate(
            days, new DegreeDayThresholds(Temperature.FromDegreesCelsius(10)), DegreeDayMethod.SingleSine, UpperCutoff.None, from: new DateOnly(2024, 2, 29));

        DateOnly? hatch = heat.DateReached(ThermalTime.FromCelsiusDays(8));

        Assert.Equal(new DateOnly(2024, 3, 1), hatch);
    }

    [Fact]
    public void OfDay_ExampleOfTheDocumentation_WritesWhatItSays()
    {
        ThermalTime day = DegreeDays.OfDay(
            Temperature.FromDegreesFahrenheit(65), Temperature.FromDegreesFahrenheit(90), Maize, DegreeDayMethod.ClampedAverage, UpperCutoff.Horizontal);

        Assert.Equal("25.5 °F·d", day.ToString("U", null));
    }

    [Fact]
    public void Accumulate_SouthernSeason_PassesNewYearAndCountsFromItsOwnStart()
    {
        // Two years of one degree-day a day.
        DailyTemperatures days = Constant(new DateOnly(2023, 7, 1), 731, 11);

        DegreeDaySeries series = DegreeDays.Accumulate(days, Base10, DegreeDayMethod.SingleSine, UpperCutoff.None, from: new DateOnly(2023, 10, 1));

        Assert.Equal(new DateOnly(2023, 10, 1), series.Start);
        Assert.Equal(92, series.SumOn(new DateOnly(2023, 12, 31)).CelsiusDays, 1e-9);
        Assert.Equal(213, series.SumOn(new DateOnly(2024, 4, 30)).CelsiusDays, 1e-9);
        Assert.Equal(new DateOnly(2024, 1, 8), series.DateReached(ThermalTime.FromCelsiusDays(100)));
    }

    [Theory]
    [InlineData(2023, "2023-03-01")]
    [InlineData(2024, "2024-02-29")]
    public void DateReached_AcrossTheEndOfFebruary_CountsTheLeapDay(int year, string expected)
    {
        DegreeDaySeries series = DegreeDays.Accumulate(Constant(new DateOnly(year, 1, 1), 90, 11), Base10, DegreeDayMethod.SimpleAverage, UpperCutoff.None);

        Assert.Equal(DateOnly.Parse(expected, CultureInfo.InvariantCulture), series.DateReached(ThermalTime.FromCelsiusDays(60)));
    }

    [Fact]
    public void Accumulate_FromTheLeapDay_StartsThere()
    {
        DegreeDaySeries series = DegreeDays.Accumulate(
            Constant(new DateOnly(2024, 1, 1), 366, 12), Base10, DegreeDayMethod.SimpleAverage, UpperCutoff.None, from: new DateOnly(2024, 2, 29));

        Assert.Equal(new DateOnly(2024, 2, 29), series.Start);
        Assert.Equal(307 * 2, series.Total.CelsiusDays, 1e-9);
    }

    [Fact]
    public void DateReached_RequirementInFahrenheitThatRoundingWouldMiss_IsReachedOnTheDay()
    {
        // 20 days of 10 °F·d make 200 °F·d, in Celsius neither is a finite binary fraction.
        DailyTemperatures days = DailyTemperatures.Create(
            new DateOnly(2020, 5, 1), Repeat(55, 30), Repeat(65, 30), TemperatureUnit.DegreeFahrenheit);
        DegreeDaySeries series = DegreeDays.Accumulate(days, Maize, DegreeDayMethod.SimpleAverage, UpperCutoff.Horizontal);

        for (int day = 1; day <= 30; day++)
            Assert.Equal(new DateOnly(2020, 5, day), series.DateReached(ThermalTime.FromFahrenheitDays(10 * day)));
    }

    [Fact]
    public void DateReached_NotReached_IsNull()
    {
        DegreeDaySeries series = DegreeDays.Accumulate(Constant(new DateOnly(2020, 5, 1), 10, 11), Base10, DegreeDayMethod.SimpleAverage, UpperCutoff.None);

        Assert.Null(series.DateReached(ThermalTime.FromCelsiusDays(10.001)));
        Assert.Equal(new DateOnly(2020, 5, 10), series.DateReached(ThermalTime.FromCelsiusDays(10)));
        Assert.Equal(new DateOnly(2020, 5, 1), series.DateReached(ThermalTime.Zero));
    }

    [Fact]
    public void DateReached_Negative_IsRefused()
    {
        DegreeDaySeries series = DegreeDays.Accumulate(Constant(new DateOnly(2020, 5, 1), 10, 11), Base10, DegreeDayMethod.SimpleAverage, UpperCutoff.None);

        ArgumentOutOfRangeException refused = Assert.Throws<ArgumentOutOfRangeException>(
            "requirement", () => series.DateReached(ThermalTime.FromCelsiusDays(-1)));

        Assert.Contains("-1 °C·d; allowed: 0 °C·d or more", refused.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void SumOn_OutsideTheSeries_IsRefused()
    {
        DegreeDaySeries series = DegreeDays.Accumulate(Constant(new DateOnly(2020, 5, 1), 10, 11), Base10, DegreeDayMethod.SimpleAverage, UpperCutoff.None);

        ArgumentOutOfRangeException refused = Assert.Throws<ArgumentOutOfRangeException>("date", () => series.SumOn(new DateOnly(2020, 5, 11)));

        Assert.Contains("date was 2020-05-11; allowed: from 2020-05-01 to 2020-05-10", refused.Message, StringComparison.Ordinal);
        Assert.Throws<ArgumentOutOfRangeException>("date", () => series[new DateOnly(2020, 4, 30)]);
    }

    [Fact]
    public void MissingDays_LeftOut_AddNothingAndAreReported()
    {
        DegreeDaySeries series = DegreeDays.Accumulate(
            WithGaps(), Base10, DegreeDayMethod.SimpleAverage, UpperCutoff.None, maximumMissing: Ratio.FromPercent(60));

        Assert.Equal(12, series.Total.CelsiusDays, 1e-12);
        Assert.Equal([new DateOnly(2020, 5, 1), new DateOnly(2020, 5, 3), new DateOnly(2020, 5, 4)], series.Missing);
        Assert.Equal(3, series.LeftOutCount);
        Assert.Null(series[new DateOnly(2020, 5, 3)].Value);
        Assert.Equal(series.SumOn(new DateOnly(2020, 5, 2)), series.SumOn(new DateOnly(2020, 5, 4)));
        Assert.Contains(series.Cautions, caution => caution is { Code: "degree-days.missing-left-out", Level: CautionLevel.Care });
    }

    [Fact]
    public void MissingDays_Interpolated_FollowTheStraightLineAndLeaveTheEndsOut()
    {
        DegreeDaySeries series = DegreeDays.Accumulate(
            WithGaps(), Base10, DegreeDayMethod.SimpleAverage, UpperCutoff.None, missingDays: MissingDays.Interpolated, maximumMissing: Ratio.FromPercent(60));

        // Means 13 and 19 with two days between them: 15 and 17.
        Assert.Equal([null, 3, 5, 7, 9], series.Days.Select(day => day.Value is ThermalTime value ? Math.Round(value.CelsiusDays, 9) : (double?)null));
        Assert.Equal(3, series.Missing.Count);
        Assert.Equal(1, series.LeftOutCount);
        Assert.Equal(
            ["degree-days.method", "degree-days.missing-left-out", "degree-days.missing-interpolated"], series.Cautions.Select(caution => caution.Code));
    }

    [Fact]
    public void Series_OfAnyMethod_CarriesItsEvidenceAndTheCautionThatRequirementsBelongToMethods()
    {
        DegreeDaySeries series = DegreeDays.Accumulate(Constant(new DateOnly(2020, 5, 1), 10, 11), Base10, DegreeDayMethod.SingleSine, UpperCutoff.None);

        Assert.Equal("california-degree-day-glossary", series.Method.Evidence.Source.Key);
        Assert.Equal("degree-days.method", Assert.Single(series.Cautions).Code);
    }

    [Fact]
    public void ToString_Series_IsOneHonestLine()
    {
        DegreeDaySeries series = DegreeDays.Accumulate(
            WithGaps(), Base10, DegreeDayMethod.SingleSine, UpperCutoff.None, missingDays: MissingDays.Interpolated, maximumMissing: Ratio.FromPercent(60));

        Assert.Equal(
            "24 °C·d from 2020-05-01 to 2020-05-05, 3 (1 left out, the others filled in) missing; single sine, above 10 °C, cutoff none "
            + "[University of California Statewide IPM Program, Degree-days: more information (glossary) (no date)]; 3 cautions",
            series.ToString());
        Assert.StartsWith("43,2 °F·d", series.ToString("U", CultureInfo.GetCultureInfo("de-DE")), StringComparison.Ordinal);
        Assert.Throws<FormatException>(() => series.ToString("X", null));
    }

    [Fact]
    public void ToDisplay_Series_ShowsMethodThresholdsAndSource()
    {
        IDisplayable series = DegreeDays.Accumulate(Constant(new DateOnly(2020, 5, 1), 10, 11), Maize, DegreeDayMethod.SingleSine, UpperCutoff.Horizontal);

        string text = DisplayText.Plain(series.ToDisplay(TextStyle.Default));

        Assert.StartsWith("10 °C·d from 2020-05-01 to 2020-05-10", text, StringComparison.Ordinal);
        Assert.Contains("10 °C to 30 °C", text, StringComparison.Ordinal);
        Assert.Contains("horizontal", text, StringComparison.Ordinal);
    }

    [Fact]
    public void Json_Series_ComesBackEqual()
    {
        foreach (MissingDays missingDays in Enum.GetValues<MissingDays>())
        {
            DegreeDaySeries series = DegreeDays.Accumulate(
                WithGaps(), Maize, DegreeDayMethod.SingleSine, UpperCutoff.Horizontal, missingDays: missingDays, maximumMissing: Ratio.FromPercent(60));

            string json = JsonSerializer.Serialize(series, HortiCalcJsonContext.Default.DegreeDaySeries);
            DegreeDaySeries? back = JsonSerializer.Deserialize(json, HortiCalcJsonContext.Default.DegreeDaySeries);

            Assert.Equal(series, back);
            Assert.Equal(series.GetHashCode(), back!.GetHashCode());
            Assert.Equal(series.Cautions, back.Cautions);
            Assert.Equal(series.Total, back.Total);
        }
    }

    [Theory]
    [InlineData("\"unit\":\"°C·d\"", "\"unit\":\"°F\"", "unknown unit \"°F\"")]
    [InlineData("\"method\":\"single-sine\"", "\"method\":\"sine\"", "'sine'; allowed")]
    [InlineData("\"cutoff\":\"None\"", "\"cutoff\":\"Diagonal\"", "unknown \"cutoff\" \"Diagonal\"")]
    [InlineData("\"cutoff\":\"None\"", "\"cutoff\":\"Horizontal\"", "upper")]
    [InlineData("\"daily\":[", "\"daily\":[-1,", "-1 °C·d")]
    [InlineData("\"missing\":[]", "\"missing\":[\"1999-01-01\"]", "1999-01-01")]
    [InlineData("\"start\":", "\"begin\":", "unknown property \"begin\"")]
    public void Json_SeriesThatContradictsItself_IsRefused(string written, string changed, string message)
    {
        DegreeDaySeries series = DegreeDays.Accumulate(Constant(new DateOnly(2020, 5, 1), 3, 11), Base10, DegreeDayMethod.SingleSine, UpperCutoff.None);
        string json = JsonSerializer.Serialize(series, HortiCalcJsonContext.Default.DegreeDaySeries)
            .Replace("\\u00B0", "°", StringComparison.Ordinal).Replace("\\u00B7", "·", StringComparison.Ordinal);
        Assert.Contains(written, json, StringComparison.Ordinal);

        JsonException refused = Assert.Throws<JsonException>(() => JsonSerializer.Deserialize(
            json.Replace(written, changed, StringComparison.Ordinal), HortiCalcJsonContext.Default.DegreeDaySeries));

        Assert.Contains(message, refused.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Json_ThresholdsMethodAndDay_ComeBackEqual()
    {
        DegreeDay day = new(new DateOnly(2020, 5, 1), null, ThermalTime.FromCelsiusDays(12.5));

        Assert.Equal(Maize, RoundTrip(Maize, HortiCalcJsonContext.Default.DegreeDayThresholds));
        Assert.Equal(Base10, RoundTrip(Base10, HortiCalcJsonContext.Default.DegreeDayThresholds));
        Assert.Equal(day, RoundTrip(day, HortiCalcJsonContext.Default.DegreeDay));
        Assert.All(DegreeDayMethod.All, method => Assert.Same(method, RoundTrip(method, HortiCalcJsonContext.Default.DegreeDayMethod)));
    }

    [Fact]
    public void Equals_AnotherMethodOrOtherDays_IsFalse()
    {
        DailyTemperatures days = Constant(new DateOnly(2020, 5, 1), 10, 11);
        DegreeDaySeries series = DegreeDays.Accumulate(days, Base10, DegreeDayMethod.SingleSine, UpperCutoff.None);

        Assert.NotEqual(series, DegreeDays.Accumulate(days, Base10, DegreeDayMethod.SingleTriangle, UpperCutoff.None));
        Assert.NotEqual(series, DegreeDays.Accumulate(days, Base10, DegreeDayMethod.SingleSine, UpperCutoff.None, new DateOnly(2020, 5, 2)));
        Assert.Equal(series, DegreeDays.Accumulate(days, Base10, DegreeDayMethod.SingleSine, UpperCutoff.None));
    }

    private static T? RoundTrip<T>(T value, System.Text.Json.Serialization.Metadata.JsonTypeInfo<T> info) =>
        JsonSerializer.Deserialize(JsonSerializer.Serialize(value, info), info);

    private static DailyTemperatures Constant(DateOnly start, int count, double celsius) =>
        DailyTemperatures.Create(start, Repeat(celsius, count), Repeat(celsius, count), TemperatureUnit.DegreeCelsius);

    private static double[] Repeat(double value, int count) => [.. Enumerable.Repeat(value, count)];

    /// <summary>Five days: missing, 11 to 15 °C, two missing, 17 to 21 °C.</summary>
    private static DailyTemperatures WithGaps() => DailyTemperatures.Create(
        new DateOnly(2020, 5, 1),
        [double.NaN, 11, double.NaN, 12, 17],
        [14, 15, 16, double.NaN, 21],
        TemperatureUnit.DegreeCelsius);
}
