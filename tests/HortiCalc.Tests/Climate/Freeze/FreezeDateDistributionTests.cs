using System.Globalization;
using HortiCalc.Climate;
using HortiCalc.Display;
using HortiCalc.Evidence;
using UnitsNet;

namespace HortiCalc.Tests.Climate;

public class FreezeDateDistributionTests
{
    private static readonly NormalFreezeDates MidApril = NormalFreezeDates.Around(new MonthDay(4, 15), Duration.FromDays(10));

    private static Ratio Percent(double value) => Ratio.FromPercent(value);

    [Fact]
    public void DateWithChance_OfANormalWithAFreezeEverySeason_IsMeanAndDeviations()
    {
        LastSpringFreeze spring = new(Percent(100), MidApril);

        // One deviation each way: 15.866 % and 84.134 %.
        Assert.Equal(new MonthDay(4, 25), spring.DateWithChanceOfLaterFreeze(Percent(15.8655))!.Value);
        Assert.Equal(new MonthDay(4, 5), spring.DateWithChanceOfLaterFreeze(Percent(84.1345))!.Value);
        Assert.Equal(50, spring.ChanceOfFreezeAfter(new MonthDay(4, 15)).Value.Percent, 1e-9);
        Assert.Equal(15.8655, spring.ChanceOfFreezeAfter(new MonthDay(4, 25)).Value.Percent, 1e-4);
    }

    [Fact]
    public void TwoChances_AtAPlaceWhereAThirdOfTheSeasonsFreeze_AreNamedByMethodAndDiffer()
    {
        FirstAutumnFreeze autumn = new(Percent(100 / 3.0), NormalFreezeDates.Around(new MonthDay(1, 2), Duration.FromDays(20)), seasons: 30);

        Assert.Null(autumn.DateWithChanceOfEarlierFreeze(Percent(50)));
        Estimate<MonthDay> given = autumn.DateWithChanceOfEarlierFreezeGivenAFreeze(Percent(50))!;
        Assert.Equal(new MonthDay(1, 2), given.Value);
        Assert.Equal("freeze.normal-given-a-freeze", given.Method.Key);
        Estimate<Ratio> over = autumn.ChanceOfFreezeBefore(new MonthDay(1, 2));
        Assert.Equal(100 / 6.0, over.Value.Percent, 1e-9);
        Assert.Equal("freeze.mixed-normal", over.Method.Key);
        Assert.Equal(50, autumn.ChanceOfFreezeBeforeGivenAFreeze(new MonthDay(1, 2))!.Value.Percent, 1e-9);
    }

    [Fact]
    public void Answers_OfEveryKind_CarryTheUsualCautions()
    {
        LastSpringFreeze spring = new(Percent(80), MidApril);
        string[] usual = ["freeze.forecast-first", "freeze.sheltered-sensor", "freeze.site-differs"];
        Assert.Equal(usual, spring.DateWithChanceOfLaterFreeze(Percent(10))!.Cautions.Select(caution => caution.Code));
        Assert.Equal(usual, spring.DateWithChanceOfLaterFreezeGivenAFreeze(Percent(10))!.Cautions.Select(caution => caution.Code));
        Assert.Equal(usual, spring.ChanceOfFreezeAfter(new MonthDay(5, 1)).Cautions.Select(caution => caution.Code));
        Assert.Equal(usual, spring.ChanceOfFreezeAfterGivenAFreeze(new MonthDay(5, 1))!.Cautions.Select(caution => caution.Code));
    }

    [Fact]
    public void ChanceOfFreezeAfter_ADateOfTheAutumnBefore_CountsTheSeasonThatFollows()
    {
        // 28 November lies 48 days before a mean of 15 January, not 317 days after it.
        LastSpringFreeze spring = new(Percent(60), NormalFreezeDates.Around(new MonthDay(1, 15), Duration.FromDays(24)));
        Assert.Equal(60 * 0.97725, spring.ChanceOfFreezeAfter(new MonthDay(11, 28)).Value.Percent, 1e-3);
    }

    [Fact]
    public void DateWithChance_BeyondHalfAYear_IsNone()
    {
        LastSpringFreeze spring = new(Percent(50), NormalFreezeDates.Around(new MonthDay(1, 15), Duration.FromDays(60)));
        Assert.NotNull(spring.DateWithChanceOfLaterFreeze(Percent(49)));
        Assert.Null(spring.DateWithChanceOfLaterFreeze(Percent(49.99)));
    }

    [Fact]
    public void FromTable_DatesOfDelaware_ReportsTheFitErrorAndContinuesBeyondTheTable()
    {
        LastSpringFreeze spring = LastSpringFreeze.FromTable(
        [
            new TabulatedFreezeDate(Percent(10), new MonthDay(5, 10)),
            new TabulatedFreezeDate(Percent(33), new MonthDay(4, 30)),
            new TabulatedFreezeDate(Percent(50), new MonthDay(4, 25)),
            new TabulatedFreezeDate(Percent(67), new MonthDay(4, 20)),
            new TabulatedFreezeDate(Percent(90), new MonthDay(4, 10)),
        ]);
        Assert.Equal(100, spring.ShareOfSeasonsWithFreeze.Percent);
        Assert.InRange(spring.FitError!.Value.Days, 0.05, 0.5);
        Assert.Contains(spring.Cautions, caution => caution is { Code: "freeze.table-fit" } && caution.Sentence.Contains("5 printed dates", StringComparison.Ordinal));
        Assert.Contains(spring.Cautions, caution => caution.Code == "freeze.share-assumed");
        Assert.True(spring.DateWithChanceOfLaterFreeze(Percent(5))!.Value > new MonthDay(5, 10));
    }

    [Fact]
    public void FromTable_WithLevelsWithoutDate_BoundsTheShareByThem()
    {
        TabulatedFreezeDate[] dates =
        [
            new(Percent(10), new MonthDay(2, 3)),
            new(Percent(20), new MonthDay(1, 20)),
            new(Percent(30), new MonthDay(1, 6)),
            new(Percent(40), null),
        ];
        LastSpringFreeze spring = LastSpringFreeze.FromTable(dates);
        Assert.InRange(spring.ShareOfSeasonsWithFreeze.Percent, 38, 40);
        Assert.Null(spring.DateWithChanceOfLaterFreeze(Percent(40)));
        Assert.DoesNotContain(spring.Cautions, caution => caution.Code == "freeze.share-assumed");
    }

    [Fact]
    public void FromTableGivenAFreeze_KeepsTheShareApart()
    {
        TabulatedFreezeDate[] dates = [new(Percent(50), new MonthDay(1, 6)), new(Percent(90), new MonthDay(12, 20))];
        LastSpringFreeze spring = LastSpringFreeze.FromTableGivenAFreeze(dates, share: Percent(100 / 3.0));
        Assert.Equal(new MonthDay(1, 6), spring.DateWithChanceOfLaterFreezeGivenAFreeze(Percent(50))!.Value);
        Assert.Equal(new MonthDay(12, 20), spring.DateWithChanceOfLaterFreezeGivenAFreeze(Percent(90))!.Value);
        Assert.Null(spring.DateWithChanceOfLaterFreeze(Percent(50)));
        Assert.Equal(new MonthDay(1, 6), spring.DateWithChanceOfLaterFreeze(Percent(100 / 6.0))!.Value);
    }

    [Fact]
    public void ToString_OfADistribution_IsOneLineInTheOrderOfTheReader()
    {
        LastSpringFreeze spring = new(Percent(62.5), MidApril, seasons: 24);
        Assert.Equal("last freeze in spring: about 15 Apr; a freeze in 62.5 % of 24 seasons; 3 cautions", spring.ToString());
        Assert.Equal("last freeze in spring: about Apr 15; a freeze in 62.5 % of 24 seasons; 3 cautions", spring.ToString("U", null));
        Assert.Equal(
            "last freeze in spring: about 15 avr.; a freeze in 62,5 % of 24 seasons; 3 cautions",
            spring.ToString("M", CultureInfo.GetCultureInfo("fr-FR")));
        Assert.Equal("first freeze in autumn: no freeze; a freeze in 0 % of the seasons; 3 cautions", new FirstAutumnFreeze(Ratio.Zero, null).ToString());
        Assert.Equal("mean 15 Apr, standard deviation 10 days", MidApril.ToString());
        Assert.Throws<FormatException>(() => spring.ToString("X", null));
    }

    [Fact]
    public void ToDisplay_OfADistribution_ShowsChancesAsRowsAndNoneWhereThereIsNone()
    {
        LastSpringFreeze spring = new(Percent(62.5), MidApril, seasons: 24);
        string text = DisplayText.Plain(((IDisplayable)spring).ToDisplay(TextStyle.Default));
        Assert.Contains("10 % chance of a freeze on or after  25 Apr", text, StringComparison.Ordinal);
        Assert.Contains("90 % chance of a freeze on or after  none", text, StringComparison.Ordinal);
        Assert.Contains("source", text, StringComparison.Ordinal);
    }

    [Fact]
    public void ToString_OfTheSmallParts_IsOneLineWithoutCulture()
    {
        Assert.Equal("10 %: 29 Feb", new TabulatedFreezeDate(Percent(10), new MonthDay(2, 29)).ToString());
        Assert.Equal("90 %: none", new TabulatedFreezeDate(Percent(90), null).ToString());
        Assert.Equal(
            "365 days: last freeze none, first 2003-12-20", new FreezeFreePeriod(new DateOnly(2003, 8, 1), null, new DateOnly(2003, 12, 20)).ToString());
        Assert.Equal(
            "southern, seasons from 24 Jan, left out at 10 missing days, mixed normal distribution",
            new FreezeClimateOptions(Hemisphere.Southern, seasonStart: new MonthDay(1, 24)).ToString());
        Assert.Equal("hemisphere from the record, seasons from midsummer, left out at 10 missing days, mixed normal distribution", new FreezeClimateOptions().ToString());
        Assert.Equal(
            "spring of the season from 2004-08-01: gone", new LeftOutSeason(new DateOnly(2004, 8, 1), FreezeSide.Spring, 12, "gone").ToString());
    }

    [Fact]
    public void MonthDay_OfAnyYear_KnowsItsDateAndItsText()
    {
        MonthDay leap = new(2, 29);
        Assert.Equal(new DateOnly(2028, 2, 29), leap.InYear(2028));
        Assert.Equal(new DateOnly(2027, 2, 28), leap.InYear(2027));
        Assert.Equal("29 Feb", leap.ToString());
        Assert.Equal("Feb 29", leap.ToString("U", null));
        Assert.Equal("02-29", leap.ToString("O", null));
        Assert.Equal(leap, MonthDay.Parse("02-29"));
        Assert.Equal(new MonthDay(1, 1), default(MonthDay));
        Assert.True(new MonthDay(4, 3) < new MonthDay(4, 22) && new MonthDay(5, 1) > new MonthDay(4, 30));
        Assert.True(new MonthDay(4, 3) <= new MonthDay(4, 3) && new MonthDay(4, 3) >= new MonthDay(4, 3));
    }
}
