using System.Text.Json;
using System.Text.Json.Serialization.Metadata;
using HortiCalc.Beds;
using HortiCalc.Containers;
using HortiCalc.Evidence;
using HortiCalc.Json;
using HortiCalc.Reference;
using HortiCalc.Season;
using HortiCalc.Soil;
using HortiCalc.Tests.Evidence;
using UnitsNet;

namespace HortiCalc.Tests.Json;

/// <summary>What an application meets at the door of JSON.</summary>
public class HortiCalcJsonTests
{
    private const string Rectangle = """{"width":{"value":1,"unit":"m"},"length":{"value":2,"unit":"m"},"kind":"rectangle"}""";

    private sealed record Plot(string Name, Bed Bed, SoilTexture Texture, Estimate<Length> Depth);

    [Fact]
    public void Serialize_AShapeKnownAsItself_IsReadAsAShapeAndAsItself()
    {
        RectangleBed bed = Bed.Rectangle(Length.FromFeet(4), Length.FromFeet(8));
        string json = HortiCalcJson.Serialize(bed);
        Assert.StartsWith("{\"kind\":\"rectangle\",", json, StringComparison.Ordinal);
        Assert.Equal(json, HortiCalcJson.Serialize<Bed>(bed));
        Assert.Equal(bed, HortiCalcJson.Deserialize<Bed>(json));
        Assert.Equal(bed, HortiCalcJson.Deserialize<RectangleBed>(json));
        Assert.Equal("RectangleBed is not a CircleBed.", Assert.Throws<JsonException>(() => HortiCalcJson.Deserialize<CircleBed>(json)).Message);
    }

    [Fact]
    public void Deserialize_KindBehindTheMembers_IsRead() =>
        Assert.Equal(Bed.Rectangle(Length.FromMeters(1), Length.FromMeters(2)), HortiCalcJson.Deserialize<Bed>(Rectangle));

    [Theory]
    [InlineData("""{"diameter":{"value":1,"unit":"m"}}""", "discriminator")]
    [InlineData("""{"kind":"heart"}""", "heart")]
    [InlineData("""{"kind":"circle","diameter":{"value":-1,"unit":"m"}}""", "diameter was -1 m; allowed: greater than 0 m")]
    [InlineData("""{"kind":"circle","diameter":{"value":1,"unit":"ell"}}""", "length: unknown unit \"ell\"")]
    [InlineData("""{"kind":"circle","diameter":1}""", "length: expected an object")]
    [InlineData("""{"kind":"circle"}""", "diameter")]
    [InlineData("""{"kind":"circle","diameter":{"value":1,"unit":"m"},"depth":2}""", "depth")]
    [InlineData("""{"kind":"polygon","corners":[null,null,null]}""", "BedCorner")]
    [InlineData("null", "null is not a Bed")]
    [InlineData("", "JSON")]
    public void Deserialize_WhatIsNoBed_SaysWhyAsOneKindOfException(string json, string reason) =>
        Assert.Contains(reason, Assert.Throws<JsonException>(() => HortiCalcJson.Deserialize<Bed>(json)).Message, StringComparison.Ordinal);

    [Fact]
    public void Deserialize_AListWithNothingInAPlace_IsRefusedByItsName()
    {
        string json = HortiCalcJson.Serialize(MediumRecipes.JohnInnesSeed).Replace("""{"material":"peat","parts":1}""", "null", StringComparison.Ordinal);
        Assert.Contains(
            "components has no item at 1", Assert.Throws<JsonException>(() => HortiCalcJson.Deserialize<MediumRecipe>(json)).Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("\"crops\": [", "\"crops\": [ null, ", "crops has no item at 0")]
    [InlineData("\"kind\": \"days\", \"days\": 70", "\"days\": 70", "expected the property \"kind\" in this object")]
    [InlineData("\"kind\": \"days\", \"days\": 70", "\"days\": 70, \"kind\": \"moons\"", "expected one of")]
    [InlineData("\"kind\": \"days\", \"days\": 70", "\"days\": \"many\", \"kind\": \"days\"", "expected a whole number, found \"many\"")]
    public void Read_AGardenWithAFault_NamesIt(string sound, string faulty, string reason)
    {
        string text = Demo();
        Assert.Contains(sound, text, StringComparison.Ordinal);
        MalformedInputException refused = Assert.Throws<MalformedInputException>(() => GardenFile.Read(text.Replace(sound, faulty, StringComparison.Ordinal)));
        Assert.Contains(reason, refused.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Read_AGardenWithItsKindsBehindTheirMembers_IsTheSameGarden()
    {
        string turned = Demo().Replace("\"kind\": \"days\", \"days\": 70", "\"days\": 70, \"kind\": \"days\"", StringComparison.Ordinal);
        Assert.NotEqual(Demo(), turned);
        Assert.Equal(GardenFile.Read(Demo()), GardenFile.Read(turned));
    }

    [Fact]
    public void Serialize_ATypeOfSomebodyElse_IsRefusedByName() =>
        Assert.Contains("System.Uri", Assert.Throws<NotSupportedException>(() => HortiCalcJson.Serialize(new Uri("a", UriKind.Relative))).Message, StringComparison.Ordinal);

    [Fact]
    public void AddHortiCalc_WithReflection_ServesARecordOfTheApplication()
    {
        JsonSerializerOptions options = new(JsonSerializerDefaults.Web) { TypeInfoResolver = new DefaultJsonTypeInfoResolver() };
        options.AddHortiCalc();
        Plot plot = new("south", Bed.Circle(Length.FromInches(6)), SoilTexture.SandyLoam, Samples.Depth.WithCautions(Samples.Danger));
        string json = JsonSerializer.Serialize(plot, options);
        Assert.Contains("\"texture\":\"SandyLoam\"", json, StringComparison.Ordinal);
        Assert.Contains("\"level\":\"Danger\"", json, StringComparison.Ordinal);
        Assert.Equal(plot, JsonSerializer.Deserialize<Plot>(json, options));
    }

    [Fact]
    public void Options_EveryPublicEnumeration_IsAWordForAnApplicationToo()
    {
        JsonSerializerOptions options = new JsonSerializerOptions { TypeInfoResolver = new DefaultJsonTypeInfoResolver() }.AddHortiCalc();
        Type[] enumerations = [.. typeof(Bed).Assembly.GetExportedTypes().Where(type => type.IsEnum)];
        Assert.NotEmpty(enumerations);
        Assert.All(enumerations, type => Assert.Equal(
            $"\"{Enum.GetNames(type)[0]}\"", JsonSerializer.Serialize(Enum.GetValues(type).GetValue(0), type, options)));
    }

    private static string Demo() => File.ReadAllText(Path.Combine(ReferenceLibrary.RepositoryRoot, "shared", "demo", "site.json"));
}
