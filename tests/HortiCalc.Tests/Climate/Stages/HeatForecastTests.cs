using System.Text.Json;
using HortiCalc.Climate;
using HortiCalc.Json;
using HortiCalc.Tests.Season;
using UnitsNet;

namespace HortiCalc.Tests.Climate;

public class HeatForecastTests
{
    private static readonly DateOnly First = new(2003, 4, 1);

    [Fact]
    public void Early_NineYears_IsTheEarliestAtTenPercent()
    {
        HeatForecast forecast = Nine([5, 6, 7, 8, 9, 10, 11, 12, 13]);

        Assert.Equal(10, forecast.Early.Level.Percent, 1e-9);
        Assert.Equal(forecast.Years.Min(year => year.Date), forecast.Early.Date);
        Assert.Equal(forecast.Years.Max(year => year.Date), forecast.Late.Date);
        Assert.DoesNotContain(forecast.Cautions, caution => caution.Code == "heat-forecast.few-years");
    }

    [Fact]
    public void Early_FiveYears_IsTheEarliestAtASixth()
    {
        HeatForecast forecast = HeatForecast.For(
            ForecastRecords.Needs(900), ForecastRecords.SoFar(First.AddYears(5), 30, 8), ForecastRecords.Constant(First, 6, 7, 8, 9, 10));

        Assert.Equal(100.0 / 6, forecast.Early.Level.Percent, 1e-9);
        Assert.Equal(500.0 / 6, forecast.Late.Level.Percent, 1e-9);
        Assert.Null(forecast.Skill);
        Assert.Contains(forecast.Cautions, caution => caution.Code == "heat-forecast.few-years");
        ArgumentOutOfRangeException refused = Assert.Throws<ArgumentOutOfRangeException>(() => forecast.DateAt(Ratio.FromPercent(10)));
        Assert.Equal("level", refused.ParamName);
        Assert.Contains("10 %", refused.Message, StringComparison.Ordinal);
        Assert.Contains("16.66666667 to 83.33333333 % for 5 years", refused.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void DateAt_BetweenTwoRanks_IsOnTheStraightLineBetweenThem()
    {
        // 660 more at 6 and at 12 °C: 110 and 55 days. Ten ranks and eleven parts: 15 % is 0.65 of the way from the first rank to the second.
        HeatForecast forecast = HeatForecast.For(
            ForecastRecords.Needs(900),
            ForecastRecords.SoFar(First.AddYears(10), 30, 8),
            ForecastRecords.Constant(First, [12, .. Enumerable.Repeat(6.0, 9)]));

        Assert.Equal(First.AddYears(10).AddDays(29 + 55 + 36), forecast.DateAt(Ratio.FromPercent(15))!.Value);
        Assert.Equal(First.AddYears(10).AddDays(29 + 110), forecast.DateAt(Ratio.FromPercent(50))!.Value);
    }

    [Fact]
    public void DateAt_LevelBeyondTheYearsThatComeInTime_IsNone()
    {
        HeatForecast forecast = Nine([1, 1, 1, 8, 9, 10, 11, 12, 13]);

        Assert.Equal(100.0 / 3, forecast.NeverShare.Percent, 1e-9);
        Assert.NotNull(forecast.DateAt(Ratio.FromPercent(60)));
        Assert.Null(forecast.DateAt(Ratio.FromPercent(61)));
        Assert.Null(forecast.Late.Date);
        Assert.Equal("90 %: not reached", forecast.Late.ToString());
        Assert.Contains(forecast.Cautions, caution => caution.Code == "heat-forecast.not-every-year");
    }

    [Fact]
    public void For_LeapDayStart_CountsFrom28FebruaryInOtherYears()
    {
        DateOnly first = new(2015, 2, 28);
        HeatForecast forecast = HeatForecast.For(
            ForecastRecords.Needs(900), ForecastRecords.SoFar(new DateOnly(2024, 2, 29), 30, 8), ForecastRecords.Constant(first, Enumerable.Repeat(10.0, 9).ToArray()));

        Assert.Equal(Enumerable.Range(2015, 9), forecast.Years.Select(year => year.Year));
        Assert.All(forecast.Years, year => Assert.Equal(new DateOnly(2024, 3, 30).AddDays(65), year.Date));
    }

    [Fact]
    public void For_PastLeapDay_FallsTo28FebruaryAndItsHeatCounts()
    {
        // From 27 February on 10 °C·d a day: 30 more need 28, 29 February and 1 March in leap years, 28 February, 1 and 2 March in others.
        DateOnly first = new(2014, 12, 1);
        DateOnly present = new(2024, 12, 1);
        HeatForecast forecast = HeatForecast.For(
            ForecastRecords.Needs(89 * 10 + 30), ForecastRecords.SoFar(present, 89, 10), ForecastRecords.Constant(first, Enumerable.Repeat(10.0, 10).ToArray()));

        Assert.Equal(new DateOnly(2025, 2, 27), forecast.LastKnown);
        Assert.All(forecast.Years, year => Assert.Equal(
            DateTime.IsLeapYear(year.Year + 1) ? new DateOnly(2025, 3, 1) : new DateOnly(2025, 3, 2), year.Date));
    }

    [Fact]
    public void For_YearsAfterTheSeason_AreNotLookedAt()
    {
        double[] years = [6, 7, 8, 9, 10, 11];
        DailyTemperatures later = ForecastRecords.Constant(First, [.. years, 8, 30, 30]);

        HeatForecast hindcast = HeatForecast.For(ForecastRecords.Needs(900), later.Between(First.AddYears(6), First.AddYears(6).AddDays(29)), later);

        Assert.Equal(
            HeatForecast.For(ForecastRecords.Needs(900), ForecastRecords.SoFar(First.AddYears(6), 30, 8), ForecastRecords.Constant(First, years)), hindcast);
    }

    [Fact]
    public void For_WeatherForecastAddedToTheSeason_CountsAsKnown()
    {
        DailyTemperatures past = ForecastRecords.Constant(First, 6, 7, 8, 9, 10);
        DateOnly present = First.AddYears(5);
        HeatForecast cold = HeatForecast.For(ForecastRecords.Needs(900), ForecastRecords.Daily(present, present.AddDays(36), date => date > present.AddDays(29) ? 1 : 8), past);
        HeatForecast without = HeatForecast.For(ForecastRecords.Needs(900), ForecastRecords.SoFar(present, 30, 8), past);

        Assert.Equal(247, cold.SoFar.CelsiusDays, 1e-9);
        Assert.True(cold.Middle.Date > without.Middle.Date);
    }

    [Fact]
    public void Skill_SeasonsThatKeepTheirWarmth_KnowingTheSeasonSoFarHelps()
    {
        // Each year brings its own heat in April and May, and all bring the same from June on: the season so far tells all.
        DailyTemperatures record = ForecastRecords.Daily(
            First, First.AddYears(12).AddDays(-1), date => date.Month is 4 or 5 ? 4 + 7 * (date.Year % 5) / 4.0 : 10);
        HeatForecast forecast = HeatForecast.For(ForecastRecords.Needs(1200), ForecastRecords.SoFar(First.AddYears(12), 61, 8), record);

        Assert.Equal(12, forecast.Skill!.Years);
        Assert.Equal(0, forecast.Skill.MeanAbsoluteError.Days);
        Assert.Equal(100, forecast.Skill.Coverage.Percent);
        Assert.True(forecast.Skill.Gain.Days > 5);
    }

    [Fact]
    public void Skill_YearsAlreadyReachedOnThatDay_AreNotForecast()
    {
        HeatForecast forecast = Nine([40, 6, 7, 8, 9, 10, 11, 12, 13]);

        Assert.Equal(8, forecast.Skill!.Years);
    }

    [Fact]
    public void For_SimulatedYears_RangeCoversAsOftenAsItsLevelsPromise()
    {
        // 600 present seasons, each with its own 19 past ones, all alike and independent: 80 % with a standard error of 1.6 %.
        Random random = new(20261125);
        const int Trials = 600;
        int within = 0;
        int below = 0;
        for (int trial = 0; trial < Trials; trial++)
        {
            double[] years = [.. Enumerable.Range(0, 20).Select(_ => 8 + 6 * random.NextDouble())];
            HeatForecast forecast = HeatForecast.For(
                ForecastRecords.Needs(1000), ForecastRecords.SoFar(First.AddYears(19), 20, 8), ForecastRecords.Constant(First, years[..19]));
            DateOnly truth = First.AddYears(19).AddDays(19 + (int)Math.Ceiling(840 / years[19]));
            within += truth >= forecast.Early.Date && truth <= forecast.Late.Date ? 1 : 0;
            below += truth < forecast.Early.Date ? 1 : 0;
        }

        // Ties of whole days add up to two per cent; four standard errors to either side.
        Assert.InRange(within / (double)Trials, 0.80 - 0.065, 0.82 + 0.065);
        Assert.InRange(below / (double)Trials, 0.10 - 0.055, 0.10 + 0.05);
    }

    [Theory]
    [InlineData(19, true)]
    [InlineData(18, false)]
    public void For_PastYearWithGaps_IsLeftOutAndNamedAboveFivePercent(int days, bool isLeftOut)
    {
        DailyTemperatures whole = ForecastRecords.Constant(First, 6, 7, 8, 9, 10, 11);
        DateOnly gap = First.AddDays(100);
        DailyTemperatures past = DailyTemperatures.FromDays(whole.KnownDays().Where(day => day.Date < gap || day.Date >= gap.AddDays(days)));

        HeatForecast forecast = HeatForecast.For(ForecastRecords.Needs(900), ForecastRecords.SoFar(First.AddYears(6), 30, 8), past);

        Assert.Equal(isLeftOut ? [2003] : [], forecast.LeftOutYears);
        Assert.Equal(isLeftOut ? 5 : 6, forecast.Years.Count);
        Assert.Equal(!isLeftOut, forecast.Cautions.Any(caution => caution.Code == "degree-days.missing-interpolated"));
    }

    [Fact]
    public void For_FourYears_IsRefused()
    {
        ArgumentException refused = Assert.Throws<ArgumentException>(() => HeatForecast.For(
            ForecastRecords.Needs(900), ForecastRecords.SoFar(First.AddYears(4), 30, 8), ForecastRecords.Constant(First, 6, 7, 8, 9)));

        Assert.Equal("past", refused.ParamName);
        Assert.Contains("past held 4 whole past seasons", refused.Message, StringComparison.Ordinal);
        Assert.Contains("allowed: 5 or more", refused.Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("2012-04-30")]
    [InlineData("2013-04-01")]
    public void For_LastDayNotAfterTheSeasonOrBeyondAYear_IsRefused(string last)
    {
        ArgumentOutOfRangeException refused = Assert.Throws<ArgumentOutOfRangeException>(() => HeatForecast.For(
            ForecastRecords.Needs(900), ForecastRecords.SoFar(First.AddYears(9), 30, 8), ForecastRecords.Constant(First, 6, 7, 8, 9, 10, 11, 12, 13, 14),
            DateOnly.Parse(last, System.Globalization.CultureInfo.InvariantCulture)));

        Assert.Equal("lastDay", refused.ParamName);
        Assert.Contains($"lastDay was {last}; allowed: 2012-05-01 to 2013-03-31", refused.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void HeatForecast_WrittenAndRead_IsEqual()
    {
        HeatForecast[] forecasts = [Nine([1, 1, 1, 8, 9, 10, 11, 12, 13]), Nine([5, 6, 7, 8, 9, 10, 11, 12, 13], need: 100)];
        foreach (HeatForecast forecast in forecasts)
        {
            string json = JsonSerializer.Serialize(forecast, HortiCalcJsonContext.Default.HeatForecast);
            HeatForecast read = JsonSerializer.Deserialize(json, HortiCalcJsonContext.Default.HeatForecast)!;
            Assert.Equal(forecast, read);
            Assert.Equal(forecast.GetHashCode(), read.GetHashCode());
            Assert.Equal(forecast.Late, read.Late);
        }
    }

    [Fact]
    public void PartsOfAForecast_WrittenAndRead_AreEqual()
    {
        HeatForecast forecast = Nine([5, 6, 7, 8, 9, 10, 11, 12, 13]);
        HortiCalcJsonContext json = HortiCalcJsonContext.Default;

        Assert.Equal(forecast.Skill, JsonSerializer.Deserialize(JsonSerializer.Serialize(forecast.Skill, json.ForecastSkill), json.ForecastSkill));
        Assert.Equal(forecast.Early, JsonSerializer.Deserialize(JsonSerializer.Serialize(forecast.Early, json.ForecastDate), json.ForecastDate));
        Assert.Equal(forecast.Years[0], JsonSerializer.Deserialize(JsonSerializer.Serialize(forecast.Years[0], json.ForecastYear), json.ForecastYear));
    }

    [Fact]
    public void ToString_NineYears_IsOneHonestLine()
    {
        string text = Nine([5, 6, 7, 8, 9, 10, 11, 12, 13]).ToString();

        Assert.StartsWith("900 °C·d: 10 %: 2012-06-20, 50 %: 2012-07-13, 90 %: 2012-09-09; not reached in 0 % of 9 years [", text, StringComparison.Ordinal);
    }

    [Fact]
    public void For_DemoSeason_KnowingItMakesTheErrorSmaller()
    {
        DailyTemperatures record = SeasonFiles.DemoWeather;
        HeatForecast forecast = HeatForecast.For(
            ForecastRecords.Needs(1000), record.Between(new DateOnly(2025, 4, 20), new DateOnly(2025, 6, 15)), record);

        Assert.Equal(29, forecast.Years.Count);
        Assert.True(forecast.Skill!.MeanAbsoluteError < forecast.Skill.UsualMeanAbsoluteError);
    }

    private static HeatForecast Nine(double[] years, double need = 900) => HeatForecast.For(
        ForecastRecords.Needs(need), ForecastRecords.SoFar(First.AddYears(9), 30, 8), ForecastRecords.Constant(First, years));
}
