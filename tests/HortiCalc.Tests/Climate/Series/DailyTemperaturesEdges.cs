using System.Text.Json;
using HortiCalc.Climate;
using HortiCalc.Json;
using UnitsNet;
using UnitsNet.Units;

namespace HortiCalc.Tests.Climate;

public class DailyTemperaturesEdges
{
    private static readonly DateOnly Start = new(2024, 2, 28);

    [Fact]
    public void Create_NoDays_IsRefused()
    {
        ArgumentException refused = Assert.Throws<ArgumentException>(
            "minima", () => DailyTemperatures.Create(Start, [], [], TemperatureUnit.DegreeCelsius));

        Assert.Contains("allowed: 1 or more", refused.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Create_ListsOfUnequalLength_AreRefused()
    {
        ArgumentException refused = Assert.Throws<ArgumentException>(
            "maxima", () => DailyTemperatures.Create(Start, [1, 2, 3], [4, 5], TemperatureUnit.DegreeCelsius));

        Assert.Contains("maxima held 2 days; allowed: 3", refused.Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(double.PositiveInfinity, "maxima on 2024-02-29 was Infinity °C; allowed: from -90 to 60 °C")]
    [InlineData(60.1, "maxima on 2024-02-29 was 60.1 °C; allowed: from -90 to 60 °C")]
    [InlineData(0.5, "maxima on 2024-02-29 was 0.5 °C; allowed: the day's minimum, 1 °C, or more")]
    public void Create_ImpossibleMaximum_IsRefusedWithTheDay(double maximum, string message)
    {
        ArgumentOutOfRangeException refused = Assert.Throws<ArgumentOutOfRangeException>(
            "maxima", () => DailyTemperatures.Create(Start, [1, 1], [5, maximum], TemperatureUnit.DegreeCelsius));

        Assert.Contains(message, refused.Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(-90.1, TemperatureUnit.DegreeCelsius, "minima on 2024-02-28 was -90.1 °C; allowed: from -90 to 60 °C")]
    [InlineData(-131, TemperatureUnit.DegreeFahrenheit, "minima on 2024-02-28 was -131 °F; allowed: from -130 to 140 °F")]
    [InlineData(12, TemperatureUnit.Kelvin, "minima on 2024-02-28 was 12 K; allowed: from 183.15 to 333.15 K")]
    [InlineData(double.NegativeInfinity, TemperatureUnit.DegreeCelsius, "minima on 2024-02-28 was -")]
    public void Create_ImpossibleMinimum_IsRefusedInTheUnitGiven(double minimum, TemperatureUnit unit, string message)
    {
        ArgumentOutOfRangeException refused = Assert.Throws<ArgumentOutOfRangeException>(
            "minima", () => DailyTemperatures.Create(Start, [minimum], [double.NaN], unit));

        Assert.Contains(message, refused.Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(-90, 60, TemperatureUnit.DegreeCelsius)]
    [InlineData(-130, 140, TemperatureUnit.DegreeFahrenheit)]
    public void Create_TheColdestAndHottestAllowed_AreAccepted(double minimum, double maximum, TemperatureUnit unit) =>
        Assert.Equal(1, DailyTemperatures.Create(Start, [minimum], [maximum], unit).Count);

    [Fact]
    public void Create_MinimumEqualToMaximum_IsAccepted() =>
        Assert.Equal(0, DailyTemperatures.Create(Start, [5], [5], TemperatureUnit.DegreeCelsius).MissingCount);

    [Fact]
    public void Create_BeyondTheCalendar_IsRefused()
    {
        Assert.Equal(DateOnly.MaxValue, DailyTemperatures.Create(DateOnly.MaxValue, [1], [2], TemperatureUnit.DegreeCelsius).End);
        Assert.Throws<ArgumentException>("minima", () => DailyTemperatures.Create(DateOnly.MaxValue, [1, 1], [2, 2], TemperatureUnit.DegreeCelsius));
    }

    [Fact]
    public void Create_UnitThatIsNone_IsRefused() =>
        Assert.Throws<ArgumentOutOfRangeException>("unit", () => DailyTemperatures.Create(Start, [1], [2], (TemperatureUnit)999));

    [Fact]
    public void FromMinima_NoneOrImpossible_IsRefused()
    {
        Assert.Throws<ArgumentException>("minima", () => DailyTemperatures.FromMinima(Start, [], TemperatureUnit.DegreeCelsius));
        ArgumentOutOfRangeException refused = Assert.Throws<ArgumentOutOfRangeException>(
            "minima", () => DailyTemperatures.FromMinima(Start, [1, -140], TemperatureUnit.DegreeFahrenheit));

        Assert.Contains("minima on 2024-02-29 was -140 °F; allowed: from -130 to 140 °F", refused.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void MinimumOn_OutsideTheSeries_IsRefused()
    {
        DailyTemperatures nights = DailyTemperatures.FromMinima(Start, [1], TemperatureUnit.DegreeCelsius);

        Assert.Throws<ArgumentOutOfRangeException>("date", () => nights.MinimumOn(Start.AddDays(1)));
        Assert.Throws<ArgumentOutOfRangeException>("date", () => nights.MaximumOn(Start.AddDays(-1)));
    }

    [Fact]
    public void Accumulate_MinimaAlone_IsRefusedWithWhatIsMissing()
    {
        DailyTemperatures nights = DailyTemperatures.FromMinima(Start, [1, 2], TemperatureUnit.DegreeCelsius);

        ArgumentException refused = Assert.Throws<ArgumentException>("days", () => DegreeDays.Accumulate(
            nights,
            new DegreeDayThresholds(Temperature.FromDegreesCelsius(5)),
            DegreeDayMethod.SingleSine,
            UpperCutoff.None,
            maximumMissing: Ratio.FromPercent(100)));

        Assert.Contains("2 of 2 missing", refused.Message, StringComparison.Ordinal);
        Assert.Contains("one day with its minimum and its maximum", refused.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void FromDays_TheSameDateTwice_IsRefusedByDate()
    {
        DailyTemperature day = new(Start, Temperature.FromDegreesCelsius(1), Temperature.FromDegreesCelsius(2));

        ArgumentException refused = Assert.Throws<ArgumentException>("days", () => DailyTemperatures.FromDays([day, day]));

        Assert.Contains("2024-02-28 twice", refused.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void FromDays_NoneOrNull_IsRefused()
    {
        Assert.Throws<ArgumentException>("days", () => DailyTemperatures.FromDays([]));
        Assert.Throws<ArgumentNullException>("days", () => DailyTemperatures.FromDays(null!));
        Assert.Throws<ArgumentNullException>("days", () => DailyTemperatures.FromDays([null!]));
    }

    [Fact]
    public void Day_MaximumBelowMinimum_IsRefused()
    {
        ArgumentOutOfRangeException refused = Assert.Throws<ArgumentOutOfRangeException>(
            "maximum", () => new DailyTemperature(Start, Temperature.FromDegreesCelsius(3), Temperature.FromDegreesCelsius(2)));

        Assert.Contains("maximum on 2024-02-28 was 2 °C; allowed: the day's minimum, 3 °C, or more", refused.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Day_AbsoluteZero_IsRefused() => Assert.Throws<ArgumentOutOfRangeException>("minimum", () => new DailyTemperature(Start, default, default));

    [Theory]
    [InlineData("2024-02-27", "2024-02-29", "first")]
    [InlineData("2024-02-28", "2024-03-02", "last")]
    [InlineData("2024-03-01", "2024-02-29", "last")]
    public void Between_DatesOutsideOrReversed_AreRefused(string first, string last, string parameter) =>
        Assert.Throws<ArgumentOutOfRangeException>(parameter, () => DailyTemperatures
            .Create(Start, [1, 1, 1], [2, 2, 2], TemperatureUnit.DegreeCelsius)
            .Between(DateOnly.Parse(first, null), DateOnly.Parse(last, null)));

    [Fact]
    public void Indexer_OutsideTheSeries_IsRefusedWithTheRange()
    {
        DailyTemperatures days = DailyTemperatures.Create(Start, [1, 1, 1], [2, 2, 2], TemperatureUnit.DegreeCelsius);

        ArgumentOutOfRangeException refused = Assert.Throws<ArgumentOutOfRangeException>("date", () => days[new DateOnly(2024, 3, 2)]);

        Assert.Contains("date was 2024-03-02; allowed: from 2024-02-28 to 2024-03-01", refused.Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("""{"start":"2024-02-28","unit":"°R","minima":[1],"maxima":[2]}""", "unknown unit \"°R\"")]
    [InlineData("""{"start":"28.2.2024","unit":"°C","minima":[1],"maxima":[2]}""", "expected a date")]
    [InlineData("""{"start":"2024-02-28","unit":"°C","minima":[1]}""", "\"maxima\" is missing")]
    [InlineData("""{"start":"2024-02-28","unit":"°C","minima":1,"maxima":[2]}""", "expected a list")]
    [InlineData("""{"start":"2024-02-28","unit":"°C","minima":["1"],"maxima":[2]}""", "expected numbers or null")]
    [InlineData("""{"start":"2024-02-28","unit":"°C","minima":[5],"maxima":[2]}""", "the day's minimum, 5 °C")]
    [InlineData("""{"start":"2024-02-28","unit":"°C","minima":[5],"maxima":[9],"x":1}""", "unknown property \"x\"")]
    [InlineData("[]", "expected an object")]
    public void Json_Malformed_SaysWhich(string json, string message)
    {
        JsonException refused = Assert.Throws<JsonException>(() => JsonSerializer.Deserialize(json, HortiCalcJsonContext.Default.DailyTemperatures));

        Assert.Contains(message, refused.Message, StringComparison.Ordinal);
    }
}
