using System.Text.Json;
using FsCheck.Xunit;
using HortiCalc.Climate;
using HortiCalc.Evidence;
using HortiCalc.Json;
using UnitsNet;

namespace HortiCalc.Tests.Climate;

/// <summary>Laws of the ranked and resampled methods and of the intervals, over invented records.</summary>
[Properties(Arbitrary = [typeof(FreezeArbitraries)], MaxTest = 40)]
public class FreezeMethodProperties
{
    private static readonly Temperature Zero = Temperature.FromDegreesCelsius(0);
    private static readonly MonthDay Cut = new(8, 1);
    private static readonly HortiCalcJsonContext Json = HortiCalcJsonContext.Default;

    private static double Fraction(Estimate<Ratio> chance) => chance.Value.DecimalFractions;

    private static double FromCut(MonthDay date) => MonthDay.Wrapped(date.DayOfYear - Cut.DayOfYear);

    private static MonthDay Day(int fromCut) => MonthDay.Nearest(Cut.DayOfYear + fromCut);

    /// <summary>Dates of five to thirty of thirty seasons, ties among them, and one of the plotting positions.</summary>
    private static RankedFreezeDates Ranked(int seed)
    {
        Random random = new(seed);
        return new RankedFreezeDates(
            Cut,
            [.. Enumerable.Range(0, random.Next(5, 31)).Select(_ => random.Next(60, 60 + random.Next(2, 200)))],
            PlottingPosition.All[random.Next(PlottingPosition.All.Count)]);
    }

    private static Ratio ShareOf(RankedFreezeDates dates) => Ratio.FromPercent(dates.DaysFromStart.Count / 0.3);

    private static FreezeBootstrap Draws(int seed) => new FreezeBootstrap(
        FreezeClimate.FromDaily(
            FreezeWeather.Site(seed, 0.3 + 0.7 * (Math.Abs(seed % 8) / 7.0), 250, 12),
            Zero,
            new FreezeClimateOptions(Hemisphere.Northern, method: seed % 2 == 0 ? null : FreezeDateMethod.Ranked())),
        seed: 5,
        resamples: 200);

    [Property]
    public void RankedChance_DayByDay_IsMonotoneAndWithinTheShare(int seed)
    {
        RankedFreezeDates dates = Ranked(seed);
        LastSpringFreeze spring = new(ShareOf(dates), dates, 30);
        FirstAutumnFreeze autumn = new(ShareOf(dates), dates, 30);
        for (int day = 0; day < 364; day++)
        {
            Assert.True(Fraction(spring.ChanceOfFreezeAfter(Day(day + 1))) <= Fraction(spring.ChanceOfFreezeAfter(Day(day))) + 1e-12);
            Assert.True(Fraction(autumn.ChanceOfFreezeBefore(Day(day + 1))) >= Fraction(autumn.ChanceOfFreezeBefore(Day(day))) - 1e-12);
            Assert.InRange(Fraction(spring.ChanceOfFreezeAfter(Day(day))), 0, spring.Share + 1e-12);
        }
    }

    [Property]
    public void RankedChance_GivenAFreeze_IsNeverBelowThatOverAllSeasons(int seed, byte day)
    {
        RankedFreezeDates dates = Ranked(seed);
        LastSpringFreeze spring = new(ShareOf(dates), dates, 30);
        Assert.True(Fraction(spring.ChanceOfFreezeAfterGivenAFreeze(Day(day))!) >= Fraction(spring.ChanceOfFreezeAfter(Day(day))) - 1e-12);
    }

    [Property]
    public void RankedDate_OfTheChanceOfADateOnRecord_IsThatDate(int seed, byte index)
    {
        RankedFreezeDates dates = Ranked(seed);
        MonthDay date = Day(dates.DaysFromStart[index % dates.DaysFromStart.Count]);
        FirstAutumnFreeze autumn = new(ShareOf(dates), dates, 30);
        LastSpringFreeze spring = new(ShareOf(dates), dates, 30);
        Ratio earlier = autumn.ChanceOfFreezeBefore(date).Value;
        Ratio later = spring.ChanceOfFreezeAfter(date).Value;
        if (earlier.Percent is > 0 and < 100 && autumn.DateWithChanceOfEarlierFreeze(earlier) is Estimate<MonthDay> first)
            Assert.Equal(date, first.Value);
        if (later.Percent is > 0 and < 100 && spring.DateWithChanceOfLaterFreeze(later) is Estimate<MonthDay> last)
            Assert.Equal(date, last.Value);
    }

    [Property]
    public void RankedDates_MirroredInTheSeason_SwapTheirSides(int seed, AnyChance chance)
    {
        // Counted from the other end, a first freeze is a last one.
        RankedFreezeDates dates = Ranked(seed);
        RankedFreezeDates mirrored = new(Cut, [.. dates.DaysFromStart.Select(day => 364 - day)], dates.Position);
        MonthDay? last = new LastSpringFreeze(ShareOf(dates), dates, 30).DateWithChanceOfLaterFreeze(chance.Ratio)?.Value;
        MonthDay? first = new FirstAutumnFreeze(ShareOf(dates), mirrored, 30).DateWithChanceOfEarlierFreeze(chance.Ratio)?.Value;
        Assert.Equal(last is null, first is null);
        if (last is not null)
            Assert.InRange(FromCut(last.Value) + FromCut(first!.Value), 363, 365); // A day at a rounding edge.
    }

    [Property]
    public void RankedChance_HasABoundThatHoldsIt(int seed, byte day)
    {
        RankedFreezeDates dates = Ranked(seed);
        Estimate<Ratio> chance = new LastSpringFreeze(ShareOf(dates), dates, 30).ChanceOfFreezeAfter(Day(day + 60));
        Assert.InRange(Fraction(chance), chance.Range!.Low.DecimalFractions - 1e-12, chance.Range.High.DecimalFractions + 1e-12);
    }

    [Property]
    public void YearlyChance_OverMoreYears_IsNeverLess(AnyChance chance, byte years)
    {
        double over = YearlyChance.AtLeastOnceIn(1 + years, chance.Ratio).DecimalFractions;
        Assert.True(YearlyChance.AtLeastOnceIn(2 + years, chance.Ratio).DecimalFractions >= over);
        Assert.True(over >= chance.Fraction - 1e-12);
    }

    [Property]
    public void YearlyChance_ThereAndBack_IsTheSame(AnyChance chance, byte years) => Assert.Equal(
        chance.Fraction, YearlyChance.AtLeastOnceIn(1 + years, YearlyChance.InOneYear(1 + years, chance.Ratio)).DecimalFractions, 1e-9);

    [Property]
    public void BinomialBounds_HoldTheShareAndWidenWithConfidence(byte times, byte more, AnyChance confidence)
    {
        int years = times + more + 1;
        (double low, double high) = BinomialBounds.Of(times, years, confidence.Fraction);
        (double lower, double higher) = BinomialBounds.Of(times, years, (1 + confidence.Fraction) / 2);
        Assert.InRange((double)times / years, low - 1e-9, high + 1e-9);
        Assert.True(lower <= low + 1e-12 && higher >= high - 1e-12);
        Assert.Equal(1 - high, BinomialBounds.Of(years - times, years, confidence.Fraction).Low, 1e-9);
    }

    [Property]
    public void Interval_OfADate_HoldsItAndWidensWithConfidence(int seed, AnyChance chance)
    {
        FreezeBootstrap sure = Draws(seed);
        FreezeDateInterval narrow = sure.DateWithChanceOfLaterFreezeGivenAFreeze(chance.Ratio, Ratio.FromPercent(60));
        FreezeDateInterval wide = sure.DateWithChanceOfLaterFreezeGivenAFreeze(chance.Ratio, Ratio.FromPercent(95));
        Assert.InRange(FromCut(narrow.Date!.Value), FromCut(narrow.Earliest!.Value), FromCut(narrow.Latest!.Value));
        Assert.True(FromCut(wide.Earliest!.Value) <= FromCut(narrow.Earliest.Value));
        Assert.True(FromCut(wide.Latest!.Value) >= FromCut(narrow.Latest.Value));
    }

    [Property]
    public void Interval_OfAChance_HoldsItAndWidensWithConfidence(int seed, byte day)
    {
        FreezeBootstrap sure = Draws(seed);
        MonthDay date = Day(200 + day % 100);
        Estimate<Ratio> narrow = sure.ChanceOfFreezeBefore(date, Ratio.FromPercent(60));
        Estimate<Ratio> wide = sure.ChanceOfFreezeBefore(date, Ratio.FromPercent(95));
        Assert.Equal(sure.Climate.FirstInAutumn.ChanceOfFreezeBefore(date).Value, narrow.Value);
        Assert.InRange(Fraction(narrow), narrow.Range!.Low.DecimalFractions - 1e-12, narrow.Range.High.DecimalFractions + 1e-12);
        Assert.True(wide.Range!.Low.DecimalFractions <= narrow.Range.Low.DecimalFractions + 1e-12);
        Assert.True(wide.Range.High.DecimalFractions >= narrow.Range.High.DecimalFractions - 1e-12);
    }

    [Property]
    public void Interval_OfALength_HoldsItAndWidensWithConfidence(int seed)
    {
        FreezeBootstrap sure = Draws(seed);
        Estimate<Duration> narrow = sure.LengthWithChanceOfLongerSeason(Ratio.FromPercent(80), Ratio.FromPercent(60));
        Estimate<Duration> wide = sure.LengthWithChanceOfLongerSeason(Ratio.FromPercent(80), Ratio.FromPercent(95));
        Assert.InRange(narrow.Value.Days, narrow.Range!.Low.Days, narrow.Range.High.Days);
        Assert.True(wide.Range!.Low <= narrow.Range.Low && wide.Range.High >= narrow.Range.High);
    }

    [Property(MaxTest = 10)]
    public void Interval_WithTheSameSeed_IsTheSame(int seed, AnyChance chance)
    {
        Assert.Equal(
            Draws(seed).DateWithChanceOfEarlierFreeze(chance.Ratio, Ratio.FromPercent(90)),
            Draws(seed).DateWithChanceOfEarlierFreeze(chance.Ratio, Ratio.FromPercent(90)));
        Assert.Equal(
            Draws(seed).ChanceOfFreezeAfter(Day(250), Ratio.FromPercent(90)), Draws(seed).ChanceOfFreezeAfter(Day(250), Ratio.FromPercent(90)));
    }

    [Property]
    public void Trend_OfValuesTurnedRound_TurnsRound(int seed)
    {
        Random random = new(seed);
        (int Year, double Days)[] values = [.. Enumerable.Range(0, 20).Select(i => (1990 + i, (double)random.Next(60)))];
        FreezeTrend trend = FreezeTrend.Of(values)!;
        FreezeTrend turned = FreezeTrend.Of([.. values.Select(value => (value.Year, -value.Days))])!;
        FreezeTrend stretched = FreezeTrend.Of([.. values.Select(value => (value.Year, 3 * value.Days + 7))])!;
        Assert.Equal(-trend.ChangePerDecade.Days, turned.ChangePerDecade.Days, 1e-9);
        Assert.Equal(3 * trend.ChangePerDecade.Days, stretched.ChangePerDecade.Days, 1e-9);
        Assert.Equal((trend.PValue, trend.PValue), (turned.PValue, stretched.PValue));
    }

    [Property(MaxTest = 6)]
    public void ResampledYears_OfAnotherScale_AreTheSame(byte seed)
    {
        DailyTemperatures celsius = FreezeWeather.Daily(seed, 12, 6, 9);
        double[] fahrenheit = [.. celsius.MinimaCelsius.ToArray().Select(value => value * 1.8 + 32)];
        FreezeClimateOptions options = new(Hemisphere.Northern, method: FreezeDateMethod.ResampledYears(seed, 1000));
        FreezeClimate one = FreezeClimate.FromDaily(celsius, Zero, options);
        FreezeClimate other = FreezeClimate.FromDaily(
            DailyTemperatures.FromMinima(celsius.Start, fahrenheit, UnitsNet.Units.TemperatureUnit.DegreeFahrenheit), Temperature.FromDegreesFahrenheit(32), options);

        // A day at the very threshold can fall to either side in the last digit.
        foreach (double percent in new[] { 10, 50, 90 })
        {
            Assert.InRange(
                FromCut(one.LastInSpring.DateWithChanceOfLaterFreeze(Ratio.FromPercent(percent))!.Value)
                - FromCut(other.LastInSpring.DateWithChanceOfLaterFreeze(Ratio.FromPercent(percent))!.Value),
                -1,
                1);
        }
    }

    [Property(MaxTest = 20)]
    public void JsonOfMethodsAndAnswers_WrittenAndRead_IsEqual(int seed)
    {
        FreezeDates dates = Ranked(seed);
        Assert.Equal(dates, JsonSerializer.Deserialize(JsonSerializer.Serialize(dates, Json.FreezeDates), Json.FreezeDates));
        foreach (FreezeDateMethod method in new[] { FreezeDateMethod.MixedNormal, FreezeDateMethod.Ranked(PlottingPosition.Gringorten), FreezeDateMethod.ResampledYears(seed, 2000) })
        {
            Assert.Equal(method, JsonSerializer.Deserialize(JsonSerializer.Serialize(method, Json.FreezeDateMethod), Json.FreezeDateMethod));
            FreezeClimateOptions options = new(method: method, recentYears: 30);
            Assert.Equal(options, JsonSerializer.Deserialize(JsonSerializer.Serialize(options, Json.FreezeClimateOptions), Json.FreezeClimateOptions));
        }

        FreezeBootstrap sure = Draws(seed);
        Assert.Equal(sure, JsonSerializer.Deserialize(JsonSerializer.Serialize(sure, Json.FreezeBootstrap), Json.FreezeBootstrap));
        FreezeDateInterval interval = sure.DateWithChanceOfLaterFreeze(Ratio.FromPercent(20), Ratio.FromPercent(90));
        Assert.Equal(interval, JsonSerializer.Deserialize(JsonSerializer.Serialize(interval, Json.FreezeDateInterval), Json.FreezeDateInterval));
        FreezeCurvePoint point = sure.CurveOfChanceOfFreezeAfter(Ratio.FromPercent(90))[250];
        Assert.Equal(point, JsonSerializer.Deserialize(JsonSerializer.Serialize(point, Json.FreezeCurvePoint), Json.FreezeCurvePoint));
        FreezeTrend trend = new(Duration.FromDays(-1.5), 0.02, 40);
        Assert.Equal(trend, JsonSerializer.Deserialize(JsonSerializer.Serialize(trend, Json.FreezeTrend), Json.FreezeTrend));
        FreezesBetween between = FreezesBetween.FromDaily(FreezeWeather.Site(seed, 0.5, 250, 12), Zero, new MonthDay(4, 1), new MonthDay(4, 20));
        Assert.Equal(between, JsonSerializer.Deserialize(JsonSerializer.Serialize(between, Json.FreezesBetween), Json.FreezesBetween));
    }

    [Fact]
    public void JsonOfAResampledClimate_WrittenAndRead_IsEqualAndAnswersTheSame()
    {
        FreezeClimate climate = FreezeClimate.FromDaily(
            FreezeWeather.Daily(3, 15, 6, 9), Zero, new FreezeClimateOptions(Hemisphere.Northern, method: FreezeDateMethod.ResampledYears(1, 1000)));
        FreezeClimate read = JsonSerializer.Deserialize(JsonSerializer.Serialize(climate, Json.FreezeClimate), Json.FreezeClimate)!;
        Assert.Equal(climate, read);
        Assert.Equal(
            climate.SeasonWithoutFreeze.LengthWithChanceOfLongerSeason(Ratio.FromPercent(50)), read.SeasonWithoutFreeze.LengthWithChanceOfLongerSeason(Ratio.FromPercent(50)));
    }
}
