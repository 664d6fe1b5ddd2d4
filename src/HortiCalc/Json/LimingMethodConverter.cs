using System.Text.Json;
using System.Text.Json.Serialization;
using System.Text.Json.Serialization.Metadata;
using HortiCalc.Soil;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Json;

/// <summary>
/// Reads and writes a liming method by its kind, and the inputs of its own where it has any: <c>{"kind":"uk-garden-texture"}</c>.
/// The types of the methods are internal, so the generator cannot do this.
/// </summary>
internal sealed class LimingMethodConverter : JsonConverter<LimingMethod>
{
    private const string NorthCarolina = "north-carolina";
    private const string BrazilBaseSaturation = "brazil-base-saturation";
    private const string BrazilAluminium = "brazil-aluminium";
    private const string Cochrane = "cochrane-aluminium";

    private static readonly Dictionary<string, LimingMethod> WithoutInputs = new(StringComparer.Ordinal)
    {
        ["uk-garden-texture"] = LimingMethod.UkGardenTexture,
        ["us-garden-texture"] = LimingMethod.UsGardenTexture,
        ["australian-garden-texture"] = LimingMethod.AustralianGardenTexture,
        ["uk-per-ph-unit"] = LimingMethod.UkPerPhUnit,
        ["us-per-ph-unit"] = LimingMethod.UsPerPhUnit,
        ["penn-state-turf"] = LimingMethod.PennStateTurf,
        ["penn-state-agronomic"] = LimingMethod.PennStateAgronomic,
        ["oregon-sikora"] = LimingMethod.OregonSikora,
        ["iowa-pm-1688"] = LimingMethod.Iowa,
        ["teagasc-smp"] = LimingMethod.Teagasc,
        ["buffer-capacity"] = LimingMethod.BufferCapacity,
        ["garden-calcium"] = LimingMethod.GardenCalcium,
        ["adams-evans"] = LimingMethod.AdamsEvans,
    };

    // The inputs that each kind takes: all of them, save that North Carolina's may be left out.
    private static readonly Dictionary<string, string[]> InputsOf = new(StringComparer.Ordinal)
    {
        [NorthCarolina] = ["residual"],
        [BrazilBaseSaturation] = ["targetSaturation"],
        [BrazilAluminium] = ["factor", "tolerated", "calciumAndMagnesium"],
        [Cochrane] = ["tolerated"],
    };

    public override LimingMethod Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options)
    {
        if (reader.TokenType != JsonTokenType.StartObject)
            throw new JsonException($"liming method: expected an object such as {{\"kind\":\"uk-garden-texture\"}}, found {reader.TokenType}.");
        string? kind = null;
        ResidualLime? residual = null;
        Ratio? targetSaturation = null;
        Ratio? tolerated = null;
        double? factor = null;
        VolumetricCharge? calciumAndMagnesium = null;
        HashSet<string> given = new(StringComparer.Ordinal);
        while (reader.Read() && reader.TokenType == JsonTokenType.PropertyName)
        {
            string property = reader.GetString()!;
            reader.Read();
            switch (property)
            {
                case "kind" when reader.TokenType == JsonTokenType.String:
                    kind = reader.GetString();
                    continue;
                case "residual":
                    residual = JsonSerializer.Deserialize(ref reader, Info<ResidualLime>(options));
                    break;
                case "targetSaturation":
                    targetSaturation = JsonSerializer.Deserialize(ref reader, Info<Ratio>(options));
                    break;
                case "tolerated":
                    tolerated = JsonSerializer.Deserialize(ref reader, Info<Ratio>(options));
                    break;
                case "factor" when reader.TokenType == JsonTokenType.Number:
                    factor = reader.GetDouble();
                    break;
                case "calciumAndMagnesium":
                    calciumAndMagnesium = JsonSerializer.Deserialize(ref reader, Info<VolumetricCharge>(options));
                    break;
                default:
                    throw new JsonException(
                        $"liming method: \"{property}\" is not a property of that form; expected a text for \"kind\", and the inputs of the kind.");
            }

            given.Add(property);
        }

        string[] taken = kind is not null && InputsOf.TryGetValue(kind, out string[]? inputs) ? inputs : [];
        if (given.Except(taken).FirstOrDefault() is { } odd && kind is not null && IsKnown(kind))
            throw new JsonException($"liming method: \"{kind}\" takes no \"{odd}\".");
        if (kind is not (null or NorthCarolina) && taken.Except(given).FirstOrDefault() is { } lacking)
            throw new JsonException($"liming method: \"{kind}\" needs \"{lacking}\".");
        try
        {
            return kind switch
            {
                NorthCarolina => LimingMethod.NorthCarolina(residual),
                BrazilBaseSaturation => LimingMethod.BrazilBaseSaturation(targetSaturation!.Value),
                BrazilAluminium => LimingMethod.BrazilAluminium(factor!.Value, tolerated!.Value, calciumAndMagnesium!.Value),
                Cochrane => LimingMethod.Cochrane(tolerated!.Value),
                not null when WithoutInputs.TryGetValue(kind, out LimingMethod? method) => method,
                _ => throw new JsonException(
                    $"liming method: unknown kind \"{kind}\"; known: {string.Join(", ", WithoutInputs.Keys.Concat(InputsOf.Keys))}."),
            };
        }
        catch (ArgumentException refused)
        {
            throw new JsonException($"liming method: {refused.Message}", refused);
        }
    }

    public override void Write(Utf8JsonWriter writer, LimingMethod value, JsonSerializerOptions options)
    {
        writer.WriteStartObject();
        switch (value)
        {
            case NorthCarolinaLiming northCarolina:
                writer.WriteString("kind", NorthCarolina);
                if (northCarolina.Residual is not null)
                    WriteInput(writer, "residual", northCarolina.Residual, options);
                break;
            case BrazilBaseSaturationLiming saturation:
                writer.WriteString("kind", BrazilBaseSaturation);
                WriteInput(writer, "targetSaturation", saturation.TargetSaturation, options);
                break;
            case BrazilAluminiumLiming aluminium:
                writer.WriteString("kind", BrazilAluminium);
                writer.WriteNumber("factor", aluminium.Factor);
                WriteInput(writer, "tolerated", aluminium.Tolerated, options);
                WriteInput(writer, "calciumAndMagnesium", aluminium.CalciumAndMagnesium, options);
                break;
            case CochraneLiming cochrane:
                writer.WriteString("kind", Cochrane);
                WriteInput(writer, "tolerated", cochrane.Tolerated, options);
                break;
            default:
                writer.WriteString("kind", WithoutInputs.Single(known => known.Value == value).Key);
                break;
        }

        writer.WriteEndObject();
    }

    private static bool IsKnown(string kind) => WithoutInputs.ContainsKey(kind) || InputsOf.ContainsKey(kind);

    private static void WriteInput<T>(Utf8JsonWriter writer, string name, T value, JsonSerializerOptions options)
    {
        writer.WritePropertyName(name);
        JsonSerializer.Serialize(writer, value, Info<T>(options));
    }

    private static JsonTypeInfo<T> Info<T>(JsonSerializerOptions options) => (JsonTypeInfo<T>)options.GetTypeInfo(typeof(T));
}
