using System.Text.Json;
using HortiCalc.Json;
using HortiCalc.Season;
using HortiCalc.Units;

namespace HortiCalc.Tests.Season;

public sealed class GardenFileTests
{
    [Fact]
    public void Write_ThenRead_GivesTheSameGarden()
    {
        string json = GardenFile.Write(SeasonFiles.DemoGarden);
        Assert.Equal(SeasonFiles.DemoGarden, GardenFile.Read(json));
    }

    [Fact]
    public void Plan_ThroughJson_IsTheSame()
    {
        string json = JsonSerializer.Serialize(SeasonFiles.DemoPlan, HortiCalcJsonContext.Default.SeasonPlan);
        SeasonPlan read = JsonSerializer.Deserialize(json, HortiCalcJsonContext.Default.SeasonPlan)!;
        Assert.Equal(SeasonFiles.DemoPlan, read);
        Assert.Equal(SeasonFiles.DemoPlan.ToText(MeasurementSystem.Metric, null), read.ToText(MeasurementSystem.Metric, null));
    }

    [Fact]
    public void Lines_ThroughJsonByThemselves_AreTheSame()
    {
        HortiCalcJsonContext json = HortiCalcJsonContext.Default;
        SeasonPlan plan = SeasonFiles.DemoPlan;
        Assert.All(plan.Supplies, line => Assert.Equal(line, Round(line, json.SupplyLine)));
        Assert.All(plan.Dates, line => Assert.Equal(line, Round(line, json.DateLine)));
        Assert.All(plan.Risks, line => Assert.Equal(line, Round(line, json.RiskLine)));
        Assert.All(plan.Cautions, line => Assert.Equal(line, Round(line, json.CautionLine)));
    }

    [Fact]
    public void Read_AcceptedChancesLeftOut_TakesTheUsual()
    {
        string without = SeasonFiles.DemoSite.Replace("\"chances\": {", "\"chances\": null, \"x\": {", StringComparison.Ordinal);
        Assert.Contains("unknown property \"x\"", Assert.Throws<MalformedInputException>(() => GardenFile.Read(without)).Problem, StringComparison.Ordinal);
        Garden usual = GardenFile.Read(GardenFile.Write(Invented.Bed(Invented.Crop())));
        Assert.Null(usual.Chances);
        Assert.Equal(10, AcceptedChances.Usual.ColdAfterPlantingOut.Percent);
    }

    [Theory]
    [InlineData("\"springYear\": 2027,", "\"springYear\": 2027", "\"site\"", "expected JSON: '\"' is invalid after a value")]
    [InlineData("\"springYear\": 2027", "\"springYear\": \"2027\"", "\"2027\"", "expected a whole number, found \"2027\"")]
    [InlineData("\"springYear\": 2027", "\"springYear\": 1066", "1066", "springYear was 1066; allowed: from 1900 to 9990")]
    [InlineData("\"springYear\"", "\"springYaer\"", "\"springYaer\"", "unknown property \"springYaer\"; known: site, springYear, crops, beds, pots, mixes, lime, chances, note")]
    [InlineData("\"texture\": \"Loam\"", "\"texture\": \"Lome\"", "\"Lome\"", "expected one of \"Sand\", \"LoamySand\"")]
    [InlineData("\"hurtAt\": { \"value\": 0, \"unit\": \"°C\" },", "", "{\n      \"name\": \"tomato\"", "expected the property \"hurtAt\" in this object, found none")]
    [InlineData("\"highestPh\": { \"value\": 6.8", "\"highestPh\": { \"value\": 5.0", "{ \"value\": 5.0", "highestPh was 5 pH; allowed: above the lowest, 5.5 pH")]
    [InlineData("\"highestPh\": { \"value\": 6.8", "\"highestPh\": { \"value\": 16.8", "{ \"value\": 16.8", "pH: value was 16.8 pH; allowed: from 0 to 14 pH")]
    [InlineData("\"crops\": [", "\"crops\": null, \"beds\": [", "null", "expected a value for \"crops\", found null")]
    [InlineData("\"crop\": \"tomato\"", "\"crop\": \"tomatoe\"", "[\n    {\n      \"name\": \"wall bed\"", "beds named the crop 'tomatoe'; allowed: tomato, sweet corn, cabbage, bush bean, lemon verbena, bay laurel")]
    [InlineData("\"kind\": \"rectangle\"", "\"kind\": \"rectangel\"", "\"rectangel\"", "expected one of \"rectangle\", \"circle\", \"sector\", \"triangle\", \"l-shape\", \"polygon\", \"ellipse\", \"trapezium\", \"ring\", \"border\", \"composite\", \"offsets\", found \"rectangel\"")]
    [InlineData("\"kind\": \"rectangle\", ", "", "{ \"width\"", "expected the property \"kind\" in this object, one of \"rectangle\", \"circle\", \"sector\", \"triangle\", \"l-shape\", \"polygon\"")]
    [InlineData("\"value\": 1.2, \"unit\": \"m\"", "\"value\": 1.2, \"unit\": \"metre\"", "{ \"value\": 1.2", "length: unknown unit \"metre\"; known: m, cm, mm, km, in, ft, yd")]
    [InlineData("\"value\": 1.2, \"unit\": \"m\"", "\"value\": -1.2, \"unit\": \"m\"", "{ \"value\": -1.2", "width was -1.2 m; allowed: greater than 0 m")]
    [InlineData("\"count\": 6", "\"count\": 6.5", "6.5", "expected a whole number, found 6.5")]
    [InlineData("\"count\": 6", "\"count\": 0", "0,", "count was 0; allowed: 1 or more")]
    [InlineData("sanitise.penn-state", "sanitise.nothing", "\"sanitise.nothing\"", "recipe was 'sanitise.nothing'; allowed: sanitise.penn-state,")]
    public void Read_OneSlipInTheDemo_GivesItsPlaceAndWhatWasExpected(string right, string wrong, string culprit, string problem)
    {
        int place = SeasonFiles.DemoSite.IndexOf(right, StringComparison.Ordinal);
        Assert.True(place >= 0, right);
        string json = SeasonFiles.DemoSite[..place] + wrong + SeasonFiles.DemoSite[(place + right.Length)..];
        MalformedInputException malformed = Assert.Throws<MalformedInputException>(() => GardenFile.Read(json));
        Assert.StartsWith(problem, malformed.Problem, StringComparison.Ordinal);
        Assert.DoesNotContain('\n', malformed.Message);

        // The culprit begins at the slip, a little after it, or with the object or list around it.
        string[] before = json[..json.LastIndexOf(culprit, place + wrong.Length + 12, StringComparison.Ordinal)].Split('\n');
        Assert.Equal((before.Length, before[^1].Length + 1), (malformed.Line, malformed.Column));
    }

    [Theory]
    [InlineData("", "expected an object { }, found nothing")]
    [InlineData(" \n ", "expected an object { }, found nothing")]
    [InlineData("[]", "expected an object { }, found []")]
    [InlineData("null", "expected an object { }, found null")]
    [InlineData("{}", "expected the property \"site\" in this object, found none")]
    public void Read_NoGardenAtAll_SaysWhatWasExpected(string json, string problem)
    {
        MalformedInputException malformed = Assert.Throws<MalformedInputException>(() => GardenFile.Read(json));
        Assert.Equal((1, 1, problem), (malformed.Line, malformed.Column, malformed.Problem));
    }

    [Fact]
    public void Read_FaultAfterLettersOfTwoBytes_CountsCharacters()
    {
        string json = "{\"note\": \"äöü\", \"springYear\": \"x\"}";
        Assert.Equal(json.IndexOf("\"x\"", StringComparison.Ordinal) + 1, Assert.Throws<MalformedInputException>(() => GardenFile.Read(json)).Column);
    }

    [Fact]
    public void SourceKind_Given_PrintsAsGiven() =>
        Assert.Equal("the tests, invented for a test (as given)", Invented.Source.ToString());

    private static T Round<T>(T value, System.Text.Json.Serialization.Metadata.JsonTypeInfo<T> type) =>
        JsonSerializer.Deserialize(JsonSerializer.Serialize(value, type), type)!;
}
