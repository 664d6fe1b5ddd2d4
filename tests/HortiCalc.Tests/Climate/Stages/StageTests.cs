using System.Text.Json;
using HortiCalc.Climate;
using HortiCalc.Display;
using HortiCalc.Evidence;
using HortiCalc.Json;
using HortiCalc.Units;
using UnitsNet;
using UnitsNet.Units;

namespace HortiCalc.Tests.Climate.Stages;

public class StageTests
{
    private static readonly Source Page = new("page", "A page", "A publisher", 2001, null);
    private static readonly DegreeDayThresholds AboveTen = new(Temperature.FromDegreesCelsius(10));
    private static readonly DateOnly FirstOfMarch = new(2027, 3, 1);

    [Fact]
    public void Follow_TenDegreeDaysADay_ReachesEachStageInItsTime()
    {
        StageProgress progress = Table(Biofix.On(new MonthDay(3, 1))).Follow(Days(FirstOfMarch, 6), FirstOfMarch);

        Assert.Equal(60, progress.Sum.CelsiusDays, 1e-12);
        Assert.Equal(new TimeReached(new DateOnly(2027, 3, 3), Ratio.FromPercent(50)), progress.Times[0].Reached);
        Assert.Equal(new TimeReached(new DateOnly(2027, 3, 5), Ratio.FromPercent(100)), progress.Times[1].Reached);
        Assert.Null(progress.Times[1].Passed);
        Assert.Null(progress.Times[2].Reached);
        Assert.Equal("crawlers", progress.Latest!.Name);
        Assert.Equal("second flight", progress.Next!.Name);
        Assert.Equal(30, progress.ToNext!.Value.CelsiusDays, 1e-12);
        Assert.Equal("crawlers", Assert.Single(progress.Now).Name);
        Assert.Equal(
            "Some scale: 60 °C·d from 2027-03-01 to 2027-03-06, crawlers; next second flight in 30 °C·d [A publisher, A page (2001)]; 2 cautions",
            progress.ToString());
        Assert.Contains("to come", DisplayText.Plain(((IDisplayable)progress).ToDisplay(TextStyle.Default)), StringComparison.Ordinal);
    }

    [Fact]
    public void Follow_BeforeAndAfterAllStages_HasNoLatestAndNoNext()
    {
        StageProgress early = Table(Biofix.NotStated).Follow(Days(FirstOfMarch, 1), FirstOfMarch);
        StageProgress late = Table(Biofix.NotStated).Follow(Days(FirstOfMarch, 9), FirstOfMarch);

        Assert.Null(early.Latest);
        Assert.Empty(early.Now);
        Assert.Null(late.Next);
        Assert.Null(late.ToNext);
        Assert.Equal("second flight", Assert.Single(late.Now).Name); // Its end is open.
    }

    [Theory]
    [InlineData("03-01", null, 2027, 3, 1, null)]
    [InlineData("03-01", null, 2027, 9, 1, "stages.biofix-shifted")]
    [InlineData("03-01", null, 2027, 4, 1, "stages.other-start")]
    [InlineData(null, "the first moth", 2027, 4, 1, "stages.biofix-observed")]
    [InlineData(null, null, 2027, 4, 1, "stages.biofix-not-stated")]
    public void Follow_FromADay_SaysWhatTheStartIsWorth(string? date, string? observed, int year, int month, int day, string? code)
    {
        DateOnly start = new(year, month, day);
        Biofix biofix = new(date is null ? null : MonthDay.Parse(date), observed);

        string[] codes = [.. Table(biofix).Follow(Days(start, 3), start).Cautions.Select(caution => caution.Code)];

        Assert.Equal(code is null ? [] : [code], codes.Where(one => one.StartsWith("stages.", StringComparison.Ordinal) && one != "stages.scout"));
    }

    [Fact]
    public void Follow_CountedOtherwise_SaysSo()
    {
        DegreeDaySeries triangle = DegreeDays.Accumulate(Days(FirstOfMarch, 3), AboveTen, DegreeDayMethod.SingleTriangle, UpperCutoff.None);

        Assert.Contains("heat-requirement.other-method", Table(Biofix.NotStated).Follow(triangle).Cautions.Select(caution => caution.Code));
    }

    [Fact]
    public void Follow_EveryTableOfInsects_SaysThatMonitoringDecides()
    {
        Assert.All(StageTables.All, table => Assert.Equal(
            table.Kind == StageSubject.Insect,
            table.Follow(Days(FirstOfMarch, 3), FirstOfMarch).Cautions.Any(caution => caution.Code == "stages.scout")));
    }

    [Fact]
    public void StartIn_SouthernHemisphere_IsSixMonthsLater()
    {
        Assert.Equal(new DateOnly(2027, 9, 1), Biofix.On(new MonthDay(3, 1)).StartIn(2027, Hemisphere.Southern));
        Assert.Equal(new DateOnly(2027, 2, 28), Biofix.On(new MonthDay(8, 31)).StartIn(2027, Hemisphere.Southern));
        Assert.Equal(FirstOfMarch, Biofix.On(new MonthDay(3, 1)).StartIn(2027, Hemisphere.Northern));
    }

    [Fact]
    public void StartIn_ObservedOrNotStated_IsRefused()
    {
        InvalidOperationException refused = Assert.Throws<InvalidOperationException>(
            () => Biofix.When("the first moth").StartIn(2027, Hemisphere.Northern));

        Assert.Contains("the first moth", refused.Message, StringComparison.Ordinal);
        Assert.Throws<InvalidOperationException>(() => Biofix.NotStated.StartIn(2027, Hemisphere.Southern));
    }

    [Fact]
    public void Constructors_OutsideTheirRange_NameParameterAndValue()
    {
        Assert.Contains("-1 °C·d", Assert.Throws<ArgumentOutOfRangeException>("low", () => Stage("egg", -1, null)).Message, StringComparison.Ordinal);
        Assert.Contains("4 °C·d", Assert.Throws<ArgumentOutOfRangeException>("high", () => Stage("egg", 5, 4)).Message, StringComparison.Ordinal);
        Assert.Throws<ArgumentOutOfRangeException>("value", () => Stage("egg", double.NaN, null)); // No thermal time to begin with.
        Assert.Throws<ArgumentException>("name", () => Stage(" ", 1, null));
        Assert.Throws<ArgumentException>("observed", () => new Biofix(new MonthDay(1, 1), "the first moth"));
        Assert.Throws<ArgumentException>("stages", () => Table(Biofix.NotStated, []));
        Assert.Contains("'egg' twice", Assert.Throws<ArgumentException>(
            "stages", () => Table(Biofix.NotStated, Stage("egg", 1, 1), Stage("egg", 2, 2))).Message, StringComparison.Ordinal);
        Assert.Throws<ArgumentException>("passed", () => new StageTime(Stage("egg", 1, 1), null, new TimeReached(FirstOfMarch, Ratio.FromPercent(1))));
        Assert.Throws<ArgumentException>("key", () => StageTables.FromKey("nothing"));
        Assert.Throws<ArgumentException>("name", () => Table(Biofix.NotStated).Stage("nothing"));
        Assert.Throws<ArgumentException>("cutoff", () => new BaseTemperature(
            "Corn", StageSubject.Crop, AboveTen, DegreeDayMethod.FourCase, UpperCutoff.Vertical, Page));
        Assert.Throws<ArgumentOutOfRangeException>(
            "from", () => Table(Biofix.NotStated).Follow(Days(FirstOfMarch, 3), FirstOfMarch.AddDays(-1)));
    }

    [Fact]
    public void All_Tables_HaveTheirOwnKeys()
    {
        Assert.Equal(StageTables.All.Count, StageTables.All.Select(table => table.Key).Distinct().Count());
        Assert.All(StageTables.All, table => Assert.Same(table, StageTables.FromKey(table.Key)));
        Assert.All(StageTables.All, table => Assert.StartsWith(table.Source.Key + "/", table.Key, StringComparison.Ordinal));
    }

    [Fact]
    public void Of_SubjectOfTwoSources_GivesBothSideBySide()
    {
        Assert.Equal(
            ["michigan-landscape-insects", "wisconsin-landscape-insects"], StageTables.Of("bronze BIRCH borer").Select(table => table.Source.Key));
        Assert.Equal([0, 4.4], BaseTemperatures.Of("wheat").Select(row => Math.Round(row.Thresholds.Lower.DegreesCelsius, 1)).Distinct().Order());
        Assert.Empty(StageTables.Of("coconut"));
    }

    [Fact]
    public void HighPlainsCorn_FromSilksToBlackLayer_IsFiveEqualSteps()
    {
        // The print interpolates: a tenth of a degree day either side is its rounding.
        string[] stages = ["silks", "blister", "dough", "beginning dent", "full dent", "black layer"];
        foreach (StageTable corn in StageTables.Of("to maturity"))
        {
            double[] sums = [.. stages.Select(stage => corn.Stage(stage).Low.FahrenheitDays)];
            double step = (sums[^1] - sums[0]) / 5;
            Assert.All(Enumerable.Range(1, 5), index => Assert.Equal(step, sums[index] - sums[index - 1], 0.15));
        }
    }

    [Fact]
    public void CornEarworm_StagesFromEggToAdult_SumToTheGeneration()
    {
        double[] sums = [.. DevelopmentTimes.Of("Corn earworm (Texas)").Select(time => time.Requirement.Sum.FahrenheitDays)];

        Assert.Equal(sums[4], sums[..4].Sum(), 0.15); // 760.1 printed, 760.2 added up.
        Assert.Equal(sums[6], sums[4] + sums[5], 0.01);
    }

    [Fact]
    public void Json_EveryType_ComesBackEqual()
    {
        StageTable table = StageTables.FromKey("kansas-wheat-stages/wheat");
        RoundTrip(table);
        RoundTrip(table.Stages[^1]);
        RoundTrip(Biofix.On(new MonthDay(3, 1)));
        RoundTrip(Biofix.When("the first moth"));
        StageProgress progress = Table(Biofix.NotStated).Follow(Days(FirstOfMarch, 6), FirstOfMarch);
        RoundTrip(progress);
        RoundTrip(progress.Times[0]);
        RoundTrip(DevelopmentTimes.All[0]);
        RoundTrip(BaseTemperatures.All[0]);
    }

    internal static DailyTemperatures Days(DateOnly start, int count) => DailyTemperatures.Create(
        start,
        [.. Enumerable.Repeat(15.0, count)],
        [.. Enumerable.Repeat(25.0, count)],
        TemperatureUnit.DegreeCelsius);

    internal static HeatStage Stage(string name, double low, double? high) => new(
        name, ThermalTime.FromCelsiusDays(low), high is double end ? ThermalTime.FromCelsiusDays(end) : null);

    internal static StageTable Table(Biofix biofix, params HeatStage[] stages) => new(
        "page/scale", StageSubject.Insect, "Some scale", null, biofix, AboveTen, DegreeDayMethod.SingleSine, UpperCutoff.None, Page, stages);

    internal static StageTable Table(Biofix biofix) => Table(
        biofix, Stage("second flight", 90, null), Stage("crawlers", 50, 75), Stage("first flight", 25, 25));

    private static void RoundTrip<T>(T value)
        where T : class => Assert.Equal(value, JsonSerializer.Deserialize<T>(JsonSerializer.Serialize(value, HortiCalcJson.Options), HortiCalcJson.Options));
}
