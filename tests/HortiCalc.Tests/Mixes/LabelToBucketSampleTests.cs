using System.Globalization;
using HortiCalc.Display;
using HortiCalc.Evidence;
using HortiCalc.Mixes;
using HortiCalc.Tests.Season;
using HortiCalc.Units;
using UnitsNet;

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

    [Theory]
    [InlineData("1:9")]
    [InlineData("1in10")]
    public async Task Bucket_OldRecipeByRatio_IsReadInOneMeaningAndShownInBoth(string ratio)
    {
        (int exit, string output, string errors) = await SampleRun.Run(Sample, "--label", "5.25", "--target", ratio);
        HypochloriteLabel label = HypochloriteLabel.SodiumHypochlorite(MassFraction.FromPercent(5.25), HypochloriteDensities.SixPercent);
        MassConcentration level = Hypochlorite.StrengthOf(label, MixRatio.PartsToParts(1, 9)).Value;

        Assert.Equal((0, ""), (exit, errors));
        Assert.Contains("1 part to 9 parts, one in 10 of the mix", output, StringComparison.Ordinal);
        Assert.Contains("1 L with a litre jug (1 L for 1 L, exact)", output, StringComparison.Ordinal);
        Assert.Contains("1.08 kg/L, the printed one nearest to the label", output, StringComparison.Ordinal);
        string shown = $"{level.MilligramsPerLiter.ToString("0", CultureInfo.InvariantCulture)} mg/L";
        Assert.Equal(2, output.Split('\n').Count(line => (line.StartsWith("Wanted", StringComparison.Ordinal) || line.StartsWith("Really", StringComparison.Ordinal)) && line.Contains(shown, StringComparison.Ordinal)));
    }

    [Fact]
    public async Task Bucket_NoArguments_NamesAllThatBleachMustNeverMeetTheTimesAndTheSources()
    {
        (_, string output, _) = await SampleRun.Run(Sample);
        string warnings = output[..output.IndexOf("Label", StringComparison.Ordinal)];

        Assert.All(
            Hazards.Pairs.Where(pair => pair.Caution.Level == CautionLevel.Danger && (pair.First == IngredientClass.Hypochlorite || pair.Second == IngredientClass.Hypochlorite)),
            pair => Assert.Contains(pair.Caution.Sentence, warnings, StringComparison.Ordinal));
        Assert.All(ContactTimes.For(MixUse.Tools).Where(record => record.Agent == MixIngredients.HouseholdBleach), record =>
        {
            string line = Assert.Single(output.Split('\n'), line => line.Contains(record.Name, StringComparison.Ordinal));
            Assert.Contains(QuantityText.Format(record.Time!.Value, MeasurementSystem.Metric, CultureInfo.InvariantCulture), line, StringComparison.Ordinal);
            Assert.Contains($"{record.Low.MilligramsPerLiter.ToString("0", CultureInfo.InvariantCulture)} mg/L, ", line, StringComparison.Ordinal);
            Assert.Contains(record.Source.ToString(), output, StringComparison.Ordinal);
        });
        Assert.Contains("at least 30 min: pots and benches, one part of 5.25 % bleach to nine; then rinse with clean water", output, StringComparison.Ordinal);
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
    [InlineData("--target", "1:9:2", "--target: expected mg/L such as 5000, or a ratio such as 1:9 or 1in10, found 1:9:2")]
    [InlineData("--target", "1in0.5", "total was 0.5 parts; allowed:")]
    [InlineData("--label", "12", "--density: expected with a label of 12 %")]
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
