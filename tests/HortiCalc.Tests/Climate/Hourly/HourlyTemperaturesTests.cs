using FsCheck.Xunit;
using HortiCalc.Climate;
using HortiCalc.Tests.Units;
using UnitsNet;
using UnitsNet.Units;

namespace HortiCalc.Tests.Climate;

public class HourlyTemperaturesTests
{
    private static readonly DateTime Midnight = new(2024, 2, 28);

    [Fact]
    public void Create_WithGaps_KnowsThem()
    {
        HourlyTemperatures hours = Of(1, double.NaN, 3);

        Assert.Equal(3, hours.Count);
        Assert.Equal(1, hours.MissingCount);
        Assert.Equal([Midnight.AddHours(1)], hours.Missing);
        Assert.Null(hours[Midnight.AddHours(1)]);
        Assert.False(hours.TryGet(Midnight.AddHours(1), out _));
        Assert.True(hours.TryGet(Midnight.AddHours(2), out Temperature? third));
        Assert.Equal(3, third!.Value.DegreesCelsius);
    }

    [Fact]
    public void TryGet_OutsideTheSeriesOrBetweenHours_IsFalse()
    {
        HourlyTemperatures hours = Of(1, 2);

        Assert.False(hours.TryGet(Midnight.AddHours(-1), out _));
        Assert.False(hours.TryGet(Midnight.AddHours(2), out _));
        Assert.False(hours.TryGet(Midnight.AddMinutes(30), out _));
    }

    [Fact]
    public void Create_InFahrenheitOrKelvin_IsEqual()
    {
        HourlyTemperatures celsius = HourlyTemperatures.Create(Midnight, [0, 10, double.NaN], TemperatureUnit.DegreeCelsius);

        Assert.Equal(celsius, HourlyTemperatures.Create(Midnight, [32, 50, double.NaN], TemperatureUnit.DegreeFahrenheit));
        Assert.Equal(celsius, HourlyTemperatures.Create(Midnight, [273.15, 283.15, double.NaN], TemperatureUnit.Kelvin));
        Assert.Equal(
            celsius.GetHashCode(),
            HourlyTemperatures.Create(DateTime.SpecifyKind(Midnight, DateTimeKind.Utc), [0, 10, double.NaN], TemperatureUnit.DegreeCelsius).GetHashCode());
    }

    [Theory]
    [InlineData(61, "61 °C")]
    [InlineData(double.PositiveInfinity, "from -90 to 60 °C")]
    [InlineData(-91, "2024-02-29")]
    public void Create_NoTemperatureOfTheAir_IsRefusedWithTheDay(double value, string said)
    {
        double[] values = [.. Enumerable.Repeat(5.0, 30), value];

        ArgumentOutOfRangeException refusal = Assert.Throws<ArgumentOutOfRangeException>(() => Of(values));

        Assert.Equal("values", refusal.ParamName);
        Assert.Contains(said, refusal.Message, StringComparison.Ordinal);
        Assert.Contains("2024-02-29", refusal.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Create_NoHoursOrHalfHours_IsRefused()
    {
        Assert.Equal("values", Assert.Throws<ArgumentException>(() => Of()).ParamName);
        ArgumentOutOfRangeException half = Assert.Throws<ArgumentOutOfRangeException>(
            () => HourlyTemperatures.Create(Midnight.AddMinutes(30), [1], TemperatureUnit.DegreeCelsius));
        Assert.Equal("start", half.ParamName);
        Assert.Contains("2024-02-28 00:30:00", half.Message, StringComparison.Ordinal);
        Assert.Throws<ArgumentException>(
            () => HourlyTemperatures.Create(new DateTime(9999, 12, 31, 23, 0, 0), [1, 2], TemperatureUnit.DegreeCelsius));
    }

    [Fact]
    public void Between_AnyHours_SharesAndKeepsThem()
    {
        HourlyTemperatures hours = Of(0, 1, double.NaN, 3, 4);

        HourlyTemperatures cut = hours.Between(Midnight.AddHours(1), Midnight.AddHours(3));

        Assert.Equal(HourlyTemperatures.Create(Midnight.AddHours(1), [1, double.NaN, 3], TemperatureUnit.DegreeCelsius), cut);
        Assert.Equal(1, cut.MissingCount);
        Assert.Equal("last", Assert.Throws<ArgumentOutOfRangeException>(() => hours.Between(Midnight.AddHours(3), Midnight)).ParamName);
        Assert.Equal("last", Assert.Throws<ArgumentOutOfRangeException>(() => hours.Between(Midnight, Midnight.AddHours(5))).ParamName);
    }

    [Fact]
    public void Season_PastNewYear_TakesEveryHourOfItsDays()
    {
        HourlyTemperatures record = HourlyTemperatures.Create(
            new DateTime(2023, 7, 1), [.. Enumerable.Repeat(4.0, 24 * 500)], TemperatureUnit.DegreeCelsius);

        HourlyTemperatures winter = record.Season(new MonthDay(11, 1), new MonthDay(2, 29), 2023);

        Assert.Equal(new DateTime(2023, 11, 1), winter.Start);
        Assert.Equal(new DateTime(2024, 2, 29, 23, 0, 0), winter.End);
        Assert.Throws<ArgumentOutOfRangeException>(() => record.Season(new MonthDay(11, 1), new MonthDay(2, 29), 2024));
    }

    [Fact]
    public void DailySeasons_WholeOnes_AreCutInOrder()
    {
        DailyTemperatures record = DailyTemperatures.Create(
            new DateOnly(2020, 12, 1), new double[1100], new double[1100], TemperatureUnit.DegreeCelsius);

        IReadOnlyList<DailyTemperatures> south = record.Seasons(new MonthDay(10, 1), new MonthDay(4, 30));
        IReadOnlyList<DailyTemperatures> north = record.Seasons(new MonthDay(1, 1), new MonthDay(12, 31));

        Assert.Equal([new DateOnly(2021, 10, 1), new DateOnly(2022, 10, 1)], south.Select(season => season.Start));
        Assert.Equal([new DateOnly(2022, 4, 30), new DateOnly(2023, 4, 30)], south.Select(season => season.End));
        Assert.Equal([2021, 2022], north.Select(season => season.Start.Year));
        Assert.Equal(south[0], record.Season(new MonthDay(10, 1), new MonthDay(4, 30), 2021));
        Assert.Empty(record.Between(new DateOnly(2021, 1, 1), new DateOnly(2021, 2, 1)).Seasons(new MonthDay(1, 1), new MonthDay(12, 31)));
    }

    [Theory]
    [InlineData(2024, 60)]
    [InlineData(2025, 59)]
    public void DailySeason_ToTheLeapDay_EndsWithFebruary(int year, int days)
    {
        DailyTemperatures record = DailyTemperatures.Create(
            new DateOnly(year, 1, 1), new double[365], new double[365], TemperatureUnit.DegreeCelsius);

        Assert.Equal(days, record.Season(new MonthDay(1, 1), new MonthDay(2, 29), year).Count);
    }

    [Fact]
    public void FromHourly_LeapDay_HasItsExtremes()
    {
        double[] readings = [.. Enumerable.Range(0, 72).Select(hour => hour / 24 - 5 * Math.Cos(hour * Math.PI / 12))];

        DailyTemperatures days = DailyTemperatures.FromHourly(Of(readings));

        Assert.Equal(3, days.Count);
        Assert.Equal(-4, days[new DateOnly(2024, 2, 29)]!.Minimum.DegreesCelsius, 1e-12);
        Assert.Equal(6, days[new DateOnly(2024, 2, 29)]!.Maximum.DegreesCelsius, 1e-12);
    }

    [Fact]
    public void FromHourly_DayWithTooFewReadings_IsMissing()
    {
        double[] readings = [.. Enumerable.Range(0, 60).Select(hour => hour == 30 ? double.NaN : hour)];
        HourlyTemperatures hours = HourlyTemperatures.Create(Midnight.AddHours(6), readings, TemperatureUnit.DegreeCelsius);

        // 18 hours of the first day, 23 known ones of the second, 18 of the third.
        Assert.Equal(3, DailyTemperatures.FromHourly(hours).MissingCount);
        Assert.Equal([new DateOnly(2024, 2, 28), new DateOnly(2024, 3, 1)], DailyTemperatures.FromHourly(hours, 23).Missing);
        Assert.Empty(DailyTemperatures.FromHourly(hours, 18).Missing);
    }

    [Theory]
    [InlineData(0)]
    [InlineData(25)]
    public void FromHourly_NoNumberOfReadings_IsRefused(int fewest) =>
        Assert.Equal("fewestReadings", Assert.Throws<ArgumentOutOfRangeException>(() => DailyTemperatures.FromHourly(Of(1), fewest)).ParamName);

    [Property]
    public void FromHourly_AnyReadings_ExtremesAreReadingsOfTheDay(short[] tenths, byte startHour)
    {
        if (tenths.Length == 0)
            return;
        double[] readings = [.. tenths.Select(value => value % 300 / 10.0)];
        HourlyTemperatures hours = HourlyTemperatures.Create(Midnight.AddHours(startHour % 24), readings, TemperatureUnit.DegreeCelsius);

        DailyTemperatures days = DailyTemperatures.FromHourly(hours, 1);

        Assert.Equal(readings.Min(), days.KnownDays().Min(day => day.Minimum.DegreesCelsius));
        Assert.Equal(readings.Max(), days.KnownDays().Max(day => day.Maximum.DegreesCelsius));
        Assert.Equal(DateOnly.FromDateTime(hours.End), days.End);
    }

    [Property]
    public void Between_AnyCut_JoinsToTheWhole(short[] tenths, byte cut)
    {
        if (tenths.Length < 2)
            return;
        HourlyTemperatures whole = Of([.. tenths.Select(value => value % 300 / 10.0)]);
        DateTime last = whole.Start.AddHours(cut % (whole.Count - 1));

        HourlyTemperatures first = whole.Between(whole.Start, last);
        HourlyTemperatures second = whole.Between(last.AddHours(1), whole.End);

        Assert.Equal(whole.Count, first.Count + second.Count);
        Assert.Equal(whole[whole.End], second[second.End]);
        Assert.Equal(whole[last], first[first.End]);
    }

    [Fact]
    public void ToString_InAnyCulture_IsOneInvariantLine()
    {
        using CultureScope german = new("de-DE");

        Assert.Equal("2024-02-28 00:00 to 2024-02-28 02:00: 3 hours, 1 missing, 1.5 °C to 3 °C", Of(1.5, double.NaN, 3).ToString());
        Assert.Equal("2024-02-28 00:00 to 2024-02-28 00:00: 1 hour, 1 missing, no temperature known", Of(double.NaN).ToString());
        Assert.Contains("34,7 °F", Of(1.5).ToString("U", CultureScope.German), StringComparison.Ordinal);
    }

    private static HourlyTemperatures Of(params double[] celsius) => HourlyTemperatures.Create(Midnight, celsius, TemperatureUnit.DegreeCelsius);
}
