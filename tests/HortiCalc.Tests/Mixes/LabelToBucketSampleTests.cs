using HortiCalc.Tests.Season;

namespace HortiCalc.Tests.Mixes;

/// <summary>The sample from label to bucket, run as its readers run it.</summary>
[Collection("samples")]
public sealed class LabelToBucketSampleTests
{
    private const string Sample = "from-label-to-bucket.cs";

    [Fact]
    public async Task Bucket_NoArguments_WarnsFirstThenMeasures()
    {
        (int exit, string output, string errors) = await SampleRun.Run(Sample);
        string[] lines = output.ReplaceLineEndings("\n").TrimEnd().Split('\n');

        Assert.Equal((0, ""), (exit, errors));
        Assert.StartsWith("Danger", lines[0], StringComparison.Ordinal);
        int label = Array.FindIndex(lines, line => line.StartsWith("Label", StringComparison.Ordinal));
        Assert.All(lines.Skip(label), line => Assert.False(line.StartsWith("Danger", StringComparison.Ordinal)));
        Assert.Contains("86.4 g/L of available chlorine", lines[label], StringComparison.Ordinal);
        foreach (string name in new[] { "Wanted", "Exactly", "Measure", "Water", "Really", "Use within" })
            Assert.Contains(lines, line => line.StartsWith(name, StringComparison.Ordinal));
        Assert.Contains("2 1/4 metric cups (563 mL for 578 mL, 2.76 % too little)", output, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Bucket_UsUnitsTradeLabelAndPh_AreTaken()
    {
        (int exit, string output, string errors) = await SampleRun.Run(
            Sample, "--units", "us", "--label", "12.5", "--basis", "trade", "--target", "500", "--bucket", "2.5", "--ph", "7.5");

        Assert.Equal((0, ""), (exit, errors));
        Assert.Contains("US tablespoon", output, StringComparison.Ordinal);
        Assert.Contains("54 % of it is hypochlorous acid", output, StringComparison.Ordinal);
        Assert.DoesNotContain("metric", output, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Bucket_AsJson_HoldsTheAnswers()
    {
        (int exit, string output, string errors) = await SampleRun.Run(Sample, "--json");
        Assert.Equal((0, ""), (exit, errors));
        using System.Text.Json.JsonDocument answers = System.Text.Json.JsonDocument.Parse(output);
        Assert.Equal(["batch", "measured", "strength", "hypochlorousAcid"], answers.RootElement.EnumerateObject().Select(member => member.Name));
    }

    [Theory]
    [InlineData("--with", "vinegar", "ingredients held what must not meet")]
    [InlineData("--with", "gin", "--with: expected vinegar, ammonia, alcohol, soap, citric-acid or feed, found gin")]
    [InlineData("--units", "stone", "--units: expected metric or us, found stone")]
    [InlineData("--label", "strong", "--label: expected a number such as 8.25, found strong")]
    [InlineData("--target", "90000", "availableChlorine was 90000 mg/L; allowed: from 0 to 86")]
    [InlineData("--bucket", "0", "total was 0 L; allowed: greater than 0 L.")]
    [InlineData("--ph", "3", "pH was 3; allowed: from 5 to 10")]
    [InlineData("--colour", "red", "--colour: expected one of the options that --help lists")]
    public async Task Bucket_BadInput_GivesOneLineAndNothingElse(string option, string value, string message)
    {
        (int exit, string output, string errors) = await SampleRun.Run(Sample, option, value);

        Assert.Equal((1, ""), (exit, output));
        Assert.StartsWith(message, errors, StringComparison.Ordinal);
        Assert.Single(errors.ReplaceLineEndings("\n").TrimEnd().Split('\n'));
    }

    [Fact]
    public async Task Bucket_Help_ListsTheOptions()
    {
        (int exit, string output, _) = await SampleRun.Run(Sample, "--help");
        Assert.Equal(0, exit);
        Assert.Contains("--kitchen NAME", output, StringComparison.Ordinal);
    }
}
