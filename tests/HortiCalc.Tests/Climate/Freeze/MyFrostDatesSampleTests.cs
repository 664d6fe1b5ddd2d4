using System.Globalization;
using System.Text.Json.Nodes;
using HortiCalc.Climate;
using HortiCalc.Json;
using HortiCalc.Tests.Season;
using UnitsNet;

namespace HortiCalc.Tests.Climate;

/// <summary>The sample of frost dates, run as its readers run it.</summary>
[Collection("samples")]
public sealed class MyFrostDatesSampleTests
{
    [Fact]
    public async Task MyFrostDates_NoArguments_AnswersForTheDemo()
    {
        (int exit, string output, string errors) = await SampleRun.Run("my-frost-dates.cs");
        FreezeClimate climate = FreezeClimate.FromDaily(SeasonFiles.DemoWeather, Temperature.FromDegreesCelsius(0));
        FreezeBootstrap sure = new(climate, seed: 1);

        Assert.Equal((0, ""), (exit, errors));
        foreach (int percent in new[] { 10, 50, 90 })
        {
            Ratio chance = Ratio.FromPercent(percent);
            FreezeDateInterval last = sure.DateWithChanceOfLaterFreeze(chance, Ratio.FromPercent(95));
            FreezeDateInterval first = sure.DateWithChanceOfEarlierFreeze(chance, Ratio.FromPercent(95));
            double length = climate.SeasonWithoutFreeze.LengthWithChanceOfLongerSeason(chance).Value.Days;
            Assert.Contains($"  {percent} % chance of a later freeze: {last.Date!.Value,-8} (95 %: {last.Earliest} to {last.Latest})", output, StringComparison.Ordinal);
            Assert.Contains($"  {percent} % chance of an earlier freeze: {first.Date!.Value,-8} (95 %: {first.Earliest} to {first.Latest})", output, StringComparison.Ordinal);
            Assert.Contains($"  {percent} % of years have  {Math.Round(length, MidpointRounding.AwayFromZero)} days or more", output, StringComparison.Ordinal);
        }

        Assert.Contains("over all years, those without a freeze counted in", output, StringComparison.Ordinal);
        Assert.Contains(climate.TrendOfLastInSpring!.ToString(), output, StringComparison.Ordinal);
        Assert.Contains("USDA zone 8a", output, StringComparison.Ordinal);
        Assert.All(climate.LeftOut, left => Assert.Contains(left.ToString(), output, StringComparison.Ordinal));
        Assert.All(climate.LastInSpring.Cautions, caution => Assert.Contains(caution.Sentence, output, StringComparison.Ordinal));
    }

    /// <summary>Minima alone, in °F, at a place where some years have no freeze: both meanings of a chance are told apart.</summary>
    [Fact]
    public async Task MyFrostDates_MinimaOfAMildPlaceInFahrenheit_TellsBothMeaningsOfAChance()
    {
        string weather = Path.GetTempFileName();
        await File.WriteAllLinesAsync(weather, Mild(), TestContext.Current.CancellationToken);
        try
        {
            (int exit, string output, string errors) = await SampleRun.Run(
                "my-frost-dates.cs", "--weather", weather, "--units", "us", "--threshold", "28", "--chance", "20", "--recent-years", "15", "--method", "ranked");

            Assert.Equal((0, ""), (exit, errors));
            Assert.StartsWith("Freezes at 28 °F or colder, 1996-01-01 to 2010-12-31, northern hemisphere", output, StringComparison.Ordinal);
            Assert.Contains("  20 % chance of a later freeze: ", output, StringComparison.Ordinal);
            Assert.Contains("given that a freeze comes: 10 % ", output, StringComparison.Ordinal);
            Assert.Contains("To plan with, 20 % accepted", output, StringComparison.Ordinal);
            Assert.DoesNotContain("°C", output, StringComparison.Ordinal);
        }
        finally
        {
            File.Delete(weather);
        }
    }

    [Fact]
    public async Task MyFrostDates_Json_HoldsTheAnswersAsTheLibraryReadsThem()
    {
        (int exit, string output, string errors) = await SampleRun.Run("my-frost-dates.cs", "--json");
        FreezeClimate climate = FreezeClimate.FromDaily(SeasonFiles.DemoWeather, Temperature.FromDegreesCelsius(0));

        Assert.Equal((0, ""), (exit, errors));
        JsonNode answers = JsonNode.Parse(output)!;
        Assert.Equal(climate, HortiCalcJson.Deserialize<FreezeClimate>(answers["climate"]!.ToJsonString()));
        Assert.Equal(
            climate.LastInSpring.DateWithChanceOfLaterFreeze(Ratio.FromPercent(10)),
            HortiCalcJson.Deserialize<FreezeDateInterval>(answers["lastInSpring"]![0]!.ToJsonString()).Date);
    }

    [Fact]
    public async Task MyFrostDates_MissingOrMalformedFile_GivesOneLineAndNothingElse()
    {
        string weather = Path.GetTempFileName();
        await File.WriteAllTextAsync(weather, "date,min_c\n2025-01-01,cold\n", TestContext.Current.CancellationToken);
        try
        {
            Assert.Equal(
                (1, "", $"{weather}, line 2, column 12: expected a temperature such as -3.5, or nothing where it is missing, found \"cold\""),
                await Trimmed("--weather", weather));
            Assert.Equal((1, "", "no-such.csv: expected a file, found none"), await Trimmed("--weather", "no-such.csv"));
        }
        finally
        {
            File.Delete(weather);
        }
    }

    [Theory]
    [InlineData("--chance", "0", "--chance: expected a chance above 0 and below 100 %, found 0")]
    [InlineData("--threshold", "cold", "--threshold: expected a number such as -2.5, found cold")]
    [InlineData("--method", "guess", "--method: expected mixed-normal, ranked or resampled, found guess")]
    [InlineData("--recent-years", "5", "--recent-years: expected a whole number, 11 or more, found 5")]
    [InlineData("--threshold", "45", "threshold was 45 °C; allowed: from -60 to 30 °C.")]
    public async Task MyFrostDates_BadOption_GivesOneLineAndNothingElse(string option, string value, string message) =>
        Assert.Equal((1, "", message), await Trimmed(option, value));

    [Fact]
    public async Task MyFrostDates_Help_ListsTheOptions()
    {
        (int exit, string output, _) = await SampleRun.Run("my-frost-dates.cs", "--help");

        Assert.Equal(0, exit);
        Assert.Contains("--recent-years N", output, StringComparison.Ordinal);
    }

    private static async Task<(int Exit, string Output, string Errors)> Trimmed(params string[] arguments)
    {
        (int exit, string output, string errors) = await SampleRun.Run("my-frost-dates.cs", arguments);
        return (exit, output, errors.TrimEnd());
    }

    /// <summary>Twenty years; of every five winters three have a few nights at 25 °F, each year on other days.</summary>
    private static IEnumerable<string> Mild()
    {
        yield return "date,min_f";
        for (DateOnly date = new(1991, 1, 1); date.Year <= 2010; date = date.AddDays(1))
        {
            double usual = 50 - 14 * Math.Cos((date.DayOfYear - 20) * Math.Tau / 365.25);
            bool isFreeze = date.Year % 5 < 3 && (date.DayOfYear == 30 + date.Year * 7 % 29 || date.DayOfYear == 335 + date.Year * 5 % 23);
            yield return string.Create(CultureInfo.InvariantCulture, $"{date:yyyy-MM-dd},{(isFreeze ? 25 : Math.Round(usual, 1, MidpointRounding.AwayFromZero))}");
        }
    }
}
