using HortiCalc.Evidence;
using HortiCalc.Season;
using HortiCalc.Units;

namespace HortiCalc.Tests.Season;

/// <summary>The facts of the demo's plan that a reader would notice if they changed.</summary>
public sealed class DemoPlanTests
{
    private static SeasonPlan Plan => SeasonFiles.DemoPlan;

    [Theory]
    [InlineData("wall bed", PlanStep.Sow, "2027-03-21")]
    [InlineData("wall bed", PlanStep.PotOn, "2027-04-11")]
    [InlineData("wall bed", PlanStep.PlantOut, "2027-05-09")]
    [InlineData("wall bed", PlanStep.Harvest, "2027-07-18")]
    [InlineData("long bed", PlanStep.Sow, "2027-05-09")]
    [InlineData("long bed", PlanStep.Harvest, "2027-09-09")]
    [InlineData("corner bed", PlanStep.PlantOut, "2027-04-28")]
    [InlineData("terrace pots", PlanStep.TakeCuttings, "2027-02-07")]
    [InlineData("terrace pots", PlanStep.SetOutside, "2027-05-02")]
    [InlineData("terrace pots", PlanStep.LastPruning, "2027-08-31")]
    [InlineData("terrace pots", PlanStep.BringIndoors, "2027-10-19")]
    public void Dates_OfTheDemo_AreAsPublishedInItsText(string place, PlanStep step, string date)
    {
        DateLine line = Plan.Dates.Single(line => line.Place == place && line.Step == step);
        Assert.Equal(DateOnly.ParseExact(date, "yyyy-MM-dd", System.Globalization.CultureInfo.InvariantCulture), line.Date);
    }

    [Fact]
    public void Supplies_OfTheDemo_AreAsPublishedInItsText()
    {
        AmendmentSupply compost = Plan.Supplies.OfType<AmendmentSupply>().First();
        Assert.Equal(792, compost.Volume.Liters, 6);
        Assert.Equal(20, compost.Purchase!.Count);
        LimeSupply lime = Plan.Supplies.OfType<LimeSupply>().Single(line => line.Place == "corner bed");
        Assert.Equal("lime-uk-garden-texture", lime.Dose.Method.Key);
        Assert.Equal((7.5 * 680 / 0.95) / 1000, lime.Dose.Value.Kilograms, 6); // 7.5 m² of 680 g/m², between 800 at pH 5.5 and 500 at 6.0
        Assert.Equal(NoLimeReason.SoilSuits, Plan.Supplies.OfType<NoLime>().First().Reason);
        PlantSupply tomato = Plan.Supplies.OfType<PlantSupply>().First();
        Assert.Equal((12, 19), (tomato.Plants, tomato.Starts));
        Assert.Equal("1 L", Cell(Plan.Supplies.OfType<MixSupply>().First(), 1));
    }

    [Fact]
    public void EveryLine_HasEvidenceWithASource()
    {
        Assert.All(Plan.Supplies.Concat<PlanLine>(Plan.Dates).Concat(Plan.Risks), line =>
        {
            Assert.NotEmpty(line.Evidence);
            Assert.All(line.Evidence, method => Assert.Contains(method.Source, Plan.Sources));
        });
        Assert.All(Plan.Cautions, line => Assert.Contains(line.Caution.Source, Plan.Sources));
        Assert.All(Plan.Cautions, line => Assert.NotEmpty(line.AppliesTo));
    }

    [Fact]
    public void EveryDate_ThatRestsOnTheWeather_NamesTheRecord()
    {
        Assert.All(
            Plan.Dates.Where(line => line.Reason is ColdNightChance or WarmthReached or HeatReached),
            line => Assert.Contains(Plan.Garden.Site.WeatherSource, line.Evidence.Select(method => method.Source)));
    }

    [Fact]
    public void Dates_AreInTheOrderOfTime()
    {
        DateOnly?[] dates = [.. Plan.Dates.Select(line => line.Date)];
        Assert.Equal(dates.Order(), dates);
    }

    [Fact]
    public void Cautions_GravestFirstAndEachOnce()
    {
        CautionLevel[] levels = [.. Plan.Cautions.Select(line => line.Caution.Level)];
        Assert.Equal(levels.OrderDescending(), levels);
        Assert.Equal(Plan.Cautions.Count, Plan.Cautions.Select(line => line.Caution).Distinct().Count());
        Assert.Contains(Plan.Cautions, line => line.Caution.Code == "bleach.never-with-acid");
    }

    [Theory]
    [InlineData(MeasurementSystem.Metric)]
    [InlineData(MeasurementSystem.UsCustomary)]
    public void ToText_OfTheDemo_KeepsToItsWidth(MeasurementSystem units)
    {
        string text = Plan.ToText(units, null);
        foreach (string section in (string[])["CROPS", "SUPPLIES", "DATES", "RISKS", "CAUTIONS", "SOURCES"])
            Assert.Contains("\n\n" + section, text, StringComparison.Ordinal);

        // An address longer than a line stands on a line of its own, unbroken.
        Assert.All(text.Split('\n'), line => Assert.True(line.Length <= 110 || line.TrimStart().StartsWith("http", StringComparison.Ordinal), line));
        Assert.All(text.Split('\n'), line => Assert.Equal(line.TrimEnd(), line));
        Assert.DoesNotContain("NaN", text, StringComparison.Ordinal);
    }

    [Fact]
    public void ToText_EveryNumberedNote_HasItsSource()
    {
        string[] parts = Plan.ToText(MeasurementSystem.Metric, null).Split("\nSOURCES\n");
        foreach (System.Text.RegularExpressions.Match note in System.Text.RegularExpressions.Regex.Matches(parts[0], @"\[([0-9c=]+(?:,[0-9c=]+)*)\]"))
        {
            foreach (string label in note.Groups[1].Value.Split(','))
                Assert.Contains($"  [{label}] ", parts[1], StringComparison.Ordinal);
        }
    }

    [Fact]
    public void ToText_Amounts_StandInBothSystems()
    {
        string line = Plan.ToText(MeasurementSystem.Metric, null).Split('\n').First(text => text.Contains("garden compost", StringComparison.Ordinal));
        Assert.Contains("792 L", line, StringComparison.Ordinal);
        Assert.Contains("1.04 cu yd", line, StringComparison.Ordinal);
    }

    [Fact]
    public void ToText_CommaCulture_WritesCommas()
    {
        string text = Plan.ToText(MeasurementSystem.Metric, new System.Globalization.CultureInfo("de-DE"));
        Assert.Contains("soil pH 5,7 suits tomato (5,5 to 6,8)", text, StringComparison.Ordinal);
        Assert.Contains("5,37 kg", text, StringComparison.Ordinal);
    }

    [Fact]
    public void ToString_OfPlanAndLines_IsOneLineEach()
    {
        Assert.All(
            [Plan.ToString(), .. Plan.Supplies.Select(line => line.ToString()), .. Plan.Dates.Select(line => line.ToString()), .. Plan.Risks.Select(line => $"{line:U}"), .. Plan.Cautions.Select(line => line.ToString())],
            text => Assert.DoesNotContain('\n', text));
        Assert.StartsWith("Larkmere Halt (an invented place), season of 2027: 16 supplies, 19 dates, 9 risks", Plan.ToString(), StringComparison.Ordinal);
        Assert.Throws<FormatException>(() => Plan.ToString("X", null));
    }

    private static string Cell(SupplyLine line, int index) => line.Cells(HortiCalc.Display.TextStyle.Default)[index];
}
