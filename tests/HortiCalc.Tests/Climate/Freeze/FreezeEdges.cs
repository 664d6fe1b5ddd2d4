using System.Globalization;
using HortiCalc.Climate;
using UnitsNet;

namespace HortiCalc.Tests.Climate;

public class FreezeEdges
{
    private static readonly FreezeClimateOptions Northern = new(Hemisphere.Northern);
    private static readonly Temperature Zero = Temperature.FromDegreesCelsius(0);
    private static readonly NormalFreezeDates MidApril = NormalFreezeDates.Around(new MonthDay(4, 15), Duration.FromDays(10));
    private static readonly LastSpringFreeze Spring = new(Ratio.FromPercent(80), MidApril);
    private static readonly FirstAutumnFreeze Autumn = new(Ratio.FromPercent(80), MidApril);

    private static TabulatedFreezeDate Level(double percent, int month, int day) => new(Ratio.FromPercent(percent), new MonthDay(month, day));

    private static void AssertRefused<T>(Func<object?> act, string parameter, params string[] words)
        where T : ArgumentException
    {
        T refusal = Assert.ThrowsAny<T>(act);
        Assert.Equal(parameter, refusal.ParamName);
        Assert.All(words, word => Assert.Contains(word, refusal.Message, StringComparison.Ordinal));
    }

    [Theory]
    [InlineData(0)]
    [InlineData(100)]
    [InlineData(-5)]
    [InlineData(120)]
    public void DateWithChance_OutsideTheOpenSpan_IsRefused(double percent)
    {
        Ratio chance = Ratio.FromPercent(percent);
        string value = percent.ToString(CultureInfo.InvariantCulture) + " %";
        const string span = "above 0 and below 100 %";
        AssertRefused<ArgumentOutOfRangeException>(() => Spring.DateWithChanceOfLaterFreeze(chance), "chance", value, span);
        AssertRefused<ArgumentOutOfRangeException>(() => Spring.DateWithChanceOfLaterFreezeGivenAFreeze(chance), "chance", value, span);
        AssertRefused<ArgumentOutOfRangeException>(() => Autumn.DateWithChanceOfEarlierFreeze(chance), "chance", value, span);
        AssertRefused<ArgumentOutOfRangeException>(() => Autumn.DateWithChanceOfEarlierFreezeGivenAFreeze(chance), "chance", value, span);
        AssertRefused<ArgumentOutOfRangeException>(() => new TabulatedFreezeDate(chance, null), "chance", value, span);
    }

    [Fact]
    public void DateWithChance_OfAPlaceWithoutFreeze_StillRefusesAChanceThatIsNone() =>
        AssertRefused<ArgumentOutOfRangeException>(
            () => new LastSpringFreeze(Ratio.Zero, null).DateWithChanceOfLaterFreeze(Ratio.FromPercent(100)), "chance", "100 %");

    [Fact]
    public void FromDaily_Null_IsRefused() =>
        AssertRefused<ArgumentNullException>(() => FreezeClimate.FromDaily(null!, Zero, Northern), "days");

    [Fact]
    public void FromDaily_OneSeason_IsRefusedWithTheNumberNeeded()
    {
        DailyTemperatures days = FreezeRecords.WithFreezesOn(2001, 2001, new DateOnly(2001, 4, 1), new DateOnly(2001, 11, 1));
        AssertRefused<ArgumentException>(
            () => FreezeClimate.FromDaily(days, Zero, Northern), "days", "held 1 usable season in", "10 or more", "World Meteorological Organization");
    }

    [Fact]
    public void FromDaily_NineSeasons_IsRefusedAndTenAreTaken()
    {
        DailyTemperatures Years(int count) => FreezeRecords.WithFreezesOn(
            2001, 2000 + count, [.. FreezeRecords.EveryYear(2001, 2000 + count, 4, 1), .. FreezeRecords.EveryYear(2001, 2000 + count, 11, 1)]);
        AssertRefused<ArgumentException>(() => FreezeClimate.FromDaily(Years(9), Zero, Northern), "days", "held 9 usable seasons");
        Assert.Equal(10, FreezeClimate.FromDaily(Years(10), Zero, Northern).LastInSpring.Seasons);
    }

    [Fact]
    public void FromDaily_AllDaysMissing_IsRefused()
    {
        DailyTemperatures days = FreezeRecords.Of(new DateOnly(2001, 1, 1), new DateOnly(2020, 12, 31), _ => double.NaN);
        AssertRefused<ArgumentException>(() => FreezeClimate.FromDaily(days, Zero, Northern), "days", "held 0 usable seasons");
        AssertRefused<ArgumentException>(() => FreezeClimate.FromDaily(days, Zero), "days", "did not tell the hemisphere");
    }

    [Fact]
    public void FromDaily_RecordWithoutSeasons_AsksForTheHemisphere()
    {
        DailyTemperatures days = FreezeRecords.Of(new DateOnly(2001, 1, 1), new DateOnly(2020, 12, 31), _ => 22);
        AssertRefused<ArgumentException>(() => FreezeClimate.FromDaily(days, Zero), "days", "1 °C or more", "give a hemisphere");
        Assert.Equal(Hemisphere.Northern, FreezeClimate.FromDaily(days, Zero, Northern).Hemisphere);
    }

    [Theory]
    [InlineData(-60.1)]
    [InlineData(30.1)]
    public void FromDaily_ThresholdThatNoOneMeans_IsRefused(double celsius) =>
        AssertRefused<ArgumentOutOfRangeException>(
            () => FreezeClimate.FromDaily(FreezeRecords.WithFreezesOn(2001, 2012), Temperature.FromDegreesCelsius(celsius), Northern),
            "threshold",
            celsius.ToString(CultureInfo.InvariantCulture) + " °C",
            "from -60 to 30 °C");

    [Fact]
    public void FromDaily_RecordAtTheEndsOfTheCalendar_DropsTheSeasonsThatDoNotFit()
    {
        DailyTemperatures first = FreezeRecords.WithFreezesOn(
            1, 13, [.. FreezeRecords.EveryYear(1, 13, 4, 1), .. FreezeRecords.EveryYear(1, 13, 11, 1)]);
        Assert.Equal(12, FreezeClimate.FromDaily(first, Zero, Northern).LastInSpring.Seasons);
        DailyTemperatures last = FreezeRecords.WithFreezesOn(
            9987, 9999, [.. FreezeRecords.EveryYear(9987, 9999, 4, 1), .. FreezeRecords.EveryYear(9987, 9999, 11, 1)]);
        Assert.Equal(12, FreezeClimate.FromDaily(last, Zero, Northern).FirstInAutumn.Seasons);
    }

    [Fact]
    public void Options_ThatAreNone_AreRefused()
    {
        AssertRefused<ArgumentOutOfRangeException>(() => new FreezeClimateOptions(missingDaysThatDrop: 0), "missingDaysThatDrop", "0", "1 or more");
        AssertRefused<ArgumentOutOfRangeException>(() => new FreezeClimateOptions((Hemisphere)7), "hemisphere", "7", "Northern, Southern");
        AssertRefused<ArgumentOutOfRangeException>(() => new FreezeClimateOptions(recentYears: 10), "recentYears", "10", "11 or more");
        AssertRefused<ArgumentOutOfRangeException>(() => FreezeDateMethod.ResampledYears(1, 999), "years", "999", "from 1000 to 100000");
    }

    [Fact]
    public void NormalFreezeDates_OfImpossibleNumbers_AreRefused()
    {
        AssertRefused<ArgumentOutOfRangeException>(() => new NormalFreezeDates(double.NaN, Duration.FromDays(5)), "meanDayOfYear", "NaN", "finite");
        AssertRefused<ArgumentOutOfRangeException>(() => new NormalFreezeDates(double.PositiveInfinity, Duration.FromDays(5)), "meanDayOfYear", "finite");
        AssertRefused<ArgumentOutOfRangeException>(() => new NormalFreezeDates(100, Duration.FromDays(-1)), "standardDeviation", "-1 days", "from 0 to 182.5 days");
        AssertRefused<ArgumentOutOfRangeException>(() => new NormalFreezeDates(100, Duration.FromDays(200)), "standardDeviation", "200 days");
        Assert.Equal(new NormalFreezeDates(100, Duration.FromDays(5)), new NormalFreezeDates(465, Duration.FromDays(5)));
    }

    [Fact]
    public void NormalFreezeDates_WithoutSpread_IsOneDate()
    {
        LastSpringFreeze spring = new(Ratio.FromPercent(100), NormalFreezeDates.Around(new MonthDay(4, 15), Duration.Zero));
        Assert.Equal(new MonthDay(4, 15), spring.DateWithChanceOfLaterFreeze(Ratio.FromPercent(1))!.Value);
        Assert.Equal(new MonthDay(4, 15), spring.DateWithChanceOfLaterFreeze(Ratio.FromPercent(99))!.Value);
        Assert.Equal(100, spring.ChanceOfFreezeAfter(new MonthDay(4, 15)).Value.Percent);
        Assert.Equal(0, spring.ChanceOfFreezeAfter(new MonthDay(4, 16)).Value.Percent);
    }

    [Fact]
    public void Distribution_OfImpossibleParts_IsRefused()
    {
        AssertRefused<ArgumentOutOfRangeException>(() => new LastSpringFreeze(Ratio.FromPercent(101), MidApril), "shareOfSeasonsWithFreeze", "101 %", "from 0 to 100 %");
        AssertRefused<ArgumentException>(() => new FirstAutumnFreeze(Ratio.Zero, MidApril), "givenAFreeze", "none where no season has a freeze");
        AssertRefused<ArgumentOutOfRangeException>(() => new FirstAutumnFreeze(Ratio.FromPercent(50), MidApril, seasons: 0), "seasons", "0", "1 or more");
        AssertRefused<ArgumentOutOfRangeException>(
            () => new LastSpringFreeze(Ratio.FromPercent(50), MidApril, fitError: Duration.FromDays(-1)), "fitError", "-1 days");
    }

    [Fact]
    public void FromTable_OfTooLittle_IsRefused()
    {
        AssertRefused<ArgumentNullException>(() => LastSpringFreeze.FromTable(null!), "dates");
        AssertRefused<ArgumentException>(() => LastSpringFreeze.FromTable([]), "dates", "0 with a date", "2 or more");
        AssertRefused<ArgumentException>(() => LastSpringFreeze.FromTable([Level(10, 5, 1)]), "dates", "1 with a date");
        AssertRefused<ArgumentException>(() => LastSpringFreeze.FromTable([Level(10, 5, 1), Level(10, 4, 1)]), "dates", "10 % twice");
        AssertRefused<ArgumentException>(
            () => LastSpringFreeze.FromTable([Level(10, 2, 1), Level(20, 1, 20), new TabulatedFreezeDate(Ratio.FromPercent(30), null)]),
            "dates",
            "give the share");
        AssertRefused<ArgumentException>(
            () => LastSpringFreeze.FromTable([Level(10, 2, 1), new TabulatedFreezeDate(Ratio.FromPercent(20), null), Level(30, 1, 20)]),
            "dates",
            "none at 20 %");
    }

    [Fact]
    public void FromTable_WithDatesInTheOtherDirection_IsRefused()
    {
        TabulatedFreezeDate[] spring = [Level(10, 5, 10), Level(50, 4, 25), Level(90, 4, 10)];
        AssertRefused<ArgumentException>(() => FirstAutumnFreeze.FromTable(spring), "dates", "later as the chance rises");
        TabulatedFreezeDate[] autumn = [Level(10, 10, 2), Level(50, 10, 16), Level(90, 10, 30)];
        AssertRefused<ArgumentException>(() => LastSpringFreeze.FromTable(autumn), "dates", "earlier as the chance rises");
    }

    [Fact]
    public void FromTable_WithAShareThatContradictsIt_IsRefused()
    {
        TabulatedFreezeDate[] dates = [Level(10, 2, 3), Level(30, 1, 6), new(Ratio.FromPercent(40), null)];
        AssertRefused<ArgumentOutOfRangeException>(() => LastSpringFreeze.FromTable(dates, Ratio.FromPercent(30)), "share", "30 %", "above 30 % up to 40 %");
        AssertRefused<ArgumentOutOfRangeException>(() => LastSpringFreeze.FromTable(dates, Ratio.FromPercent(45)), "share", "45 %");
        Assert.Equal(35, LastSpringFreeze.FromTable(dates, Ratio.FromPercent(35)).ShareOfSeasonsWithFreeze.Percent, 1e-9);
        AssertRefused<ArgumentException>(() => LastSpringFreeze.FromTableGivenAFreeze(dates, Ratio.FromPercent(35)), "dates", "none at 40 %");
        AssertRefused<ArgumentOutOfRangeException>(() => LastSpringFreeze.FromTableGivenAFreeze(dates[..2], Ratio.Zero), "share", "0 %");
    }

    [Fact]
    public void Length_BeyondTheRecord_IsRefusedWithWhatTheYearsCanTell()
    {
        FreezeFreeSeason season = new([.. Enumerable.Range(0, 9).Select(i =>
            new FreezeFreePeriod(new DateOnly(2001 + i, 8, 1), new DateOnly(2001 + i, 4, 1 + i), new DateOnly(2001 + i, 10, 20)))]);
        AssertRefused<ArgumentOutOfRangeException>(
            () => season.LengthWithChanceOfLongerSeason(Ratio.FromPercent(9)), "chance", "9 %", "from 10 to 90 %", "9 years");
        AssertRefused<ArgumentOutOfRangeException>(() => season.LengthWithChanceOfLongerSeason(Ratio.FromPercent(91)), "chance", "91 %");
        Assert.Equal(194, season.LengthWithChanceOfLongerSeason(Ratio.FromPercent(90)).Value.Days);
        Assert.Equal(202, season.LengthWithChanceOfLongerSeason(Ratio.FromPercent(10)).Value.Days);
        Assert.Equal(198, season.LengthWithChanceOfLongerSeason(Ratio.FromPercent(50)).Value.Days, 1e-9);
        AssertRefused<ArgumentOutOfRangeException>(() => season.ChanceOfSeasonOfAtLeast(Duration.FromDays(366)), "length", "366 days", "from 0 to 365 days");
        Assert.Throws<InvalidOperationException>(() => new FreezeFreeSeason([]).LengthWithChanceOfLongerSeason(Ratio.FromPercent(50)));
    }

    [Fact]
    public void FreezeFreePeriod_OfOneSide_IsTheWholeYear()
    {
        DateOnly midsummer = new(2003, 8, 1);
        Assert.Equal(365, new FreezeFreePeriod(midsummer, null, new DateOnly(2003, 12, 20)).Length.Days);
        Assert.False(new FreezeFreePeriod(midsummer, new DateOnly(2003, 1, 20), null).HasBothEnds);
        FreezeFreePeriod longer = new(midsummer, new DateOnly(2002, 11, 28), new DateOnly(2004, 1, 3)); // 401 days apart
        Assert.Equal(365, longer.Length.Days);
        Assert.False(longer.HasBothEnds);
        AssertRefused<ArgumentOutOfRangeException>(() => new FreezeFreePeriod(midsummer, midsummer, null), "lastFreeze", "2003-08-01");
        AssertRefused<ArgumentOutOfRangeException>(() => new FreezeFreePeriod(midsummer, null, midsummer.AddDays(-1)), "firstFreeze", "2003-07-31");
        AssertRefused<ArgumentOutOfRangeException>(() => new FreezeFreePeriod(midsummer, new DateOnly(2002, 6, 1), null), "lastFreeze", "within a year");
    }

    [Fact]
    public void FreezeSeason_WithAFreezeOutsideIt_IsRefused()
    {
        DateOnly start = new(2001, 8, 1);
        DateOnly end = new(2002, 7, 31);
        AssertRefused<ArgumentOutOfRangeException>(() => new FreezeSeason(end, start, true, null, true, null, 0), "end", "2001-08-01");
        AssertRefused<ArgumentOutOfRangeException>(() => new FreezeSeason(start, end, true, end.AddDays(1), true, null, 0), "firstFreeze", "2002-08-01");
        AssertRefused<ArgumentException>(() => new FreezeSeason(start, end, true, null, false, end, 0), "lastFreeze", "none at an end that is not known");
        AssertRefused<ArgumentOutOfRangeException>(() => new FreezeSeason(start, end, true, null, true, null, -1), "missingDays", "-1");
        Assert.Equal(
            "2001-08-01 to 2002-07-31: first freeze none, last not known", new FreezeSeason(start, end, true, null, false, null, 30).ToString());
    }

    [Theory]
    [InlineData(0, 1, "month")]
    [InlineData(13, 1, "month")]
    [InlineData(4, 31, "day")]
    [InlineData(2, 30, "day")]
    [InlineData(1, 0, "day")]
    public void MonthDay_ThatDoesNotExist_IsRefused(int month, int day, string parameter) =>
        AssertRefused<ArgumentOutOfRangeException>(() => new MonthDay(month, day), parameter);

    [Theory]
    [InlineData("4-22")]
    [InlineData("22-04")]
    [InlineData("02-30")]
    [InlineData("")]
    [InlineData("04-22 ")]
    public void MonthDay_OfOtherText_IsRefused(string text)
    {
        Assert.False(MonthDay.TryParse(text, out MonthDay day));
        Assert.Equal(default, day);
        Assert.Contains(text, Assert.Throws<FormatException>(() => MonthDay.Parse(text)).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void MonthDay_InNoYearAndInNoFormat_IsRefused()
    {
        AssertRefused<ArgumentOutOfRangeException>(() => new MonthDay(1, 1).InYear(0), "year", "from 1 to 9999");
        Assert.Throws<FormatException>(() => new MonthDay(1, 1).ToString("X", null));
    }

    [Fact]
    public void Answers_UnderACommaCulture_AreTheSame()
    {
        CultureInfo before = CultureInfo.CurrentCulture;
        try
        {
            CultureInfo.CurrentCulture = CultureInfo.GetCultureInfo("de-DE");
            Assert.Equal("last freeze in spring: about 15 Apr; a freeze in 80 % of the seasons; 3 cautions", Spring.ToString());
            Assert.Equal(new MonthDay(4, 22), MonthDay.Parse("04-22"));
            AssertRefused<ArgumentOutOfRangeException>(() => Spring.DateWithChanceOfLaterFreeze(Ratio.FromPercent(100.5)), "chance", "100.5 %");
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }
    }
}
