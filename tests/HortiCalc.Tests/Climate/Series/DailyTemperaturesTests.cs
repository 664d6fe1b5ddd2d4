using System.Globalization;
using System.Text.Json;
using HortiCalc.Climate;
using HortiCalc.Display;
using HortiCalc.Json;
using UnitsNet;
using UnitsNet.Units;

namespace HortiCalc.Tests.Climate;

public class DailyTemperaturesTests
{
    private static readonly DateOnly LateFebruary = new(2024, 2, 27);

    [Fact]
    public void Create_FiveDaysAcrossTheLeapDay_KnowsItsDaysAndGaps()
    {
        DailyTemperatures days = FiveDays();

        Assert.Equal(LateFebruary, days.Start);
        Assert.Equal(new DateOnly(2024, 3, 2), days.End);
        Assert.Equal(5, days.Count);
        Assert.Equal(2, days.MissingCount);
        Assert.Equal([new DateOnly(2024, 2, 28), new DateOnly(2024, 2, 29)], days.Missing);
    }

    [Fact]
    public void Create_OneTemperatureOfADayMissing_MakesTheDayMissingAndKeepsTheOther()
    {
        DailyTemperatures days = FiveDays();

        Assert.Equal((2, 1, 1), (days.MissingCount, days.MissingMinimaCount, days.MissingMaximaCount));
        Assert.Null(days.MinimumOn(new DateOnly(2024, 2, 28)));
        Assert.Equal(Temperature.FromDegreesCelsius(8), days.MaximumOn(new DateOnly(2024, 2, 28)));
        Assert.Equal(Temperature.FromDegreesCelsius(2), days.MinimumOn(new DateOnly(2024, 2, 29)));
        Assert.Null(days.MaximumOn(new DateOnly(2024, 2, 29)));
        Assert.Null(days[new DateOnly(2024, 2, 29)]);
        Assert.False(days.TryGet(new DateOnly(2024, 2, 29), out DailyTemperature? day));
        Assert.Null(day);
    }

    [Fact]
    public void FromMinima_NightsAlone_KnowsThemAndNoWholeDay()
    {
        DailyTemperatures nights = DailyTemperatures.FromMinima(LateFebruary, [32, double.NaN, 14], TemperatureUnit.DegreeFahrenheit);

        Assert.Equal((3, 3, 1, 3), (nights.Count, nights.MissingCount, nights.MissingMinimaCount, nights.MissingMaximaCount));
        Assert.Equal(Temperature.FromDegreesCelsius(0), nights.MinimumOn(LateFebruary));
        Assert.Empty(nights.KnownDays());
        Assert.Equal("2024-02-27 to 2024-02-29: 3 days, 3 missing (1 minima, 3 maxima), lowest -10 °C", nights.ToString());
        Assert.Equal(nights, DailyTemperatures.Create(
            LateFebruary, [0, double.NaN, -10], [double.NaN, double.NaN, double.NaN], TemperatureUnit.DegreeCelsius));
    }

    [Fact]
    public void Create_InFahrenheit_IsTheSameAsInCelsius()
    {
        DailyTemperatures fahrenheit = DailyTemperatures.Create(LateFebruary, [32, 41], [50, 59], TemperatureUnit.DegreeFahrenheit);
        DailyTemperatures celsius = DailyTemperatures.Create(LateFebruary, [0, 5], [10, 15], TemperatureUnit.DegreeCelsius);

        Assert.Equal(celsius, fahrenheit);
        Assert.Equal(celsius.GetHashCode(), fahrenheit.GetHashCode());
    }

    [Fact]
    public void Create_ChangedArraysAfterwards_DoNotShow()
    {
        double[] minima = [1, 2];
        DailyTemperatures days = DailyTemperatures.Create(LateFebruary, minima, [3, 4], TemperatureUnit.DegreeCelsius);

        minima[0] = -50;

        Assert.Equal(1, days[LateFebruary]!.Minimum.DegreesCelsius);
    }

    [Fact]
    public void Indexer_KnownDay_GivesItsTemperatures()
    {
        DailyTemperature? day = FiveDays()[new DateOnly(2024, 3, 1)];

        Assert.Equal(new DailyTemperature(new DateOnly(2024, 3, 1), Temperature.FromDegreesCelsius(4), Temperature.FromDegreesCelsius(13.5)), day);
    }

    [Fact]
    public void TryGet_OutsideTheSeries_IsFalse()
    {
        Assert.False(FiveDays().TryGet(LateFebruary.AddDays(-1), out _));
        Assert.False(FiveDays().TryGet(LateFebruary.AddDays(5), out _));
        Assert.True(FiveDays().TryGet(LateFebruary, out DailyTemperature? first));
        Assert.Equal(LateFebruary, first.Date);
    }

    [Fact]
    public void Between_PartOfTheSeries_SharesItsMemory()
    {
        DailyTemperatures days = FiveDays();

        DailyTemperatures part = days.Between(new DateOnly(2024, 2, 29), new DateOnly(2024, 3, 1));

        Assert.Equal(2, part.Count);
        Assert.Equal(1, part.MissingCount);
        Assert.Equal([new DateOnly(2024, 2, 29)], part.Missing);
        Assert.True(part.MinimaCelsius.Overlaps(days.MinimaCelsius));
        Assert.Equal(days[new DateOnly(2024, 3, 1)], part[new DateOnly(2024, 3, 1)]);
    }

    [Fact]
    public void FromDays_OutOfOrderWithGaps_FillsTheRunBetween()
    {
        DailyTemperature first = Day(2023, 12, 30, -3, 2);
        DailyTemperature last = Day(2024, 1, 2, 0, 6);

        DailyTemperatures days = DailyTemperatures.FromDays([last, first]);

        Assert.Equal((first.Date, last.Date, 4, 2), (days.Start, days.End, days.Count, days.MissingCount));
        Assert.Equal([first, last], days.KnownDays());
    }

    [Fact]
    public void Equals_AnotherDayOrTemperature_IsFalse()
    {
        DailyTemperatures days = DailyTemperatures.Create(LateFebruary, [1, double.NaN], [3, 4], TemperatureUnit.DegreeCelsius);

        Assert.Equal(days, DailyTemperatures.Create(LateFebruary, [1, double.NaN], [3, 4], TemperatureUnit.DegreeCelsius));
        Assert.NotEqual(days, DailyTemperatures.Create(LateFebruary, [1, double.NaN], [3, double.NaN], TemperatureUnit.DegreeCelsius));
        Assert.NotEqual(days, DailyTemperatures.Create(LateFebruary.AddDays(1), [1, double.NaN], [3, 4], TemperatureUnit.DegreeCelsius));
        Assert.NotEqual(days, DailyTemperatures.Create(LateFebruary, [1, double.NaN], [3.1, 4], TemperatureUnit.DegreeCelsius));
        Assert.NotEqual(days, DailyTemperatures.Create(LateFebruary, [1, 2], [3, 4], TemperatureUnit.DegreeCelsius));
    }

    [Fact]
    public void ToString_Series_IsOneLine()
    {
        Assert.Equal("2024-02-27 to 2024-03-02: 5 days, 2 missing (1 minima, 1 maxima), -1.5 °C to 13.5 °C", FiveDays().ToString());
        Assert.Equal(
            "2024-02-27 to 2024-03-02: 5 days, 2 missing (1 minima, 1 maxima), 29,3 °F to 56,3 °F", FiveDays().ToString("U", CultureInfo.GetCultureInfo("de-DE")));
        Assert.Equal(
            "2024-02-27 to 2024-02-27: 1 day, 1 missing, no temperature known",
            DailyTemperatures.Create(LateFebruary, [double.NaN], [double.NaN], TemperatureUnit.DegreeCelsius).ToString());
        Assert.Equal(
            "2024-02-27 to 2024-02-27: 1 day, 1 missing (1 minima, 0 maxima), highest 3 °C",
            DailyTemperatures.Create(LateFebruary, [double.NaN], [3], TemperatureUnit.DegreeCelsius).ToString());
        Assert.Equal("2024-03-01: 4 °C to 13.5 °C", FiveDays()[new DateOnly(2024, 3, 1)]!.ToString());
    }

    [Fact]
    public void ToDisplay_Series_ShowsItsDaysAndGaps()
    {
        string text = DisplayText.Plain(((IDisplayable)FiveDays()).ToDisplay(TextStyle.Default));

        Assert.Contains("2024-02-27", text, StringComparison.Ordinal);
        Assert.Contains("missing       2", text, StringComparison.Ordinal);
    }

    [Fact]
    public void Json_Series_IsShortAndComesBackEqual()
    {
        string json = JsonSerializer.Serialize(FiveDays(), HortiCalcJsonContext.Default.DailyTemperatures);

        Assert.Equal(
            """{"start":"2024-02-27","unit":"\u00B0C","minima":[-1.5,null,2,4,5.25],"maxima":[6,8,null,13.5,9]}""", json);
        Assert.Equal(FiveDays(), JsonSerializer.Deserialize(json, HortiCalcJsonContext.Default.DailyTemperatures));
    }

    [Fact]
    public void Json_SeriesInFahrenheit_IsRead()
    {
        DailyTemperatures? days = JsonSerializer.Deserialize(
            """{"maxima":[50],"minima":[32],"unit":"°F","start":"2024-02-27"}""", HortiCalcJsonContext.Default.DailyTemperatures);

        Assert.Equal(DailyTemperatures.Create(LateFebruary, [0], [10], TemperatureUnit.DegreeCelsius), days);
    }

    [Fact]
    public void Json_Day_ComesBackEqual()
    {
        DailyTemperature day = Day(2024, 2, 29, -3.3, 2.7);

        string json = JsonSerializer.Serialize(day, HortiCalcJsonContext.Default.DailyTemperature);

        Assert.Equal(day, JsonSerializer.Deserialize(json, HortiCalcJsonContext.Default.DailyTemperature));
    }

    private static DailyTemperature Day(int year, int month, int day, double minimum, double maximum) =>
        new(new DateOnly(year, month, day), Temperature.FromDegreesCelsius(minimum), Temperature.FromDegreesCelsius(maximum));

    private static DailyTemperatures FiveDays() => DailyTemperatures.Create(
        LateFebruary, [-1.5, double.NaN, 2, 4, 5.25], [6, 8, double.NaN, 13.5, 9], TemperatureUnit.DegreeCelsius);
}
