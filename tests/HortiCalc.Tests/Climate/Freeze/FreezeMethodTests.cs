using HortiCalc.Climate;
using HortiCalc.Evidence;
using UnitsNet;

namespace HortiCalc.Tests.Climate;

public class FreezeMethodTests
{
    private static readonly Temperature Zero = Temperature.FromDegreesCelsius(0);

    private static FreezeClimate Climate(DailyTemperatures days, FreezeDateMethod method, int? recentYears = null) =>
        FreezeClimate.FromDaily(days, Zero, new FreezeClimateOptions(Hemisphere.Northern, method: method, recentYears: recentYears));

    [Fact]
    public void SeededRandom_OfThePublishedSeed_GivesThePublishedNumbers()
    {
        // The five first numbers of SplitMix64 from 1234567, as printed on Rosetta Code.
        SeededRandom random = new(1234567);
        ulong[] numbers = [random.Next(), random.Next(), random.Next(), random.Next(), random.Next()];
        Assert.Equal([6457827717110365317, 3203168211198807973, 9817491932198370423, 4593380528125082431, 16408922859458223821], numbers);
    }

    [Theory]
    [InlineData("weibull", 1 / 11.0)]
    [InlineData("hazen", 0.5 / 10)]
    [InlineData("cunnane", 0.6 / 10.2)]
    [InlineData("gringorten", 0.56 / 10.12)]
    [InlineData("blom", 0.625 / 10.25)]
    [InlineData("median", (2 / 3.0) / (10 + 1 / 3.0))]
    [InlineData("mode", 0)]
    [InlineData("share", 0.1)]
    public void PlottingPosition_OfTheFirstOfTen_IsItsFormula(string key, double chance)
    {
        PlottingPosition position = PlottingPosition.FromKey("plotting-position." + key);
        Assert.Equal(chance, position.ChanceOfRank(1, 10), 1e-12);
        RankedFreezeDates dates = new(new MonthDay(8, 1), [.. Enumerable.Range(0, 10).Select(i => 60 + 10 * i)], position);
        FirstAutumnFreeze autumn = new(Ratio.FromPercent(100), dates, 10);
        Assert.Equal(100 * chance, autumn.ChanceOfFreezeBefore(new MonthDay(9, 30)).Value.Percent, 1e-9);
        Assert.Equal(100 * position.ChanceOfRank(4, 10), autumn.ChanceOfFreezeBefore(new MonthDay(10, 30)).Value.Percent, 1e-9);
        Assert.Equal(100 * position.ChanceOfRank(4.5, 10), autumn.ChanceOfFreezeBefore(new MonthDay(11, 4)).Value.Percent, 1e-9);
        LastSpringFreeze spring = new(Ratio.FromPercent(100), dates, 10);
        Assert.Equal(100 * position.ChanceOfRank(7, 10), spring.ChanceOfFreezeAfter(new MonthDay(10, 30)).Value.Percent, 1e-9);
    }

    [Fact]
    public void Ranked_SomeSeasonsWithoutFreeze_RankBehindAllOthers()
    {
        // Six freezes of eleven seasons: the second earliest has 2 of 12 over all seasons, and 2 of 7 given a freeze.
        RankedFreezeDates dates = new(new MonthDay(8, 1), [130, 90, 110, 100, 120, 140], PlottingPosition.Weibull);
        FirstAutumnFreeze autumn = new(Ratio.FromPercent(600 / 11.0), dates, 11);
        MonthDay second = MonthDay.Nearest(new MonthDay(8, 1).DayOfYear + 100);
        Assert.Equal(200 / 12.0, autumn.ChanceOfFreezeBefore(second).Value.Percent, 1e-9);
        Assert.Equal(200 / 7.0, autumn.ChanceOfFreezeBeforeGivenAFreeze(second)!.Value.Percent, 1e-9);
        Assert.Equal(second, autumn.DateWithChanceOfEarlierFreeze(Ratio.FromPercent(200 / 12.0))!.Value);
        Assert.Equal(second, autumn.DateWithChanceOfEarlierFreezeGivenAFreeze(Ratio.FromPercent(200 / 7.0))!.Value);
    }

    [Fact]
    public void ResampledYears_OfAlikeSeasons_AgreesWithTheRanksOfTheRecord()
    {
        DailyTemperatures days = FreezeWeather.Daily(5, 40, 6, 9);
        FreezeClimate ranked = Climate(days, FreezeDateMethod.Ranked());
        FreezeClimate resampled = Climate(days, FreezeDateMethod.ResampledYears(seed: 1));
        Assert.Equal(100, resampled.LastInSpring.ShareOfSeasonsWithFreeze.Percent, 0.5);
        foreach (double percent in new[] { 20, 50, 80 })
        {
            Ratio chance = Ratio.FromPercent(percent);
            double spring = resampled.LastInSpring.DateWithChanceOfLaterFreeze(chance)!.Value.DayOfYear - ranked.LastInSpring.DateWithChanceOfLaterFreeze(chance)!.Value.DayOfYear;
            double autumn = resampled.FirstInAutumn.DateWithChanceOfEarlierFreeze(chance)!.Value.DayOfYear - ranked.FirstInAutumn.DateWithChanceOfEarlierFreeze(chance)!.Value.DayOfYear;
            double length = resampled.SeasonWithoutFreeze.LengthWithChanceOfLongerSeason(chance).Value.Days - ranked.SeasonWithoutFreeze.LengthWithChanceOfLongerSeason(chance).Value.Days;

            // Three standard errors of a median of 40 with a deviation of about 8 days are 4.8 days.
            Assert.InRange(spring, -5, 5);
            Assert.InRange(autumn, -5, 5);
            Assert.InRange(length, -8, 8);
        }
    }

    [Fact]
    public void ResampledYears_SameSeed_IsTheSameAndAnotherIsNot()
    {
        DailyTemperatures days = FreezeWeather.Daily(6, 15, 6, 9);
        FreezeClimate one = Climate(days, FreezeDateMethod.ResampledYears(seed: 3, years: 1000));
        Assert.Equal(one, Climate(days, FreezeDateMethod.ResampledYears(seed: 3, years: 1000)));
        Assert.NotEqual(one.LastInSpring.GivenAFreeze, Climate(days, FreezeDateMethod.ResampledYears(seed: 4, years: 1000)).LastInSpring.GivenAFreeze);
    }

    [Fact]
    public void ResampledYears_OfAPlaceWithoutFreeze_HasNoneAnd365Days()
    {
        FreezeClimate climate = Climate(FreezeWeather.Daily(7, 15, 25, 2), FreezeDateMethod.ResampledYears(seed: 1, years: 1000));
        Assert.Null(climate.LastInSpring.DateWithChanceOfLaterFreeze(Ratio.FromPercent(10)));
        Assert.Equal(365, climate.SeasonWithoutFreeze.LengthWithChanceOfLongerSeason(Ratio.FromPercent(90)).Value.Days);
    }

    [Fact]
    public void ResampledYears_OfARecordWithoutWholeMonths_IsRefused()
    {
        DailyTemperatures days = FreezeWeather.Daily(8, 15, 6, 9);
        double[] minima = days.MinimaCelsius.ToArray();
        for (int day = 0; day < minima.Length; day++)
            minima[day] = days.Start.AddDays(day) is { Month: 7, Day: 10 } ? double.NaN : minima[day];
        DailyTemperatures gappy = DailyTemperatures.FromMinima(days.Start, minima, UnitsNet.Units.TemperatureUnit.DegreeCelsius);
        Assert.Equal("days", Assert.Throws<ArgumentException>(() => Climate(gappy, FreezeDateMethod.ResampledYears(seed: 1))).ParamName);
        Assert.NotNull(Climate(gappy, FreezeDateMethod.MixedNormal));
    }

    [Fact]
    public void RecentYears_OfARecord_AreThoseUpToItsEnd()
    {
        DailyTemperatures days = FreezeWeather.Daily(9, 40, 6, 9);
        FreezeClimate recent = Climate(days, FreezeDateMethod.MixedNormal, recentYears: 15);
        FreezeClimate cut = Climate(days.Between(new DateOnly(2016, 1, 1), days.End), FreezeDateMethod.MixedNormal);
        Assert.Equal(cut, recent);
        Assert.Equal(Climate(days, FreezeDateMethod.MixedNormal), Climate(days, FreezeDateMethod.MixedNormal, recentYears: 80));
    }

    [Fact]
    public void Trend_OfDatesThatMoveTwoDaysADecade_IsFoundAndCautioned()
    {
        // Last freezes from 30 April backwards by a fifth of a day a year, with a swing of two days.
        DateOnly[] freezes = [.. Enumerable.Range(0, 50).Select(i => new DateOnly(1961 + i, 4, 30).AddDays(-(int)Math.Round(0.2 * i) + (i % 3) - 1))];
        FreezeClimate climate = Climate(FreezeRecords.WithFreezesOn(1961, 2010, freezes), FreezeDateMethod.MixedNormal);
        FreezeTrend trend = climate.TrendOfLastInSpring!;
        Assert.Equal(-2, trend.ChangePerDecade.Days, 0.2);
        Assert.True(trend.PValue < 1e-6);
        Assert.Equal(50, trend.Years);
        Assert.Contains(climate.LastInSpring.Cautions, caution => caution.Code == "freeze.trend");
        Assert.Contains("earlier per decade", trend.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void Trend_ByHand_IsTheMedianSlopeAndTheTestWithItsCorrections()
    {
        // Ten values; S by hand: rising but for one tie and one fall. Pairs 45, ties 1, falls 1: S = 43 - 1 = 42.
        (int Year, double Days)[] values = [.. new double[] { 1, 2, 3, 4, 5, 5, 7, 9, 8, 10 }.Select((days, i) => (2000 + i, days))];
        FreezeTrend trend = FreezeTrend.Of(values)!;

        // Variance (10 × 9 × 25 - 2 × 1 × 9) / 18 = 124; z = 41 / √124 = 3.68194; two-sided p = 0.000231.
        Assert.Equal(2 * MathNet.Numerics.Distributions.Normal.CDF(0, 1, -41 / Math.Sqrt(124)), trend.PValue, 1e-12);
        Assert.Equal(10, trend.ChangePerDecade.Days, 1e-9);
        Assert.Null(FreezeTrend.Of(values[..9]));
        FreezeTrend flat = FreezeTrend.Of([.. values.Select(value => (value.Year, 5.0))])!;
        Assert.Equal((0, 1), (flat.ChangePerDecade.Days, flat.PValue));
    }

    [Theory]
    [InlineData(10, 5, 40.951)]
    [InlineData(0, 20, 0)]
    [InlineData(100, 1, 100)]
    [InlineData(1, 100, 63.3967658726771)]
    public void YearlyChance_OverYears_IsOneLessTheChanceOfNone(double percent, int years, double expected) =>
        Assert.Equal(expected, YearlyChance.AtLeastOnceIn(years, Ratio.FromPercent(percent)).Percent, 1e-9);

    [Fact]
    public void ChanceOfFreezeInAnyOf_SeveralYears_FollowsTheChanceOfOne()
    {
        LastSpringFreeze spring = new(Ratio.FromPercent(80), NormalFreezeDates.Around(new MonthDay(4, 15), Duration.FromDays(10)));
        double one = spring.ChanceOfFreezeAfter(new MonthDay(4, 20)).Value.DecimalFractions;
        Estimate<Ratio> three = spring.ChanceOfFreezeAfterInAnyOf(new MonthDay(4, 20), 3);
        Assert.Equal(1 - Math.Pow(1 - one, 3), three.Value.DecimalFractions, 1e-12);
        Assert.Equal("freeze.over-years", Assert.Single(three.Adjustments).Key);
    }

    [Fact]
    public void FreezesBetween_AcrossNewYear_CountsYearsAndLeavesOutUnknownOnes()
    {
        DailyTemperatures days = FreezeRecords.WithFreezesAndGaps(
            2000, 2010, [new DateOnly(2001, 12, 30), new DateOnly(2004, 1, 10), new DateOnly(2006, 2, 1)], [new DateOnly(2007, 12, 25), new DateOnly(2001, 12, 25)]);
        FreezesBetween between = FreezesBetween.FromDaily(days, Zero, new MonthDay(12, 20), new MonthDay(1, 15));
        Assert.Equal([2001, 2003], between.YearsWithFreeze);
        Assert.Equal([2007], between.LeftOut);
        Assert.Equal(9, between.Years); // Ten spans, one of them left out.
        Estimate<Ratio> chance = between.ChanceOfFreezeBetween();
        Assert.Equal(200 / 9.0, chance.Value.Percent, 1e-9);
        Assert.InRange(chance.Range!.Low.Percent, 2.80, 2.83); // 2 of 9, the exact interval: 2.81 % to 60.01 %.
        Assert.InRange(chance.Range.High.Percent, 60.00, 60.02);
        Assert.Equal(1 - Math.Pow(7 / 9.0, 4), between.ChanceOfFreezeBetweenInAnyOf(4).Value.DecimalFractions, 1e-12);
    }

    [Fact]
    public void DatesInUse_AreCountedFromTheDateOfTheAcceptedChance()
    {
        Ratio tenth = Ratio.FromPercent(10);
        FirstAutumnFreeze autumn = new(Ratio.FromPercent(100), NormalFreezeDates.Around(new MonthDay(10, 16), Duration.FromDays(10)));
        LastSpringFreeze spring = new(Ratio.FromPercent(100), NormalFreezeDates.Around(new MonthDay(4, 15), Duration.FromDays(10)));

        // 1.28 deviations before 16 October: 3 October; after 15 April: 28 April.
        Assert.Equal(new MonthDay(4, 28), spring.EarliestSafePlanting(tenth)!.Value);
        Assert.Equal(new MonthDay(8, 4), autumn.LatestSafePlanting(60, tenth)!.Value);
        Assert.Equal(new MonthDay(8, 22), autumn.DateWeeksBeforeFreeze(6, tenth)!.Value);
        Assert.Equal("freeze.days-before", Assert.Single(autumn.DateWeeksBeforeFreeze(6, tenth)!.Adjustments).Key);
        Assert.Equal(63, autumn.GrowingDaysLeft(new MonthDay(8, 1), tenth)!.Value.Days);
        Estimate<Duration> late = autumn.GrowingDaysLeft(new MonthDay(10, 10), tenth)!;
        Assert.Equal(0, late.Value.Days);
        Assert.Contains(late.Cautions, caution => caution.Code == "freeze.no-days-left");

        // As rare as that all year: nothing to wait for.
        FirstAutumnFreeze mild = new(Ratio.FromPercent(8), NormalFreezeDates.Around(new MonthDay(12, 16), Duration.FromDays(10)));
        Assert.Null(mild.LatestSafePlanting(60, tenth));
        Assert.Null(mild.GrowingDaysLeft(new MonthDay(8, 1), tenth));
        Assert.Throws<ArgumentOutOfRangeException>("weeks", () => autumn.DateWeeksBeforeFreeze(53, tenth));
        Assert.Throws<ArgumentOutOfRangeException>("daysToMaturity", () => autumn.LatestSafePlanting(-1, tenth));
    }

    [Fact]
    public void Bootstrap_Curve_FallsThroughTheColdSeasonWithItsBand()
    {
        FreezeBootstrap sure = new FreezeBootstrap(
            FreezeClimate.FromDaily(FreezeWeather.Site(1, 0.8, 200, 10), Zero, new FreezeClimateOptions(Hemisphere.Northern)), seed: 1, resamples: 300);
        IReadOnlyList<FreezeCurvePoint> curve = sure.CurveOfChanceOfFreezeAfter(Ratio.FromPercent(90));
        Assert.Equal(365, curve.Count);
        Assert.Equal(new MonthDay(8, 1), curve[0].Date);
        Assert.Contains(curve, point => point.High.Percent - point.Low.Percent > 5);
        Assert.All(curve.Skip(30).Zip(curve.Skip(31)).Take(300), pair => Assert.True(pair.Second.Chance <= pair.First.Chance));
        Assert.Throws<ArgumentOutOfRangeException>("resamples", () => new FreezeBootstrap(sure.Climate, 1, 100));
        Assert.Throws<ArgumentOutOfRangeException>("confidence", () => sure.ChanceOfFreezeAfter(new MonthDay(4, 1), Ratio.FromPercent(100)));
    }

    [Fact]
    public void Options_ByLatitude_TellTheHemisphere()
    {
        Assert.Equal(Hemisphere.Southern, Hemispheres.At(Angle.FromDegrees(-33.9)));
        Assert.Equal(Hemisphere.Northern, Hemispheres.At(Angle.FromDegrees(0)));
        Assert.Throws<ArgumentOutOfRangeException>("latitude", () => Hemispheres.At(Angle.FromDegrees(91)));
    }
}
