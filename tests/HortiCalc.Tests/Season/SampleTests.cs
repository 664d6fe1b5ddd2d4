using HortiCalc.Json;
using HortiCalc.Season;
using HortiCalc.Units;

namespace HortiCalc.Tests.Season;

/// <summary>The samples of this room, run as their readers run them. One after the other, because each builds the library.</summary>
[Collection("samples")]
public sealed class SampleTests
{
    [Fact]
    public async Task MakeDemoWeather_Run_WritesTheFileOfTheDemo()
    {
        (int exit, string output, string errors) = await SampleRun.Run("make-demo-weather.cs");
        Assert.Equal((0, ""), (exit, errors));
        Assert.Equal(SeasonFiles.Text("shared/demo/weather.csv"), output.ReplaceLineEndings("\n"));
        Assert.StartsWith("# INVENTED", output, StringComparison.Ordinal);
    }

    [Fact]
    public async Task PlanSeason_NoArguments_PrintsThePlanOfTheDemo()
    {
        (int exit, string output, string errors) = await SampleRun.Run("plan-season.cs");
        Assert.Equal((0, ""), (exit, errors));
        Assert.Equal(SeasonFiles.DemoPlan.ToText(MeasurementSystem.Metric, null), output.ReplaceLineEndings("\n"));
    }

    [Fact]
    public async Task PlanSeason_OtherUnitsCultureAndWeather_AreTaken()
    {
        (int exit, string output, string errors) = await SampleRun.Run(
            "plan-season.cs", "--units", "us", "--culture", "de-DE", "--weather", "shared/weather/seattle-2012-2015.csv");
        Assert.Equal((0, ""), (exit, errors));
        SeasonPlan plan = SeasonPlan.For(SeasonFiles.DemoGarden, SeasonFiles.Seattle);
        Assert.Equal(plan.ToText(MeasurementSystem.UsCustomary, new System.Globalization.CultureInfo("de-DE")), output.ReplaceLineEndings("\n"));
    }

    [Fact]
    public async Task PlanSeason_Json_IsThePlan()
    {
        (int exit, string output, _) = await SampleRun.Run("plan-season.cs", "--json");
        Assert.Equal(0, exit);
        Assert.Equal(SeasonFiles.DemoPlan, System.Text.Json.JsonSerializer.Deserialize(output, HortiCalcJsonContext.Default.SeasonPlan));
    }

    [Fact]
    public async Task PlanSeason_TwoBadFiles_GivesOneLineEachAndNothingElse()
    {
        string site = Path.GetTempFileName();
        string weather = Path.GetTempFileName();
        await File.WriteAllTextAsync(site, "{\n  \"springYear\": 2027.5\n}\n", TestContext.Current.CancellationToken);
        await File.WriteAllTextAsync(weather, "date,min_c,max_c\n2025-01-01,cold,3\n", TestContext.Current.CancellationToken);
        try
        {
            (int exit, string output, string errors) = await SampleRun.Run("plan-season.cs", "--site", site, "--weather", weather);
            Assert.Equal((1, ""), (exit, output));
            Assert.Equal(
                [
                    $"{site}, line 2, column 17: expected a whole number, found 2027.5",
                    $"{weather}, line 2, column 12: expected a temperature such as -3.5, or nothing where it is missing, found \"cold\"",
                ],
                errors.ReplaceLineEndings("\n").TrimEnd().Split('\n'));
        }
        finally
        {
            File.Delete(site);
            File.Delete(weather);
        }
    }

    [Fact]
    public async Task PlanSeason_NoSuchFileOrOption_GivesOneLineEach()
    {
        (int exit, string output, string errors) = await SampleRun.Run("plan-season.cs", "--site", "no-such-file.json");
        Assert.Equal((1, ""), (exit, output));
        Assert.Equal("no-such-file.json: expected a file, found none", errors.TrimEnd());

        (exit, output, errors) = await SampleRun.Run("plan-season.cs", "--units", "stone", "--colour");
        Assert.Equal((1, ""), (exit, output));
        Assert.Equal(
            ["--units: expected metric or us, found stone", "--colour: expected one of the options that --help lists"],
            errors.ReplaceLineEndings("\n").TrimEnd().Split('\n'));
    }
}
