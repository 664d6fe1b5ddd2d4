using FsCheck.Xunit;
using HortiCalc.Climate;
using UnitsNet.Units;

namespace HortiCalc.Tests.Climate;

/// <summary>Every edge of the two definitions, on years whose days have one temperature each.</summary>
public class GrowingSeasonTests
{
    public static TheoryData<GrowingSeasonMethod> Methods() => [.. GrowingSeasonMethod.All];

    [Theory]
    [MemberData(nameof(Methods))]
    public void Of_OneWarmAndOneColdRun_LastsFromTheOneToTheDayBeforeTheOther(GrowingSeasonMethod method)
    {
        GrowingSeason season = Northern(method, Days(2023, 0, (3, 1, 9)).Then(11, 10, 0));

        Assert.Equal(new DateOnly(2023, 3, 1), season.First);
        Assert.Equal(new DateOnly(2023, 11, 9), season.Last);
        Assert.Equal(254, season.Length.Value);
        Assert.Equal(GrowingSeasonEnding.ColdRun, season.Ending);
        Assert.Empty(season.Length.Cautions);
    }

    [Fact]
    public void Of_RunsOfFiveDays_CountForDefraAlone()
    {
        // Five warm days in February, six in March; five cold days in October, six in November.
        YearOfDays year = Days(2023, 0, (2, 1, 9)).Then(2, 6, 0).Then(3, 1, 9).Then(10, 1, 0).Then(10, 6, 9).Then(11, 1, 0).Then(11, 7, 9);

        GrowingSeason five = Northern(GrowingSeasonMethod.Defra, year);
        GrowingSeason six = Northern(GrowingSeasonMethod.Etccdi, year);

        Assert.Equal((new DateOnly(2023, 2, 1), new DateOnly(2023, 9, 30)), (five.First!.Value, five.Last!.Value));
        Assert.Equal((new DateOnly(2023, 3, 1), new DateOnly(2023, 10, 31)), (six.First!.Value, six.Last!.Value));
    }

    [Theory]
    [MemberData(nameof(Methods))]
    public void Of_ADayAtExactlyFiveDegrees_BreaksAWarmRunAndAColdOne(GrowingSeasonMethod method)
    {
        // A warm run broken by 5 °C, then a whole one; a cold run broken by 5 °C, then a whole one.
        YearOfDays year = Days(2023, 0, (2, 1, 9)).Then(2, 4, 5).Then(2, 5, 9).Then(2, 8, 0).Then(4, 1, 9)
            .Then(10, 1, 0).Then(10, 4, 5).Then(10, 5, 0).Then(10, 8, 9).Then(12, 1, 0);

        GrowingSeason season = Northern(method, year);

        Assert.Equal((new DateOnly(2023, 4, 1), new DateOnly(2023, 11, 30)), (season.First!.Value, season.Last!.Value));
    }

    [Theory]
    [MemberData(nameof(Methods))]
    public void Of_AYearAtExactlyFiveDegrees_NeverBegins(GrowingSeasonMethod method) =>
        Assert.Equal(GrowingSeasonEnding.NeverBegan, Northern(method, Days(2023, 5)).Ending);

    [Fact]
    public void Of_FiveDegreesFromTenthsOfFahrenheit_AreFiveDegrees()
    {
        // 40.1 and 41.9 °F have the mean 41 °F, 5 °C, which binary fractions miss by a hair.
        double[] minima = [.. Enumerable.Repeat(40.1, 365)];
        double[] maxima = [.. Enumerable.Repeat(41.9, 365)];
        DailyTemperatures days = DailyTemperatures.Create(new DateOnly(2023, 1, 1), minima, maxima, TemperatureUnit.DegreeFahrenheit);

        Assert.Equal(0, GrowingSeason.Of(days, 2023, Hemisphere.Northern, GrowingSeasonMethod.Etccdi).Length.Value);
    }

    [Theory]
    [MemberData(nameof(Methods))]
    public void Of_NoColdRun_LastsToTheEndOfTheYearWithACaution(GrowingSeasonMethod method)
    {
        GrowingSeason season = Northern(method, Days(2023, 0, (3, 1, 9)));

        Assert.Equal(new DateOnly(2023, 12, 31), season.Last);
        Assert.Equal(GrowingSeasonEnding.EndOfYear, season.Ending);
        Assert.Equal(306, season.Length.Value);
        Assert.Equal("growing-season.no-cold-run", Assert.Single(season.Length.Cautions).Code);
    }

    [Theory]
    [MemberData(nameof(Methods))]
    public void Of_WarmAllYear_LastsTheWholeYearWithItsLeapDay(GrowingSeasonMethod method)
    {
        Assert.Equal(365, Northern(method, Days(2023, 9)).Length.Value);
        Assert.Equal(366, Northern(method, Days(2024, 9)).Length.Value);
    }

    [Theory]
    [MemberData(nameof(Methods))]
    public void Of_ColdAllYear_NeverBeginsAndIsZero(GrowingSeasonMethod method)
    {
        GrowingSeason season = Northern(method, Days(2023, 0));

        Assert.Null(season.First);
        Assert.Null(season.Last);
        Assert.Equal(0, season.Length.Value);
        Assert.Equal(GrowingSeasonEnding.NeverBegan, season.Ending);
        Assert.Contains("never began", season.ToString(), StringComparison.Ordinal);
    }

    [Theory]
    [MemberData(nameof(Methods))]
    public void Of_ARunOnTheFirstDays_BeginsOnTheFirstOfJanuary(GrowingSeasonMethod method)
    {
        YearOfDays year = Days(2023, 9, (1, 7, 0)).Then(4, 1, 9).Then(11, 1, 0);

        GrowingSeason season = Northern(method, year);

        // The cold spell of January to March comes before the middle of the year and ends nothing.
        Assert.Equal((new DateOnly(2023, 1, 1), new DateOnly(2023, 10, 31)), (season.First!.Value, season.Last!.Value));
    }

    [Theory]
    [MemberData(nameof(Methods))]
    public void Of_AColdRunThroughTheFirstOfJuly_CountsFromTheSecond(GrowingSeasonMethod method)
    {
        GrowingSeason season = Northern(method, Days(2023, 9, (6, 28, 0)).Then(7, 20, 9));

        Assert.Equal(new DateOnly(2023, 7, 1), season.Last);
    }

    [Theory]
    [MemberData(nameof(Methods))]
    public void Of_AColdRunCutByTheEndOfTheYear_IsNone(GrowingSeasonMethod method)
    {
        // The last four days alone are cold.
        GrowingSeason season = Northern(method, Days(2023, 9, (12, 28, 0)));

        Assert.Equal(GrowingSeasonEnding.EndOfYear, season.Ending);
    }

    [Theory]
    [MemberData(nameof(Methods))]
    public void Of_AWarmRunInAutumnOnly_IsTheSeason(GrowingSeasonMethod method)
    {
        GrowingSeason season = Northern(method, Days(2023, 0, (9, 1, 9)).Then(9, 11, 0));

        Assert.Equal((new DateOnly(2023, 9, 1), 10), (season.First!.Value, season.Length.Value));
    }

    [Theory]
    [MemberData(nameof(Methods))]
    public void Of_TheSouth_IsTheNorthHalfAYearLater(GrowingSeasonMethod method)
    {
        YearOfDays northern = Days(2023, 0, (3, 1, 9)).Then(11, 10, 0);
        double[] temperatures = [.. northern.Temperatures];
        DailyTemperatures southern = DailyTemperatures.Create(
            new DateOnly(2022, 7, 1), temperatures, temperatures, TemperatureUnit.DegreeCelsius);

        GrowingSeason season = GrowingSeason.Of(southern, 2022, Hemisphere.Southern, method);

        Assert.Equal(Northern(method, northern).Length.Value, season.Length.Value);
        Assert.Equal(new DateOnly(2022, 8, 29), season.First);
        Assert.Equal((new DateOnly(2022, 7, 1), new DateOnly(2023, 6, 30)), (season.Length.From, season.Length.To));
    }

    [Fact]
    public void Of_AMissingDay_BreaksARunUnlessItIsFilledIn()
    {
        double[] temperatures = [.. Days(2023, 0, (3, 1, 9)).Then(3, 7, 0).Then(5, 1, 9).Then(11, 1, 0).Temperatures];
        temperatures[new DateOnly(2023, 3, 3).DayOfYear - 1] = double.NaN;
        DailyTemperatures days = DailyTemperatures.Create(new DateOnly(2023, 1, 1), temperatures, temperatures, TemperatureUnit.DegreeCelsius);

        GrowingSeason leftOut = GrowingSeason.Of(days, 2023, Hemisphere.Northern, GrowingSeasonMethod.Etccdi);
        GrowingSeason filledIn = GrowingSeason.Of(days, 2023, Hemisphere.Northern, GrowingSeasonMethod.Etccdi, MissingDays.Interpolated);

        Assert.Equal(new DateOnly(2023, 5, 1), leftOut.First);
        Assert.Equal(new DateOnly(2023, 3, 1), filledIn.First);
        Assert.Equal([new DateOnly(2023, 3, 3)], leftOut.Length.Missing);
        Assert.Contains(leftOut.Length.Cautions, caution => caution.Code == "climate-sum.missing-left-out");
        Assert.Contains(filledIn.Length.Cautions, caution => caution.Code == "climate-sum.missing-filled-in");
    }

    [Fact]
    public void Of_HalfAYearOfRecord_IsRefused()
    {
        double[] half = [.. Enumerable.Repeat(9.0, 180)];
        DailyTemperatures days = DailyTemperatures.Create(new DateOnly(2023, 1, 1), half, half, TemperatureUnit.DegreeCelsius);

        ArgumentException refused = Assert.Throws<ArgumentException>(
            "days", () => GrowingSeason.Of(days, 2023, Hemisphere.Northern, GrowingSeasonMethod.Defra));

        Assert.Contains("185 of 365 missing from 2023-01-01 to 2023-12-31; allowed: up to 5 %", refused.Message, StringComparison.Ordinal);
    }

    [Property(MaxTest = 100)]
    public void Of_AnyYear_RunsOfFiveBeginNoLaterThanRunsOfSix(int seed)
    {
        // A wave through 5 °C with weather on it.
        Random weather = new(seed);
        double[] temperatures =
        [
            .. Enumerable.Range(0, 365).Select(day => Math.Round(7 - 9 * Math.Cos(day * 2 * Math.PI / 365) + 4 * (weather.NextDouble() - 0.5), 1, MidpointRounding.AwayFromZero)),
        ];
        DailyTemperatures days = DailyTemperatures.Create(new DateOnly(2023, 1, 1), temperatures, temperatures, TemperatureUnit.DegreeCelsius);

        GrowingSeason five = GrowingSeason.Of(days, 2023, Hemisphere.Northern, GrowingSeasonMethod.Defra);
        GrowingSeason six = GrowingSeason.Of(days, 2023, Hemisphere.Northern, GrowingSeasonMethod.Etccdi);

        Assert.True(five.First <= six.First);
        Assert.True(five.Last <= six.Last);
        Assert.Equal(five.Last!.Value.DayNumber - five.First!.Value.DayNumber + 1, five.Length.Value);
    }

    private static GrowingSeason Northern(GrowingSeasonMethod method, YearOfDays year)
    {
        double[] temperatures = [.. year.Temperatures];
        DailyTemperatures days = DailyTemperatures.Create(
            new DateOnly(year.Year, 1, 1), temperatures, temperatures, TemperatureUnit.DegreeCelsius);
        return GrowingSeason.Of(days, year.Year, Hemisphere.Northern, method);
    }

    private static YearOfDays Days(int year, double fromJanuary, (int Month, int Day, double Celsius)? then = null)
    {
        YearOfDays days = new(year, fromJanuary);
        return then is (int month, int day, double celsius) ? days.Then(month, day, celsius) : days;
    }

    /// <summary>A year of constant temperature that changes on the days told.</summary>
    private sealed class YearOfDays(int year, double fromJanuary)
    {
        private readonly double[] temperatures = [.. Enumerable.Repeat(fromJanuary, DateTime.IsLeapYear(year) ? 366 : 365)];

        public int Year => year;

        public IReadOnlyList<double> Temperatures => temperatures;

        public YearOfDays Then(int month, int day, double celsius)
        {
            temperatures.AsSpan(new DateOnly(year, month, day).DayOfYear - 1).Fill(celsius);
            return this;
        }
    }
}
