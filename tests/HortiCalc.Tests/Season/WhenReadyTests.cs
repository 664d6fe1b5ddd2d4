using HortiCalc.Climate;
using HortiCalc.Evidence;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Tests.Season;

/// <summary>The sample that asks when a crop is ready, run as its readers run it.</summary>
[Collection("samples")]
public sealed class WhenReadyTests
{
    [Fact]
    public async Task WhenReady_NoArguments_PrintsTheForecastOfTheDemo()
    {
        (int exit, string output, string errors) = await SampleRun.Run("when-ready.cs");
        HeatForecast forecast = HeatForecast.For(
            new HeatRequirement(
                ThermalTime.FromCelsiusDays(855),
                new DegreeDayThresholds(Temperature.FromDegreesCelsius(10), Temperature.FromDegreesCelsius(30)),
                DegreeDayMethod.SingleSine,
                UpperCutoff.Horizontal,
                Source.CommonPractice("given", "given")),
            SeasonFiles.DemoWeather.Between(new DateOnly(2025, 5, 15), new DateOnly(2025, 7, 1)),
            SeasonFiles.DemoWeather,
            new DateOnly(2025, 10, 31));

        Assert.Equal((0, ""), (exit, errors));
        Assert.Contains($"10 % by  {forecast.Early.Date:yyyy-MM-dd}", output, StringComparison.Ordinal);
        Assert.Contains($"50 % by  {forecast.Middle.Date:yyyy-MM-dd}", output, StringComparison.Ordinal);
        Assert.Contains($"90 % by  {forecast.Late.Date:yyyy-MM-dd}", output, StringComparison.Ordinal);
        Assert.All(DegreeDayMethod.All, method => Assert.Contains($"  {method}", output, StringComparison.Ordinal));
        Assert.All(forecast.Cautions, caution => Assert.Contains(caution.Sentence, output, StringComparison.Ordinal));
    }

    [Fact]
    public async Task WhenReady_UsUnitsOfTheSameRequirement_PrintsTheSameDates()
    {
        (_, string metric, _) = await SampleRun.Run("when-ready.cs");
        (int exit, string us, string errors) = await SampleRun.Run(
            "when-ready.cs", "--units", "us", "--requirement", "1539", "--base", "50", "--upper", "86");

        Assert.Equal((0, ""), (exit, errors));
        Assert.Contains("1539 °F·d", us, StringComparison.Ordinal);
        Assert.Equal(Dated(metric), Dated(us));

        static string[] Dated(string output) => [.. output.Split('\n').Where(line => line.StartsWith("  ", StringComparison.Ordinal))];
    }

    [Fact]
    public async Task WhenReady_MissingOrMalformedFile_GivesOneLineAndNothingElse()
    {
        string weather = Path.GetTempFileName();
        await File.WriteAllTextAsync(weather, "date,min_c,max_c\n2025-01-01,cold,3\n", TestContext.Current.CancellationToken);
        try
        {
            Assert.Equal(
                (1, "", $"{weather}, line 2, column 12: expected a temperature such as -3.5, or nothing where it is missing, found \"cold\""),
                Trimmed(await SampleRun.Run("when-ready.cs", "--weather", weather)));
            Assert.Equal((1, "", "no-such.csv: expected a file, found none"), Trimmed(await SampleRun.Run("when-ready.cs", "--weather", "no-such.csv")));
            Assert.Equal(
                (1, "", "--sown: expected a date such as 2025-07-01, found May"), Trimmed(await SampleRun.Run("when-ready.cs", "--sown", "May")));
        }
        finally
        {
            File.Delete(weather);
        }

        static (int Exit, string Output, string Errors) Trimmed((int Exit, string Output, string Errors) run) =>
            (run.Exit, run.Output, run.Errors.TrimEnd());
    }
}
