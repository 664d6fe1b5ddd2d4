using System.Globalization;
using HortiCalc.Display;
using HortiCalc.Json;
using HortiCalc.Pictures;
using HortiCalc.Soil;
using HortiCalc.Tests.Season;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Tests.Soil;

/// <summary>The sample that reads a soil report, run as its readers run it.</summary>
[Collection("samples")]
public sealed class HowMuchLimeSampleTests
{
    [Fact]
    public async Task HowMuchLime_NoArguments_AnswersForTheDemo()
    {
        (int exit, string output, string errors) = await SampleRun.Run("how-much-lime.cs");
        LimeComparison comparison = Liming.Compare(LimePicture.Soil(), new Ph(6.5), Length.FromCentimeters(15));

        Assert.Equal((0, ""), (exit, errors));
        Assert.All(comparison.Answers, answer =>
        {
            string line = Assert.Single(output.Split('\n'), line => line.Contains($"  {answer.Rate.Method.Name}", StringComparison.Ordinal));
            Assert.Contains(QuantityText.Format(answer.Rate.Value, MeasurementSystem.Metric, CultureInfo.InvariantCulture), line, StringComparison.Ordinal);
            Assert.Contains(QuantityText.Format(answer.Over(Area.FromSquareMeters(10)).Value, MeasurementSystem.Metric, CultureInfo.InvariantCulture), line, StringComparison.Ordinal);
            Assert.Equal(answer.Depth is null, line.Contains("its source names no depth", StringComparison.Ordinal));
        });
        Assert.All(comparison.WhyTheyDiffer, reason => Assert.Contains(reason, output, StringComparison.Ordinal));
        Assert.All(comparison.Refusals, refusal => Assert.Contains(refusal.Reason, output, StringComparison.Ordinal));
        Assert.All(comparison.Cautions, caution => Assert.Contains($"  {caution.Level}: {caution.Sentence}", output, StringComparison.Ordinal));
        Assert.DoesNotContain("(Parameter", output, StringComparison.Ordinal);
    }

    [Fact]
    public async Task HowMuchLime_UsUnitsAndTheLimeAtHand_AnswersInPounds()
    {
        (int exit, string output, string errors) = await SampleRun.Run(
            "how-much-lime.cs", "--units", "us", "--target", "6.9", "--depth", "4", "--area", "200", "--equivalent", "80");
        LimeRequirement iowa = Liming.Requirement(LimePicture.Soil(), new Ph(6.9), LimingMethod.Iowa)
            .ForDepth(Length.FromInches(4)).As(new LimingMaterial("the lime at hand", Ratio.FromPercent(80)));

        Assert.Equal((0, ""), (exit, errors));
        Assert.Contains(QuantityText.Format(iowa.Over(Area.FromSquareFeet(200)).Value, MeasurementSystem.UsCustomary, CultureInfo.InvariantCulture) + "  Iowa table", output, StringComparison.Ordinal);
        Assert.DoesNotContain("g/m²", output, StringComparison.Ordinal);
    }

    [Fact]
    public async Task HowMuchLime_Json_IsTheComparisonAsTheLibraryReadsIt()
    {
        (int exit, string output, string errors) = await SampleRun.Run("how-much-lime.cs", "--json");

        Assert.Equal((0, ""), (exit, errors));
        Assert.Equal(LimePicture.Comparison(), HortiCalcJson.Deserialize<LimeComparison>(output));
    }

    [Fact]
    public async Task HowMuchLime_ReportOfLittle_SaysWhatEachMethodLacks()
    {
        string report = Path.GetTempFileName();
        await File.WriteAllTextAsync(report, """{ "phInWater": { "value": 5.6, "unit": "pH" } }""", TestContext.Current.CancellationToken);
        try
        {
            (int exit, string output, string errors) = await SampleRun.Run("how-much-lime.cs", "--report", report);

            Assert.Equal((0, ""), (exit, errors));
            Assert.Contains("No method answers for this report.", output, StringComparison.Ordinal);
            Assert.Contains("soil has no SmpBufferPh", output, StringComparison.Ordinal);
        }
        finally
        {
            File.Delete(report);
        }
    }

    [Theory]
    [InlineData("--target", "20", "value was 20 pH; allowed: from 0 to 14 pH.")]
    [InlineData("--target", "sour", "--target: expected a number such as 6.5, found sour")]
    [InlineData("--depth", "-1", "depth was -0.01 m; allowed: greater than 0 m.")]
    [InlineData("--units", "imperial", "--units: expected metric or us, found imperial")]
    [InlineData("--report", "no-such.json", "no-such.json: expected a file, found none")]
    [InlineData("--soil", "clay", "--soil: expected one of the options that --help lists")]
    public async Task HowMuchLime_BadOption_GivesOneLineAndNothingElse(string option, string value, string message)
    {
        (int exit, string output, string errors) = await SampleRun.Run("how-much-lime.cs", option, value);

        Assert.Equal((1, "", message), (exit, output, errors.TrimEnd()));
    }
}
