using HortiCalc.Climate;
using HortiCalc.Evidence;
using HortiCalc.Reference;
using UnitsNet;
using UnitsNet.Units;

namespace HortiCalc.Tests.Climate;

public class FreezeClimateTests
{
    private static readonly Temperature Freezing = Temperature.FromDegreesCelsius(0);
    private static readonly FreezeClimateOptions Northern = new(Hemisphere.Northern);
    private static readonly FreezeClimateOptions Southern = new(Hemisphere.Southern);

    private static FreezeClimate Climate(int firstYear, int lastYear, params DateOnly[] freezes) =>
        FreezeClimate.FromDaily(FreezeRecords.WithFreezesOn(firstYear, lastYear, freezes), Freezing, Northern);

    [Fact]
    public void FromDaily_FreezesOfKnownDates_FindsTheLastInSpringAndTheFirstInAutumn()
    {
        // 12 springs on 4 to 26 April by twos, 12 autumns on 30 October.
        DateOnly[] springs = [.. Enumerable.Range(0, 12).Select(i => new DateOnly(2001 + i, 4, 4 + 2 * i))];
        DateOnly[] autumns = [.. FreezeRecords.EveryYear(2001, 2012, 10, 30)];
        FreezeClimate climate = Climate(2001, 2012, [.. springs, .. autumns]);

        NormalFreezeDates spring = Assert.IsType<NormalFreezeDates>(climate.LastInSpring.GivenAFreeze);
        Assert.Equal(new MonthDay(4, 15), spring.MiddleDate);
        Assert.Equal(Math.Sqrt(52), spring.StandardDeviation.Days, 1e-9); // variance of 0, 2, .. 22 with n - 1: 4 × 12 × 13 / 12
        Assert.Equal(100, climate.LastInSpring.ShareOfSeasonsWithFreeze.Percent, 1e-12);
        Assert.Equal(12, climate.LastInSpring.Seasons);
        Assert.Equal(12, climate.FirstInAutumn.Seasons);
        Assert.Equal(new MonthDay(10, 30), climate.FirstInAutumn.DateWithChanceOfEarlierFreeze(Ratio.FromPercent(10))!.Value);
    }

    [Fact]
    public void FromDaily_YearlyDatesOfVancouver_GivesThePublishedLengths()
    {
        List<ReferenceValue> years = [.. ReferenceLibrary.Values.Where(value => value.Source.Key == "vancouver-ubc-frost")];
        FreezeClimate climate = Climate(
            1958, 1994, [.. years.SelectMany(year => new[] { year.Inputs.Date("last"), year.Inputs.Date("first") })]);

        // Each record year has its two freezes, so that every length is the published one; both ends of the record lack a half-season.
        Assert.Equal(37, years.Count);
        Assert.Equal(years.Select(year => year.Number), climate.SeasonWithoutFreeze.Years.Select(year => year.Length.Days));
        Assert.Equal(37, climate.LastInSpring.Seasons);
        Assert.Equal(2, climate.LeftOut.Count);
    }

    [Fact]
    public void FromDaily_FirstFreezesAroundNewYear_AveragesAcrossIt()
    {
        // 26 December and 5 January by turns: the mean is New Year's Eve, not midsummer.
        DateOnly[] freezes = [.. Enumerable.Range(2000, 12).Select(year => year % 2 == 0 ? new DateOnly(year, 12, 26) : new DateOnly(year + 1, 1, 5))];
        FreezeClimate climate = Climate(2000, 2012, freezes);

        Assert.Equal(new MonthDay(12, 31), climate.FirstInAutumn.GivenAFreeze!.MiddleDate);
        Assert.Equal(climate.FirstInAutumn.GivenAFreeze, climate.LastInSpring.GivenAFreeze); // A single freeze is the first and the last.
    }

    [Fact]
    public void FromDaily_FreezesOn29February_CountAsThe28th()
    {
        FreezeClimate climate = Climate(2001, 2012, [.. FreezeRecords.EveryYear(2001, 2012, 2, 29)]);

        NormalFreezeDates spring = Assert.IsType<NormalFreezeDates>(climate.LastInSpring.GivenAFreeze);
        Assert.Equal(new MonthDay(2, 28), spring.MiddleDate);
        Assert.Equal(0, spring.StandardDeviation.Days);
        Assert.Contains(climate.Seasons, season => season.LastFreeze == new DateOnly(2004, 2, 29));
    }

    [Theory]
    [InlineData(28, -2.2, true)] // 28 °F is -2.222 °C; the record keeps tenths.
    [InlineData(28, -2.3, true)]
    [InlineData(28, -2.1, false)]
    [InlineData(32, 0.0, true)]
    [InlineData(32, 0.04, true)] // Rounds to 0.0.
    [InlineData(32, 0.1, false)]
    [InlineData(36, 2.2, true)]
    [InlineData(36, 2.3, false)]
    [InlineData(24, -4.4, true)]
    [InlineData(24, -4.3, false)]
    public void FromDaily_DayAtTheThreshold_CountsAsTheRecordKeepsIt(double thresholdFahrenheit, double minimumCelsius, bool counts)
    {
        DailyTemperatures days = FreezeRecords.Of(
            new DateOnly(2000, 8, 1), new DateOnly(2012, 7, 31), date => date is { Month: 1, Day: 15 } ? minimumCelsius : 15);
        FreezeClimate climate = FreezeClimate.FromDaily(days, Temperature.FromDegreesFahrenheit(thresholdFahrenheit), Northern);
        Assert.Equal(counts ? 100 : 0, climate.LastInSpring.ShareOfSeasonsWithFreeze.Percent, 1e-9);
    }

    [Fact]
    public void FromDaily_RecordInWholeFahrenheit_CountsAt28WithThe28OfEitherScale()
    {
        double[] minima = [.. Enumerable.Range(0, 365 * 13).Select(day => day % 365 == 150 ? 28.0 : 60.0)];
        DailyTemperatures days = DailyTemperatures.Create(
            new DateOnly(2000, 8, 1), minima, [.. minima.Select(minimum => minimum + 20)], TemperatureUnit.DegreeFahrenheit);
        foreach (Temperature threshold in new[] { Temperature.FromDegreesFahrenheit(28), Temperature.FromDegreesCelsius(-2.2) })
            Assert.Equal(100, FreezeClimate.FromDaily(days, threshold, Northern).LastInSpring.ShareOfSeasonsWithFreeze.Percent, 1e-9);
    }

    [Theory]
    [InlineData(9, 12)]
    [InlineData(10, 11)]
    public void FromDaily_MissingDaysBeforeAFreezeIsMet_LeaveTheSeasonOutFromTenOn(int missingDays, int usedSprings)
    {
        DateOnly[] freezes = [.. FreezeRecords.EveryYear(2001, 2012, 4, 20), .. FreezeRecords.EveryYear(2001, 2012, 11, 1)];
        DailyTemperatures days = FreezeRecords.WithFreezesAndGaps(
            2001, 2012, freezes, FreezeRecords.Days(new DateOnly(2005, 4, 21), missingDays));
        FreezeClimate climate = FreezeClimate.FromDaily(days, Freezing, Northern);

        Assert.Equal(usedSprings, climate.LastInSpring.Seasons);
        Assert.Equal(12, climate.FirstInAutumn.Seasons);
        List<LeftOutSeason> inside = [.. climate.LeftOut.Where(season => season.Start == new DateOnly(2004, 8, 1))];
        Assert.Equal(12 - usedSprings, inside.Count);
        Assert.All(inside, season => Assert.Equal((FreezeSide.Spring, missingDays), (season.Side, season.MissingDays)));
        Assert.All(inside, season => Assert.Contains("10 days", season.Reason, StringComparison.Ordinal));
        Assert.Equal(missingDays, climate.Seasons.Single(season => season.Start == new DateOnly(2004, 8, 1)).MissingDays);
    }

    [Fact]
    public void FromDaily_MissingDaysBehindTheFreeze_AreOfNoAccount()
    {
        DateOnly[] freezes = [.. FreezeRecords.EveryYear(2001, 2012, 4, 20), .. FreezeRecords.EveryYear(2001, 2012, 11, 1)];
        DailyTemperatures days = FreezeRecords.WithFreezesAndGaps(2001, 2012, freezes, FreezeRecords.Days(new DateOnly(2005, 1, 1), 90));
        FreezeClimate climate = FreezeClimate.FromDaily(days, Freezing, Northern);
        Assert.Equal(12, climate.LastInSpring.Seasons);
    }

    [Fact]
    public void FromDaily_GapsInAMonthThatNeverFroze_DoNotCount()
    {
        DateOnly[] freezes = [.. FreezeRecords.EveryYear(2001, 2012, 4, 20), .. FreezeRecords.EveryYear(2001, 2012, 11, 1)];
        DailyTemperatures days = FreezeRecords.WithFreezesAndGaps(2001, 2012, freezes, FreezeRecords.Days(new DateOnly(2005, 7, 1), 62));
        FreezeClimate climate = FreezeClimate.FromDaily(days, Freezing, Northern);
        Assert.Equal(12, climate.LastInSpring.Seasons);
        Assert.Equal(12, climate.FirstInAutumn.Seasons);

        // The same gap counts at a place that froze once near it.
        DailyTemperatures froze = FreezeRecords.WithFreezesAndGaps(
            2001, 2012, [.. freezes, new DateOnly(2003, 7, 10)], FreezeRecords.Days(new DateOnly(2005, 7, 1), 62));
        Assert.Equal(11, FreezeClimate.FromDaily(froze, Freezing, Northern).LastInSpring.Seasons);
    }

    [Fact]
    public void FromDaily_MonthThatIsNeverRead_CountsAsMissing()
    {
        DateOnly[] freezes = [.. FreezeRecords.EveryYear(2001, 2012, 4, 20), .. FreezeRecords.EveryYear(2001, 2012, 11, 1)];
        DailyTemperatures days = FreezeRecords.WithFreezesAndGaps(
            2001, 2012, freezes, Enumerable.Range(2001, 12).SelectMany(year => FreezeRecords.Days(new DateOnly(year, 6, 15), 62)));

        // Nothing in the record tells that it does not freeze then.
        Assert.Throws<ArgumentException>(() => FreezeClimate.FromDaily(days, Freezing, Northern));
        FreezeClimate told = FreezeClimate.FromDaily(days, Freezing, new FreezeClimateOptions(Hemisphere.Northern, missingDaysThatDrop: 60));
        Assert.Equal(12, told.LastInSpring.Seasons);
    }

    [Fact]
    public void FromDaily_PlaceWithoutFreeze_HasNoDatesNoChanceAndTheWholeYear()
    {
        FreezeClimate climate = Climate(2001, 2014);
        Ratio tenth = Ratio.FromPercent(10);

        Assert.False(climate.LastInSpring.HasDates);
        Assert.Equal(0, climate.FirstInAutumn.ShareOfSeasonsWithFreeze.Percent);
        Assert.Null(climate.LastInSpring.DateWithChanceOfLaterFreeze(tenth));
        Assert.Null(climate.LastInSpring.DateWithChanceOfLaterFreezeGivenAFreeze(tenth));
        Assert.Null(climate.FirstInAutumn.DateWithChanceOfEarlierFreeze(tenth));
        Assert.Equal(0, climate.LastInSpring.ChanceOfFreezeAfter(new MonthDay(1, 1)).Value.Percent);
        Assert.Null(climate.FirstInAutumn.ChanceOfFreezeBeforeGivenAFreeze(new MonthDay(1, 1)));
        Estimate<Duration> length = climate.SeasonWithoutFreeze.LengthWithChanceOfLongerSeason(Ratio.FromPercent(90));
        Assert.Equal(365, length.Value.Days);
        Assert.Contains(length.Cautions, caution => caution.Code == "freeze.whole-year");
        Assert.Throws<InvalidOperationException>(() => climate.SeasonWithoutFreeze.LengthWithChanceOfLongerSeasonGivenAFreeze(tenth));
    }

    [Fact]
    public void FromDaily_FreezeInEveryMonth_MeetsAtTheCutAndSaysSo()
    {
        DateOnly[] freezes = [.. Enumerable.Range(1, 12).SelectMany(month => FreezeRecords.EveryYear(2001, 2013, month, 28))];
        FreezeClimate climate = Climate(2001, 2013, freezes);

        Assert.Equal(new MonthDay(7, 28), climate.LastInSpring.GivenAFreeze!.MiddleDate);
        Assert.Equal(new MonthDay(8, 28), climate.FirstInAutumn.GivenAFreeze!.MiddleDate);
        Assert.All(climate.SeasonWithoutFreeze.Years, year => Assert.Equal(31, year.Length.Days));
        Assert.Contains(climate.LastInSpring.Cautions, caution => caution.Code == "freeze.every-month");
    }

    [Fact]
    public void FromDaily_FreezeOnEveryNight_LeavesOneDayBetween()
    {
        DailyTemperatures days = FreezeRecords.Of(new DateOnly(2001, 1, 1), new DateOnly(2013, 12, 31), _ => -5);
        FreezeClimate climate = FreezeClimate.FromDaily(days, Freezing, Northern);
        Assert.Equal(new MonthDay(7, 31), climate.LastInSpring.GivenAFreeze!.MiddleDate);
        Assert.Equal(new MonthDay(8, 1), climate.FirstInAutumn.GivenAFreeze!.MiddleDate);
        Assert.Equal(1, climate.SeasonWithoutFreeze.LengthWithChanceOfLongerSeason(Ratio.FromPercent(50)).Value.Days);
    }

    [Fact]
    public void FromDaily_OverlappingSeasons_AnswersBothDatesAndALengthOfItsOwn()
    {
        // Last freezes from 5 June to 31 July, first ones from 1 August to 9 October: as at cold sites, the early tenths overlap.
        DateOnly[] springs = [.. Enumerable.Range(0, 15).Select(i => new DateOnly(2001 + i, 6, 5).AddDays(4 * i))];
        DateOnly[] autumns = [.. Enumerable.Range(0, 15).Select(i => new DateOnly(2001 + i, 8, 1).AddDays(5 * ((i * 7) % 15)))];
        FreezeClimate climate = Climate(2001, 2015, [.. springs, .. autumns]);

        MonthDay last = climate.LastInSpring.DateWithChanceOfLaterFreeze(Ratio.FromPercent(2))!.Value;
        MonthDay first = climate.FirstInAutumn.DateWithChanceOfEarlierFreeze(Ratio.FromPercent(2))!.Value;
        Assert.True(last > first, $"{last} should lie after {first}");
        Assert.All(climate.SeasonWithoutFreeze.Years, year => Assert.InRange(year.Length.Days, 1, 365));
    }

    [Fact]
    public void FromDaily_FreezeInOneSeasonOfFive_RanksItsFewDatesAndBoundsItsChance()
    {
        // Four freezes in twenty springs, on 4, 8, 12 and 16 January.
        FreezeClimate climate = Climate(2000, 2020, [.. Enumerable.Range(1, 4).Select(i => new DateOnly(2000 + 5 * i - 4, 1, 4 * i))]);
        LastSpringFreeze spring = climate.LastInSpring;
        Assert.Equal(20, spring.ShareOfSeasonsWithFreeze.Percent, 1e-9);
        Assert.IsType<RankedFreezeDates>(spring.GivenAFreeze);
        Assert.Contains(spring.Cautions, caution => caution.Code == "freeze.few-freezes");

        // Above the share there is no date; m of 21 below it; rarer than 1 of 21 the outermost date, said to be no more than that.
        Assert.Null(spring.DateWithChanceOfLaterFreeze(Ratio.FromPercent(20)));
        Assert.Equal(new MonthDay(1, 12), spring.DateWithChanceOfLaterFreeze(Ratio.FromPercent(200 / 21.0))!.Value);
        Assert.Equal(new MonthDay(1, 16), spring.DateWithChanceOfLaterFreeze(Ratio.FromPercent(100 / 21.0))!.Value);
        Assert.DoesNotContain(spring.DateWithChanceOfLaterFreeze(Ratio.FromPercent(100 / 21.0))!.Cautions, caution => caution.Code == "freeze.beyond-record");
        Estimate<MonthDay> rare = spring.DateWithChanceOfLaterFreeze(Ratio.FromPercent(1))!;
        Assert.Equal(new MonthDay(1, 16), rare.Value);
        Assert.Contains(rare.Cautions, caution => caution.Code == "freeze.beyond-record");

        // None of twenty springs froze after 20 January: the bound is 1 - 0.025^(1/20).
        Estimate<Ratio> late = spring.ChanceOfFreezeAfter(new MonthDay(1, 20));
        Assert.Equal(100 / 21.0, late.Value.Percent, 1e-9);
        Assert.Equal(0, late.Range!.Low.Percent);
        Assert.Equal(100 * (1 - Math.Pow(0.025, 1 / 20.0)), late.Range.High.Percent, 1e-6);
        Assert.Equal(200 / 21.0, spring.ChanceOfFreezeAfter(new MonthDay(1, 12)).Value.Percent, 1e-9);
    }

    [Fact]
    public void FromDaily_HalfTheSeasonsWithoutFreeze_SeparatesTheTwoChances()
    {
        DateOnly[] freezes = [.. Enumerable.Range(2000, 20).Where(year => year % 2 == 0).Select(year => new DateOnly(year + 1, 1, 1).AddDays(year % 5))];
        FreezeClimate climate = Climate(2000, 2020, freezes);
        LastSpringFreeze spring = climate.LastInSpring;

        Assert.Equal(10 / 20.0, spring.ShareOfSeasonsWithFreeze.DecimalFractions, 1e-9);
        Assert.Null(spring.DateWithChanceOfLaterFreeze(Ratio.FromPercent(50)));
        Assert.Equal(new MonthDay(1, 3), spring.DateWithChanceOfLaterFreezeGivenAFreeze(Ratio.FromPercent(50))!.Value);
        Assert.Contains(spring.Cautions, caution => caution.Code == "freeze.left-out-bias");
    }

    [Fact]
    public void FromDaily_WithoutHemisphere_TakesItFromTheRecordAndSaysSo()
    {
        DailyTemperatures north = FreezeRecords.Of(
            new DateOnly(2001, 1, 1), new DateOnly(2012, 12, 31), date => 5 - 10 * Math.Cos(date.DayOfYear * Math.Tau / 365));
        FreezeClimate found = FreezeClimate.FromDaily(north, Freezing);
        Assert.Equal(Hemisphere.Northern, found.Hemisphere);
        Assert.Contains(found.LastInSpring.Cautions, caution => caution.Code == "freeze.hemisphere-from-data");

        DailyTemperatures south = FreezeRecords.Of(
            new DateOnly(2001, 1, 1), new DateOnly(2012, 12, 31), date => 5 + 10 * Math.Cos(date.DayOfYear * Math.Tau / 365));
        Assert.Equal(Hemisphere.Southern, FreezeClimate.FromDaily(south, Freezing).Hemisphere);

        FreezeClimate given = FreezeClimate.FromDaily(south, Freezing, new FreezeClimateOptions(Hemisphere.Southern));
        Assert.DoesNotContain(given.LastInSpring.Cautions, caution => caution.Code == "freeze.hemisphere-from-data");
        Assert.Equal(new MonthDay(2, 1), given.SeasonStart);
    }

    [Fact]
    public void FromDaily_SouthernRecord_CutsOn1FebruaryAndNamesThePeriodByItsSummer()
    {
        DateOnly[] freezes = [.. FreezeRecords.EveryYear(2001, 2012, 5, 10), .. FreezeRecords.EveryYear(2001, 2012, 9, 20)];
        FreezeClimate climate = FreezeClimate.FromDaily(FreezeRecords.WithFreezesOn(2001, 2012, freezes), Freezing, Southern);

        Assert.Equal(new MonthDay(5, 10), climate.FirstInAutumn.GivenAFreeze!.MiddleDate);
        Assert.Equal(new MonthDay(9, 20), climate.LastInSpring.GivenAFreeze!.MiddleDate);
        FreezeFreePeriod summer = climate.SeasonWithoutFreeze.Years[0];
        Assert.Equal(new DateOnly(2002, 2, 1), summer.Midsummer);
        Assert.Equal(new DateOnly(2001, 9, 20), summer.LastFreeze);
        Assert.Equal(new DateOnly(2002, 5, 10), summer.FirstFreeze);
    }

    [Fact]
    public void FromDaily_OtherCut_PartsSpringFromAutumnThere()
    {
        // A freeze on 28 July is the last of spring with the usual cut, the first of autumn where the season is cut on 24 July.
        DateOnly[] freezes = [.. FreezeRecords.EveryYear(2001, 2012, 7, 28), .. FreezeRecords.EveryYear(2001, 2012, 1, 10)];
        DailyTemperatures days = FreezeRecords.WithFreezesOn(2001, 2012, freezes);
        Assert.Equal(new MonthDay(7, 28), FreezeClimate.FromDaily(days, Freezing, Northern).LastInSpring.GivenAFreeze!.MiddleDate);
        FreezeClimate cut = FreezeClimate.FromDaily(days, Freezing, new FreezeClimateOptions(Hemisphere.Northern, seasonStart: new MonthDay(7, 24)));
        Assert.Equal(new MonthDay(7, 28), cut.FirstInAutumn.GivenAFreeze!.MiddleDate);
        Assert.Equal(new MonthDay(1, 10), cut.LastInSpring.GivenAFreeze!.MiddleDate);
    }

    [Fact]
    public void ToString_OfAClimate_IsOneHonestLine()
    {
        DateOnly[] freezes = [.. FreezeRecords.EveryYear(2001, 2012, 4, 20), .. FreezeRecords.EveryYear(2001, 2012, 11, 1)];
        FreezeClimate climate = Climate(2001, 2012, freezes);
        Assert.Equal(
            "freezes at 0 °C or below: last freeze in spring: about 20 Apr; a freeze in 100 % of 12 seasons; 4 cautions; first freeze in autumn: about 1 Nov; a freeze in 100 % of 12 seasons; 4 cautions; 2 left out",
            climate.ToString());
        Assert.StartsWith("freezes at 32 °F or below: last freeze in spring: about Apr 20;", climate.ToString("U", null), StringComparison.Ordinal);
        Assert.Equal(
            "season without freeze: 195 to 195 days, half of the years 195 days or more; 12 years", climate.SeasonWithoutFreeze.ToString());
        Assert.Contains(climate.LastInSpring.Cautions, caution => caution.Sentence.Contains("fewer than the 30", StringComparison.Ordinal));
    }

    [Fact]
    public void FromDaily_ExampleOfTheDocumentation_GivesOrderedAnswers()
    {
        double[] minima = [.. Enumerable.Range(0, 30 * 365).Select(day => 5 - 9 * Math.Cos(day * Math.Tau / 365) + day * 7919 % 11 - 5)];
        DailyTemperatures days = DailyTemperatures.Create(
            new DateOnly(1991, 1, 1), minima, [.. minima.Select(minimum => minimum + 10)], TemperatureUnit.DegreeCelsius);

        FreezeClimate freeze = FreezeClimate.FromDaily(
            days, threshold: Temperature.FromDegreesCelsius(0), new FreezeClimateOptions(Hemisphere.Northern));
        Estimate<MonthDay>? plantOut = freeze.LastInSpring.DateWithChanceOfLaterFreeze(Ratio.FromPercent(10));
        Estimate<Ratio> risk = freeze.FirstInAutumn.ChanceOfFreezeBefore(new MonthDay(10, 1));
        Estimate<Duration> season = freeze.SeasonWithoutFreeze.LengthWithChanceOfLongerSeason(Ratio.FromPercent(90));

        Assert.Equal(new MonthDay(3, 29), plantOut!.Value);
        Assert.InRange(risk.Value.Percent, 30, 36);
        Assert.Equal(187, season.Value.Days, 1e-9);
        Assert.Equal(30, freeze.LastInSpring.Seasons);
        Assert.Single(freeze.LeftOut, left => left.Side == FreezeSide.Spring);
    }
}
