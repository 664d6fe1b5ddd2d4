using FsCheck.Xunit;
using HortiCalc.Climate;
using UnitsNet;
using UnitsNet.Units;

namespace HortiCalc.Tests.Climate.Stages;

[Properties(Arbitrary = [typeof(DegreeDayArbitraries)])]
public class StageProperties
{
    [Property]
    public bool Follow_AnyRecord_KeepsTheTablesStages(AnyRecord any, byte pick) =>
        Followed(any, pick).Times.Select(time => time.Stage).SequenceEqual(TableOf(pick).Stages);

    [Property]
    public bool Follow_AnyRecord_ReachesStagesInOrder(AnyRecord any, byte pick)
    {
        StageTime[] times = [.. Followed(any, pick).Times.Where(time => time.Reached is not null)];
        return times.Zip(times.Skip(1)).All(pair => pair.First.Reached!.Date <= pair.Second.Reached!.Date);
    }

    [Property]
    public bool Follow_AnyRecord_ReachedStagesComeFirst(AnyRecord any, byte pick) =>
        Followed(any, pick).Times.SkipWhile(time => time.Reached is not null).All(time => time.Reached is null);

    [Property]
    public bool Follow_AnyRecord_ReachesExactlyWhatTheSumCovers(AnyRecord any, byte pick)
    {
        StageProgress progress = Followed(any, pick);
        return progress.Times.All(time => (time.Reached is not null) == (time.Stage.Low.CelsiusDays <= progress.Sum.CelsiusDays + 1e-9));
    }

    [Property]
    public bool Follow_AnyRecord_AgreesWithTheRequirementOfTheStage(AnyRecord any, byte pick)
    {
        StageTable table = TableOf(pick);
        return Followed(any, pick).Times.All(time =>
        {
            HeatRequirement requirement = table.Requirement(time.Stage.Name);
            return Series(any, table).WhenReached(requirement.Sum) == time.Reached;
        });
    }

    [Property]
    public bool Follow_AnyRecord_SumAndToNextMakeTheNextStage(AnyRecord any, byte pick)
    {
        StageProgress progress = Followed(any, pick);
        return progress.Next is not HeatStage next
            || Math.Abs(progress.Sum.CelsiusDays + progress.ToNext!.Value.CelsiusDays - next.Low.CelsiusDays) < 1e-8;
    }

    [Property]
    public bool Follow_AnyRecord_NowHoldsOnlyRangesWithTheSum(AnyRecord any, byte pick)
    {
        StageProgress progress = Followed(any, pick);
        return progress.Now.All(stage => stage.Low.CelsiusDays <= progress.Sum.CelsiusDays + 1e-9
            && !(stage.High?.CelsiusDays < progress.Sum.CelsiusDays - 1e-9));
    }

    [Property]
    public bool Follow_AnyRecord_LatestAndNextAreNeighbours(AnyRecord any, byte pick)
    {
        StageProgress progress = Followed(any, pick);
        List<HeatStage> stages = [.. progress.Table.Stages];
        int latest = progress.Latest is HeatStage one ? stages.IndexOf(one) : -1;
        return progress.Next is HeatStage next ? stages.IndexOf(next) == latest + 1 : latest == stages.Count - 1;
    }

    [Property]
    public bool Follow_WarmerDays_ReachEveryStageNoLater(byte pick, byte warmer)
    {
        StageTable table = TableOf(pick);
        DateOnly start = new(2027, 5, 1);
        DailyTemperatures cool = Constant(start, 14), warm = Constant(start, 14 + warmer % 10);
        return table.Follow(cool, start).Times.Zip(table.Follow(warm, start).Times)
            .All(pair => pair.First.Reached is null || pair.Second.Reached!.Date <= pair.First.Reached.Date);
    }

    [Property]
    public bool Follow_LongerRecord_MovesNoDate(AnyRecord any, byte pick, byte cut)
    {
        StageTable table = TableOf(pick);
        DateOnly end = any.Days.Start.AddDays(cut % any.Days.Count);
        DateOnly start = any.Days.Start;
        if (table.Method is { UsesNextMinimum: true } || any.Days.MissingCount > 0)
            return true;
        return table.Follow(any.Days.Between(start, end), start).Times.Zip(table.Follow(any.Days, start).Times)
            .All(pair => pair.First.Reached is null || pair.First.Reached == pair.Second.Reached);
    }

    [Property]
    public bool StartIn_SouthTwice_IsTheSameMonth(byte month, byte day)
    {
        MonthDay date = new(month % 12 + 1, day % 28 + 1);
        DateOnly south = Biofix.On(date).StartIn(2027, Hemisphere.Southern);
        return Biofix.On(MonthDay.From(south)).StartIn(2027, Hemisphere.Southern) == date.InYear(2027);
    }

    [Property]
    public bool RequirementOfEnd_AnyStage_IsNotBelowItsBeginning(byte pick) => TableOf(pick).Stages.All(stage =>
        !(TableOf(pick).RequirementOfEnd(stage.Name)?.Sum.CelsiusDays < TableOf(pick).Requirement(stage.Name).Sum.CelsiusDays));

    [Property]
    public bool Table_StagesInAnyOrder_IsTheSame(byte pick, int seed)
    {
        StageTable table = TableOf(pick);
        HeatStage[] shuffled = [.. StageTests.Table(Biofix.NotStated).Stages];
        new Random(seed).Shuffle(shuffled);
        return table.Stages.Zip(table.Stages.Skip(1)).All(pair => pair.First.Low.CelsiusDays <= pair.Second.Low.CelsiusDays)
            && StageTests.Table(Biofix.NotStated, shuffled) == StageTests.Table(Biofix.NotStated);
    }

    private static StageTable TableOf(byte pick) => StageTables.All[pick % StageTables.All.Count];


    private static StageProgress Followed(AnyRecord any, byte pick)
    {
        StageTable table = TableOf(pick);
        return table.Follow(Series(any, table));
    }

    // However many days are missing: that is the count's matter.
    private static DegreeDaySeries Series(AnyRecord any, StageTable table) => DegreeDays.Accumulate(
        any.Days, table.Thresholds, table.Method ?? DegreeDayMethod.SingleSine, table.Cutoff, maximumMissing: Ratio.FromPercent(100));

    private static DailyTemperatures Constant(DateOnly start, double celsius) => DailyTemperatures.Create(
        start,
        [.. Enumerable.Repeat(celsius - 5, 100)],
        [.. Enumerable.Repeat(celsius + 5, 100)],
        TemperatureUnit.DegreeCelsius);
}
