using FsCheck.Xunit;
using HortiCalc.Climate;
using HortiCalc.Evidence;
using MathNet.Numerics.Distributions;
using UnitsNet;
using UnitsNet.Units;

namespace HortiCalc.Tests.Climate;

[Properties(Arbitrary = [typeof(FreezeArbitraries)], MaxTest = 200)]
public class FreezeProperties
{
    private static readonly Temperature Zero = Temperature.FromDegreesCelsius(0);

    private static double Fraction(Estimate<Ratio> chance) => chance.Value.DecimalFractions;

    /// <summary>A day by its distance from another, in a year of 365 days.</summary>
    private static MonthDay From(MonthDay day, int days) => MonthDay.Nearest(day.DayOfYear + days);

    private static int DaysFrom(MonthDay start, MonthDay end) => (int)(MonthDay.Wrapped(end.DayOfYear - start.DayOfYear + 182) - 182);

    [Property]
    public void ChanceOfFreeze_DayByDay_FallsInSpringAndRisesInAutumn(AnyFreeze freeze)
    {
        for (int day = -181; day < 181; day++)
        {
            MonthDay date = From(freeze.Dates.MiddleDate, day);
            MonthDay next = From(freeze.Dates.MiddleDate, day + 1);
            Assert.True(Fraction(freeze.Spring.ChanceOfFreezeAfter(next)) <= Fraction(freeze.Spring.ChanceOfFreezeAfter(date)));
            Assert.True(Fraction(freeze.Autumn.ChanceOfFreezeBefore(next)) >= Fraction(freeze.Autumn.ChanceOfFreezeBefore(date)));
        }
    }

    [Property]
    public void ChanceOfFreeze_AnyDay_LiesFromZeroToTheShare(AnyFreeze freeze, MonthDay date)
    {
        Assert.InRange(Fraction(freeze.Spring.ChanceOfFreezeAfter(date)), 0, freeze.Share + 1e-12);
        Assert.InRange(Fraction(freeze.Autumn.ChanceOfFreezeBefore(date)), 0, freeze.Share + 1e-12);
        Assert.InRange(Fraction(freeze.Spring.ChanceOfFreezeAfterGivenAFreeze(date)!), 0, 1);
    }

    [Property]
    public void ChanceOfFreeze_AtTheDateOfAChance_IsThatChanceToWithinHalfADay(AnyFreeze freeze, AnyChance chance)
    {
        // A date is rounded to a day: the chance moves by at most half a day of the steepest slope.
        double halfADay = 0.5 * freeze.Share / (freeze.StandardDeviationDays * Math.Sqrt(Math.Tau)) + 1e-9;
        if (freeze.Spring.DateWithChanceOfLaterFreeze(chance.Ratio) is Estimate<MonthDay> spring)
            Assert.Equal(chance.Fraction, Fraction(freeze.Spring.ChanceOfFreezeAfter(spring.Value)), halfADay);
        if (freeze.Autumn.DateWithChanceOfEarlierFreeze(chance.Ratio) is Estimate<MonthDay> autumn)
            Assert.Equal(chance.Fraction, Fraction(freeze.Autumn.ChanceOfFreezeBefore(autumn.Value)), halfADay);
    }

    [Property]
    public void DateWithChance_OfTheChanceOfADate_IsThatDate(AnyFreeze freeze, sbyte days)
    {
        MonthDay date = From(freeze.Dates.MiddleDate, (int)(days / 128.0 * 2.5 * freeze.StandardDeviationDays));
        Ratio later = freeze.Spring.ChanceOfFreezeAfter(date).Value;
        Ratio earlier = freeze.Autumn.ChanceOfFreezeBefore(date).Value;

        Assert.InRange(Math.Abs(DaysFrom(date, freeze.Spring.DateWithChanceOfLaterFreeze(later)!.Value)), 0, 0);
        Assert.InRange(Math.Abs(DaysFrom(date, freeze.Autumn.DateWithChanceOfEarlierFreeze(earlier)!.Value)), 0, 0);
    }

    [Property]
    public void DateWithChance_ExistsExactlyBelowTheShare(AnyFreeze freeze, AnyChance chance)
    {
        // Chances are multiples of a thousandth, shares of a hundredth: where they are not equal, the date lies within four
        // deviations of the mean, nearer than half a year.
        bool exists = chance.Fraction < freeze.Share - 1e-9;
        Assert.Equal(exists, freeze.Spring.DateWithChanceOfLaterFreeze(chance.Ratio) is not null);
        Assert.Equal(exists, freeze.Autumn.DateWithChanceOfEarlierFreeze(chance.Ratio) is not null);
    }

    [Property]
    public void DateWithChance_OfAHigherChance_IsEarlierInSpringAndLaterInAutumn(AnyFreeze freeze, AnyChance one, AnyChance other)
    {
        Ratio low = Ratio.FromDecimalFractions(Math.Min(one.Fraction, other.Fraction));
        Ratio high = Ratio.FromDecimalFractions(Math.Max(one.Fraction, other.Fraction));
        LastSpringFreeze spring = freeze.Always.Spring;
        FirstAutumnFreeze autumn = freeze.Always.Autumn;

        Assert.True(DaysFrom(spring.DateWithChanceOfLaterFreeze(high)!.Value, spring.DateWithChanceOfLaterFreeze(low)!.Value) >= 0);
        Assert.True(DaysFrom(autumn.DateWithChanceOfEarlierFreeze(low)!.Value, autumn.DateWithChanceOfEarlierFreeze(high)!.Value) >= 0);
    }

    [Property]
    public void ChanceGivenAFreeze_AnyDay_IsTheChanceOverAllSeasonsDividedByTheShare(AnyFreeze freeze, MonthDay date)
    {
        double given = Fraction(freeze.Spring.ChanceOfFreezeAfterGivenAFreeze(date)!);
        double over = Fraction(freeze.Spring.ChanceOfFreezeAfter(date));
        Assert.True(given >= over);
        Assert.Equal(over, given * freeze.Share, 1e-12);
        Assert.Equal(
            Fraction(freeze.Autumn.ChanceOfFreezeBefore(date)),
            Fraction(freeze.Autumn.ChanceOfFreezeBeforeGivenAFreeze(date)!) * freeze.Share,
            1e-12);
    }

    [Property]
    public void BothChances_WithAFreezeEverySeason_Agree(AnyFreeze any, AnyChance chance, MonthDay date)
    {
        AnyFreeze freeze = any.Always;
        Assert.Equal(
            freeze.Spring.DateWithChanceOfLaterFreezeGivenAFreeze(chance.Ratio)!.Value,
            freeze.Spring.DateWithChanceOfLaterFreeze(chance.Ratio)!.Value);
        Assert.Equal(
            freeze.Autumn.DateWithChanceOfEarlierFreezeGivenAFreeze(chance.Ratio)!.Value,
            freeze.Autumn.DateWithChanceOfEarlierFreeze(chance.Ratio)!.Value);
        Assert.Equal(Fraction(freeze.Spring.ChanceOfFreezeAfterGivenAFreeze(date)!), Fraction(freeze.Spring.ChanceOfFreezeAfter(date)), 1e-15);
    }

    [Property]
    public void DateGivenAFreeze_IsTheDateOfTheChanceTimesTheShare(AnyFreeze freeze, AnyChance chance)
    {
        Ratio over = Ratio.FromDecimalFractions(chance.Fraction * freeze.Share);
        MonthDay given = freeze.Spring.DateWithChanceOfLaterFreezeGivenAFreeze(chance.Ratio)!.Value;

        // The product and its quotient differ in the last digit; at a rounding edge that is a day.
        Assert.InRange(Math.Abs(DaysFrom(given, freeze.Spring.DateWithChanceOfLaterFreeze(over)!.Value)), 0, 1);
    }

    [Property]
    public void EarlierAndLater_OfTheSameDates_AddUpToTheShare(AnyFreeze freeze, MonthDay date) => Assert.Equal(
        freeze.Share, Fraction(freeze.Spring.ChanceOfFreezeAfter(date)) + Fraction(freeze.Autumn.ChanceOfFreezeBefore(date)), 1e-12);

    [Property]
    public void DateWithChance_OfAMeanMovedByWholeDays_MovesByThem(AnyFreeze freeze, AnyChance chance, byte days)
    {
        AnyFreeze here = freeze.Always;
        AnyFreeze there = here with { MeanDayOfYear = here.MeanDayOfYear + days };
        MonthDay moved = there.Spring.DateWithChanceOfLaterFreeze(chance.Ratio)!.Value;
        MonthDay expected = From(here.Spring.DateWithChanceOfLaterFreeze(chance.Ratio)!.Value, days);
        Assert.InRange(Math.Abs(DaysFrom(expected, moved)), 0, 1); // A day at a rounding edge.
    }

    [Property]
    public void Answers_InOtherUnits_AreTheSame(AnyFreeze freeze, AnyChance chance)
    {
        LastSpringFreeze inWeeks = new(
            Ratio.FromDecimalFractions(freeze.Share), new NormalFreezeDates(freeze.MeanDayOfYear, Duration.FromWeeks(freeze.StandardDeviationDays / 7)));
        Ratio inPartsPerThousand = Ratio.FromPartsPerThousand(chance.Fraction * 1000);
        MonthDay? date = inWeeks.DateWithChanceOfLaterFreeze(inPartsPerThousand)?.Value;
        MonthDay? expected = freeze.Spring.DateWithChanceOfLaterFreeze(chance.Ratio)?.Value;
        Assert.Equal(expected is null, date is null);
        if (date is not null)
            Assert.InRange(Math.Abs(DaysFrom(expected!.Value, date.Value)), 0, 1);
    }

    [Property]
    public void FromTable_OfTheDatesOfADistribution_GivesItsOwnDatesBack(AnyFreeze any)
    {
        AnyFreeze freeze = any.Always;
        double[] percents = [10, 20, 30, 40, 50, 60, 70, 80, 90];
        LastSpringFreeze spring = LastSpringFreeze.FromTable(
            [.. percents.Select(percent => new TabulatedFreezeDate(Ratio.FromPercent(percent), freeze.Spring.DateWithChanceOfLaterFreeze(Ratio.FromPercent(percent))!.Value))]);
        FirstAutumnFreeze autumn = FirstAutumnFreeze.FromTable(
            [.. percents.Select(percent => new TabulatedFreezeDate(Ratio.FromPercent(percent), freeze.Autumn.DateWithChanceOfEarlierFreeze(Ratio.FromPercent(percent))!.Value))]);

        Assert.InRange(spring.FitError!.Value.Days, 0, 0.5);
        Assert.Equal(freeze.StandardDeviationDays, ((NormalFreezeDates)spring.GivenAFreeze!).StandardDeviation.Days, 0.6);
        Assert.Equal(freeze.StandardDeviationDays, ((NormalFreezeDates)autumn.GivenAFreeze!).StandardDeviation.Days, 0.6);
        foreach (Ratio chance in percents.Select(percent => Ratio.FromPercent(percent)))
        {
            Assert.InRange(Math.Abs(DaysFrom(
                freeze.Spring.DateWithChanceOfLaterFreeze(chance)!.Value, spring.DateWithChanceOfLaterFreeze(chance)!.Value)), 0, 1);
            Assert.InRange(Math.Abs(DaysFrom(
                freeze.Autumn.DateWithChanceOfEarlierFreeze(chance)!.Value, autumn.DateWithChanceOfEarlierFreeze(chance)!.Value)), 0, 1);
        }
    }

    [Property]
    public void FromTable_InAnyOrder_IsTheSame(AnyFreeze any, int seed)
    {
        TabulatedFreezeDate[] dates = [.. Enumerable.Range(1, 9).Select(tenth => 10 * tenth).Select(percent => new TabulatedFreezeDate(
            Ratio.FromPercent(percent), any.Always.Spring.DateWithChanceOfLaterFreeze(Ratio.FromPercent(percent))!.Value))];
        LastSpringFreeze sorted = LastSpringFreeze.FromTable(dates);
        new Random(seed).Shuffle(dates);
        Assert.Equal(sorted, LastSpringFreeze.FromTable(dates));
    }

    [Property(MaxTest = 40)]
    public void FromDaily_MovedByHalfAYearAndTheEquator_IsTheSameFromItsCut(AnyFreezeRecord record)
    {
        FreezeClimate north = FreezeClimate.FromDaily(Place(record, new MonthDay(8, 1)), Zero, new FreezeClimateOptions(Hemisphere.Northern));
        FreezeClimate south = FreezeClimate.FromDaily(Place(record, new MonthDay(2, 1)), Zero, new FreezeClimateOptions(Hemisphere.Southern));

        Assert.Equal(north.LastInSpring.ShareOfSeasonsWithFreeze.Percent, south.LastInSpring.ShareOfSeasonsWithFreeze.Percent, 1e-9);
        Assert.Equal(north.LastInSpring.HasDates, south.LastInSpring.HasDates);
        if (north.LastInSpring.GivenAFreeze is not NormalFreezeDates northern)
        {
            Assert.Equal(
                (north.LastInSpring.GivenAFreeze as RankedFreezeDates)?.DaysFromStart, (south.LastInSpring.GivenAFreeze as RankedFreezeDates)?.DaysFromStart);
            return;
        }

        NormalFreezeDates southern = (NormalFreezeDates)south.LastInSpring.GivenAFreeze!;
        Assert.Equal(
            MonthDay.Wrapped(northern.MeanDayOfYear - new MonthDay(8, 1).DayOfYear),
            MonthDay.Wrapped(southern.MeanDayOfYear - new MonthDay(2, 1).DayOfYear),
            1e-9);
        Assert.Equal(northern.StandardDeviation.Days, southern.StandardDeviation.Days, 1e-9);
    }

    [Property(MaxTest = 40)]
    public void FromDaily_InFahrenheit_IsTheSameClimate(AnyFreezeRecord record)
    {
        DailyTemperatures celsius = Place(record, new MonthDay(8, 1));
        double[] minima = [.. celsius.MinimaCelsius.ToArray().Select(value => value * 1.8 + 32)];
        DailyTemperatures fahrenheit = DailyTemperatures.Create(
            celsius.Start, minima, [.. minima.Select(minimum => minimum + 20)], TemperatureUnit.DegreeFahrenheit);
        FreezeClimateOptions northern = new(Hemisphere.Northern);
        Assert.Equal(
            FreezeClimate.FromDaily(celsius, Zero, northern),
            FreezeClimate.FromDaily(fahrenheit, Temperature.FromDegreesFahrenheit(32), northern));
    }

    [Property(MaxTest = 40)]
    public void FromDaily_HigherThreshold_NeverFreezesLessOrEndsSooner(AnyFreezeRecord record, byte step)
    {
        DailyTemperatures days = Place(record, new MonthDay(8, 1));
        FreezeClimateOptions northern = new(Hemisphere.Northern);
        FreezeClimate low = FreezeClimate.FromDaily(days, Temperature.FromDegreesCelsius(-4), northern);
        FreezeClimate high = FreezeClimate.FromDaily(days, Temperature.FromDegreesCelsius(-4 + step / 40.0), northern);

        foreach ((FreezeSeason colder, FreezeSeason warmer) in low.Seasons.Zip(high.Seasons).Where(pair => pair.First.IsSpringKnown && pair.Second.IsSpringKnown))
            Assert.True(colder.LastFreeze is null || warmer.LastFreeze >= colder.LastFreeze);
        Assert.True(high.LastInSpring.Share >= low.LastInSpring.Share - 1e-12);
    }

    [Property(MaxTest = 40)]
    public void FromDaily_MinimaAlone_AreEnough(AnyFreezeRecord record)
    {
        DailyTemperatures whole = Place(record, new MonthDay(8, 1));
        DailyTemperatures nights = DailyTemperatures.FromMinima(whole.Start, whole.MinimaCelsius, TemperatureUnit.DegreeCelsius);

        Assert.Equal(
            FreezeClimate.FromDaily(whole, Zero, new FreezeClimateOptions(Hemisphere.Northern)),
            FreezeClimate.FromDaily(nights, Zero, new FreezeClimateOptions(Hemisphere.Northern)));
    }

    [Property(MaxTest = 40)]
    public void FromDaily_WithGaps_KeepsTheDatesOfTheSeasonsItKeeps(AnyFreezeRecord record, int gapSeed)
    {
        DailyTemperatures whole = Place(record, new MonthDay(8, 1));
        Random random = new(gapSeed);
        double[] minima = whole.MinimaCelsius.ToArray();
        for (int gap = 0; gap < 4; gap++)
        {
            // Only mild days go missing: a freeze that goes missing is gone.
            int first = random.Next(minima.Length - 30);
            for (int day = first; day < first + random.Next(1, 30); day++)
                minima[day] = minima[day] > 0 ? double.NaN : minima[day];
        }

        DailyTemperatures gappy = DailyTemperatures.Create(whole.Start, minima, [.. minima.Select(minimum => minimum + 10)], TemperatureUnit.DegreeCelsius);
        FreezeClimateOptions northern = new(Hemisphere.Northern);
        FreezeClimate all = FreezeClimate.FromDaily(whole, Zero, northern);
        IReadOnlyList<FreezeSeason> kept;
        try
        {
            FreezeClimate some = FreezeClimate.FromDaily(gappy, Zero, northern);
            kept = some.Seasons;
            Assert.Equal(
                some.Seasons.Count * 2, some.LastInSpring.Seasons + some.FirstInAutumn.Seasons + some.LeftOut.Count);
        }
        catch (ArgumentException refusal)
        {
            Assert.Contains("usable seasons", refusal.Message, StringComparison.Ordinal);
            return;
        }

        foreach ((FreezeSeason full, FreezeSeason part) in all.Seasons.Zip(kept))
        {
            Assert.True(!part.IsSpringKnown || part.LastFreeze == full.LastFreeze);
            Assert.True(!part.IsAutumnKnown || part.FirstFreeze == full.FirstFreeze);
        }
    }

    [Property]
    public void Length_OfAnyYears_FallsAsTheChanceRisesAndIsUndoneByItsInverse(int seed, AnyChance chance)
    {
        Random random = new(seed);
        FreezeFreeSeason season = new([.. Enumerable.Range(2001, 19).Select(year => new FreezeFreePeriod(
            new DateOnly(year, 8, 1), new DateOnly(year, 3, 1).AddDays(random.Next(90)), new DateOnly(year, 9, 1).AddDays(random.Next(90))))]);
        Ratio within = Ratio.FromDecimalFractions(Math.Clamp(chance.Fraction, 0.05, 0.95));
        Duration length = season.LengthWithChanceOfLongerSeason(within).Value;

        Assert.InRange(length.Days, season.Years.Min(year => year.Length.Days), season.Years.Max(year => year.Length.Days));
        Assert.True(season.LengthWithChanceOfLongerSeason(Ratio.FromPercent(95)).Value.Days <= length.Days);
        Assert.True(season.LengthWithChanceOfLongerSeason(Ratio.FromPercent(5)).Value.Days >= length.Days);

        // Equal lengths share a chance: the inverse gives the highest of it.
        double back = Fraction(season.ChanceOfSeasonOfAtLeast(length));
        Assert.True(back >= within.DecimalFractions - 1e-9);
        Assert.Equal(length.Days, season.LengthWithChanceOfLongerSeason(Ratio.FromDecimalFractions(back)).Value.Days, 1e-6);
    }

    [Fact]
    public void FromDaily_SimulatedSeasons_RecoversTheirMeanSpreadAndShareWithinSamplingError()
    {
        // 400 seasons; four standard errors of each parameter.
        const int seasons = 400;
        foreach ((double mean, double deviation, double share, int seed) in new[] { (250.0, 12.0, 1.0, 1), (200.0, 25.0, 0.6, 2), (170.0, 18.0, 0.3, 3) })
        {
            Random random = new(seed);
            List<DateOnly> freezes = [];
            for (int year = 1600; year < 1600 + seasons; year++)
            {
                double day = Normal.Sample(random, mean, deviation);
                if (random.NextDouble() < share)
                    freezes.Add(FromCut(year, (int)Math.Round(Math.Clamp(day, 0, 364), MidpointRounding.AwayFromZero)));
            }

            FreezeClimate climate = FreezeClimate.FromDaily(
                FreezeRecords.WithFreezesOn(1600, 1600 + seasons, freezes), Zero, new FreezeClimateOptions(Hemisphere.Northern));
            NormalFreezeDates spring = (NormalFreezeDates)climate.LastInSpring.GivenAFreeze!;
            double count = share * seasons;
            Assert.Equal(mean, MonthDay.Wrapped(spring.MeanDayOfYear - new MonthDay(8, 1).DayOfYear), 4 * deviation / Math.Sqrt(count));
            Assert.Equal(deviation, spring.StandardDeviation.Days, 4 * deviation / Math.Sqrt(2 * count));
            Assert.Equal(share, climate.LastInSpring.Share, 4 * Math.Sqrt(share * (1 - share) / seasons) + 1e-9);
        }
    }

    [Fact]
    public void ChanceOfFreezeAfter_OfSimulatedSeasons_IsHowOftenOneComes()
    {
        const int seasons = 20_000;
        Random random = new(7);
        AnyFreeze freeze = new(110, 14, 0.7);
        MonthDay date = new(4, 30);
        int later = Enumerable.Range(0, seasons).Count(_ =>
            random.NextDouble() < freeze.Share && Normal.Sample(random, freeze.MeanDayOfYear, freeze.StandardDeviationDays) >= date.DayOfYear);
        double chance = Fraction(freeze.Spring.ChanceOfFreezeAfter(date));
        Assert.Equal(chance, later / (double)seasons, 4 * Math.Sqrt(chance * (1 - chance) / seasons));
    }

    /// <summary>A day by its number from 1 August, in a year of 365 days.</summary>
    private static DateOnly FromCut(int year, int days)
    {
        MonthDay day = MonthDay.Nearest(new MonthDay(8, 1).DayOfYear + days);
        return day.InYear(day.Month >= 8 ? year : year + 1);
    }

    /// <summary>The record at a place whose seasons begin on a day; the days from the cut are the same everywhere.</summary>
    private static DailyTemperatures Place(AnyFreezeRecord record, MonthDay seasonStart)
    {
        HashSet<DateOnly> freezes = [];
        for (int season = 0; season < record.FreezesFromCut.Count; season++)
        {
            foreach (int days in record.FreezesFromCut[season])
            {
                MonthDay day = MonthDay.Nearest(seasonStart.DayOfYear + days);
                int year = AnyFreezeRecord.FirstYear + season;
                freezes.Add(day.InYear(day.DayOfYear >= seasonStart.DayOfYear ? year : year + 1));
            }
        }

        return FreezeRecords.Of(
            seasonStart.InYear(AnyFreezeRecord.FirstYear),
            seasonStart.InYear(AnyFreezeRecord.LastYear).AddDays(-1),
            date => freezes.Contains(date) ? FreezeRecords.Freezing : FreezeRecords.Mild);
    }
}
