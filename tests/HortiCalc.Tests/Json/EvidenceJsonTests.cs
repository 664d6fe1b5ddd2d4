using System.Text.Encodings.Web;
using System.Text.Json;
using HortiCalc.Evidence;
using HortiCalc.Json;
using HortiCalc.Tests.Evidence;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Tests.Json;

public class EvidenceJsonTests
{
    private static readonly Method Open = new(
        "open", "open table", Samples.Source, new Domain("any soil", new DomainLimit("clay", 5, double.PositiveInfinity, "%"), new DomainLimit("t", double.NegativeInfinity, 30, "°C")));

    [Fact]
    public void RoundTrip_Estimates_OfEveryKindOfValue_AreEqual()
    {
        Same(Samples.Depth.AdjustedBy(Samples.Rule, depth => depth).WithCautions(Samples.Danger));
        Same(new Estimate<Mass>(Mass.FromPounds(3.3), Samples.Method));
        Same(new Estimate<AreaDensity>(AreaDensity.FromShortTonsPerAcre(1.5), Samples.Method));
        Same(new Estimate<Volume>(Volume.FromUsBushels(1), Samples.Method));
        Same(new Estimate<Temperature>(Temperature.FromDegreesFahrenheit(28), Samples.Method));
        Same(new Estimate<Duration>(Duration.FromHours(36), Samples.Method));
        Same(new Estimate<ThermalTime>(ThermalTime.FromFahrenheitDays(2700), Samples.Method));
        Same(new Estimate<Ph>(new Ph(6.4999), Samples.Method));
        Same(new Estimate<DateOnly>(new DateOnly(2024, 2, 29), Samples.Method));
        Same(new Estimate<int>(12, Open));
        Same(new Estimate<Area>(Area.FromSquareFeet(32), Samples.Method));
        Same(new Estimate<VolumeConcentration>(VolumeConcentration.FromPercent(3), Samples.Method));
        Same(new Estimate<MassFraction>(MassFraction.FromPercent(54), Samples.Method));
        Same(new Estimate<TemperatureDelta>(TemperatureDelta.FromDegreesFahrenheit(9), Samples.Method));
        Same(new Estimate<Angle>(Angle.FromDegrees(12.5), Samples.Method));
        Same(new Estimate<ReciprocalArea>(ReciprocalArea.FromInverseSquareFeet(4), Samples.Method));
        Same(new Estimate<ExchangeableCharge>(ExchangeableCharge.FromCentimolesPerKilogram(11), Samples.Method));
        Same(new Estimate<VolumetricCharge>(VolumetricCharge.FromCentimolesPerLitre(1.2), Samples.Method));
    }

    [Fact]
    public void RoundTrip_SourcesMethodsAndCautions_AreEqual()
    {
        Same(Samples.Source);
        Same(Source.CommonPractice("ten", "one part in ten"));
        Same(new Source("k", "t", "p", null, null, SourceKind.FromMemory));
        Same(Samples.Method);
        Same(Samples.Danger);
        Same(Open.Domain);
    }

    [Fact]
    public void Write_LimitWithoutEnd_NamesInfinity() => Assert.Contains(
        """{"parameter":"clay","low":5,"high":"Infinity","unit":"%"}""",
        JsonSerializer.Serialize(Open, HortiCalcJsonContext.Default.Options),
        StringComparison.Ordinal);

    [Fact]
    public void Write_AnEstimate_ReadsAsItsMembers()
    {
        string json = JsonSerializer.Serialize(new Estimate<int>(3, Samples.Method, cautions: [Samples.Note]), HortiCalcJsonContext.Default.Options);
        Assert.StartsWith("""{"value":3,"method":{"key":"sample-method","name":"sample table","source":{"key":"sample",""", json, StringComparison.Ordinal);
        Assert.Contains("\"kind\":\"Published\"", json, StringComparison.Ordinal);
        Assert.Contains("\"range\":null,\"adjustments\":[],\"cautions\":[{\"code\":\"sample.note\",\"level\":\"Note\",", json, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("""{"value":3}""")]
    [InlineData("""{"value":3,"method":null}""")]
    [InlineData("""{"value":"three"}""")]
    [InlineData("""{"value":3,"extra":1}""")]
    [InlineData("[]")]
    [InlineData("{")]
    public void Read_MalformedEstimate_IsRefused(string json) =>
        Assert.ThrowsAny<Exception>(() => JsonSerializer.Deserialize<Estimate<int>>(json, HortiCalcJsonContext.Default.Options));

    [Fact]
    public void Read_BadQuantityDeepInside_GivesItsPath()
    {
        string json = JsonSerializer.Serialize(Samples.Depth, HortiCalcJsonContext.Default.Options).Replace("\"unit\":\"m\"", "\"unit\":\"ell\"", StringComparison.Ordinal);
        JsonException refused = Assert.Throws<JsonException>(() => JsonSerializer.Deserialize<Estimate<Length>>(json, HortiCalcJsonContext.Default.Options));
        Assert.Contains("length: unknown unit \"ell\"", refused.Message, StringComparison.Ordinal);
        Assert.Equal("$.value", refused.Path);
    }

    [Fact]
    public void AddHortiCalc_ToAnApplicationsOptions_ServesBothContexts()
    {
        JsonSerializerOptions options = new() { TypeInfoResolver = GardenJsonContext.Default, WriteIndented = false };
        Assert.Same(options, options.AddHortiCalc());
        Garden garden = new() { Name = "Süd", Area = Area.FromSquareMeters(12), Depth = Samples.Depth };
        string json = JsonSerializer.Serialize(garden, options);
        Assert.Contains("""
            "Area":{"value":12,"unit":"m²"}
            """.Trim(), json, StringComparison.Ordinal);
        Garden back = JsonSerializer.Deserialize<Garden>(json, options)!;
        Assert.Equal(garden.Depth, back.Depth);
        Assert.Equal(garden.Area, back.Area);
        Assert.Null(back.Border);
        Assert.Equal(Length.FromFeet(3), JsonSerializer.Deserialize<Garden>("""{"Border":{"value":3,"unit":"ft"}}""", options)!.Border);
        Assert.Equal(Samples.Source, JsonSerializer.Deserialize<Source>(JsonSerializer.Serialize(Samples.Source, options), options));
    }

    [Fact]
    public void AddHortiCalc_ToNothingOrToOptionsInUse_IsRefused()
    {
        Assert.Equal("options", Assert.Throws<ArgumentNullException>(() => HortiCalcJson.AddHortiCalc(null!)).ParamName);
        JsonSerializerOptions used = new() { TypeInfoResolver = GardenJsonContext.Default };
        used.MakeReadOnly();
        Assert.Throws<InvalidOperationException>(() => used.AddHortiCalc());
    }

    [Fact]
    public void Options_CopiedFromTheContext_CanBeChanged()
    {
        JsonSerializerOptions options = new(HortiCalcJsonContext.Default.Options) { WriteIndented = true, Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping };
        string json = JsonSerializer.Serialize(Samples.Depth, options);
        Assert.Contains("\n", json, StringComparison.Ordinal);
        Assert.Equal(Samples.Depth, JsonSerializer.Deserialize<Estimate<Length>>(json, options));
    }

    private static void Same<T>(T value)
    {
        string json = JsonSerializer.Serialize(value, HortiCalcJsonContext.Default.Options);
        T back = JsonSerializer.Deserialize<T>(json, HortiCalcJsonContext.Default.Options)!;
        Assert.Equal(value, back);
        Assert.Equal(json, JsonSerializer.Serialize(back, HortiCalcJsonContext.Default.Options));
    }
}
