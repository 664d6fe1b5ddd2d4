using HortiCalc.Tests.Season;

namespace HortiCalc.Tests.Climate;

/// <summary>The sample of a frost night, run as its readers run it.</summary>
[Collection("samples")]
public sealed class TonightSampleTests
{
    [Fact]
    public async Task Tonight_NoArguments_AnswersForTheInventedEvening()
    {
        (int exit, string output, string errors) = await SampleRun.Run("tonight.cs");
        string[] lines = output.ReplaceLineEndings("\n").TrimEnd().Split('\n');

        Assert.Equal((0, ""), (exit, errors));
        Assert.StartsWith("Night of 2027-04-20: 4.2 °C, dew point -3.1 °C, wind 0.8 m/s, clear", lines[0], StringComparison.Ordinal);
        foreach (string label in new[] { "Frost", "To do", "Minimum", "How sure", "Called", "Harm from", "Damage", "Cover", "Sprinklers", "Hour by hour", "Care", "Danger" })
            Assert.Contains(lines, line => line.StartsWith(label, StringComparison.Ordinal));
        Assert.Equal(3, lines.Count(line => line.StartsWith("Damage", StringComparison.Ordinal))); // three tables for apples in full bloom
    }

    [Fact]
    public async Task Tonight_OtherReadingsAndUnits_AreTaken()
    {
        (int exit, string output, string errors) = await SampleRun.Run(
            "tonight.cs", "--units", "us", "--temperature", "39", "--humidity", "60", "--wind", "1", "--crop", "Peach", "--stage", "pink", "--fitting", "joint");

        Assert.Equal((0, ""), (exit, errors));
        Assert.Contains("39 °F", output, StringComparison.Ordinal);
        Assert.Contains("wind 1 mph", output, StringComparison.Ordinal);
        Assert.Contains("joint regression", output, StringComparison.Ordinal);
        Assert.DoesNotContain(
            output.Split('\n').Where(line => !line.StartsWith("Care", StringComparison.Ordinal)), line => line.Contains("°C", StringComparison.Ordinal));
    }

    [Fact]
    public async Task Tonight_WindOrCloud_SendsToTheForecast()
    {
        (int exit, string output, string errors) = await SampleRun.Run("tonight.cs", "--wind", "6");

        Assert.Equal((0, ""), (exit, errors));
        Assert.Contains("advection", output, StringComparison.Ordinal);
        Assert.Contains("take it from the local forecast", output, StringComparison.Ordinal);
        Assert.DoesNotContain("How sure", output, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("--crop", "orange", "crop was 'orange'; allowed: Apple, Pear")]
    [InlineData("--units", "stone", "--units: expected metric or us, found stone")]
    [InlineData("--temperature", "cold", "--temperature: expected a number such as -3.5, found cold")]
    [InlineData("--dew-point", "9", "dewPoint was 9 °C; allowed: from -90 to 4.2 °C.")]
    [InlineData("--sunset", "tonight", "--sunset: expected a time such as 2027-04-20T20:04, found tonight")]
    [InlineData("--nights", "no-such-file.csv", "no-such-file.csv: expected a file, found none")]
    [InlineData("--colour", "red", "--colour: expected one of the options that --help lists")]
    public async Task Tonight_BadInput_GivesOneLineAndNothingElse(string option, string value, string message)
    {
        (int exit, string output, string errors) = await SampleRun.Run("tonight.cs", option, value);

        Assert.Equal((1, ""), (exit, output));
        Assert.StartsWith(message, errors, StringComparison.Ordinal);
        Assert.Single(errors.ReplaceLineEndings("\n").TrimEnd().Split('\n'));
    }

    [Fact]
    public async Task Tonight_Help_ListsTheOptions()
    {
        (int exit, string output, _) = await SampleRun.Run("tonight.cs", "--help");
        Assert.Equal(0, exit);
        Assert.Contains("--dew-point N", output, StringComparison.Ordinal);
    }
}
