using System.Text.Json;
using System.Text.Json.Serialization;
using System.Text.Json.Serialization.Metadata;
using HortiCalc.Soil;

namespace HortiCalc.Json;

/// <summary>
/// Reads and writes a liming method by its kind, and the inputs of its own where it has any: <c>{"kind":"uk-garden-texture"}</c>.
/// The types of the methods are internal, so the generator cannot do this.
/// </summary>
internal sealed class LimingMethodConverter : JsonConverter<LimingMethod>
{
    private const string NorthCarolina = "north-carolina";

    private static readonly Dictionary<string, LimingMethod> WithoutInputs = new(StringComparer.Ordinal)
    {
        ["uk-garden-texture"] = LimingMethod.UkGardenTexture,
        ["us-garden-texture"] = LimingMethod.UsGardenTexture,
        ["australian-garden-texture"] = LimingMethod.AustralianGardenTexture,
        ["penn-state-turf"] = LimingMethod.PennStateTurf,
        ["penn-state-agronomic"] = LimingMethod.PennStateAgronomic,
    };

    public override LimingMethod Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options)
    {
        if (reader.TokenType != JsonTokenType.StartObject)
            throw new JsonException($"liming method: expected an object such as {{\"kind\":\"uk-garden-texture\"}}, found {reader.TokenType}.");
        string? kind = null;
        ResidualLime? residual = null;
        while (reader.Read() && reader.TokenType == JsonTokenType.PropertyName)
        {
            string property = reader.GetString()!;
            reader.Read();
            switch (property)
            {
                case "kind" when reader.TokenType == JsonTokenType.String:
                    kind = reader.GetString();
                    break;
                case "residual":
                    residual = JsonSerializer.Deserialize(ref reader, Residual(options));
                    break;
                default:
                    throw new JsonException(
                        $"liming method: \"{property}\" is not a property of that form; "
                        + $"expected a text for \"kind\", and for {NorthCarolina} \"residual\".");
            }
        }

        return kind switch
        {
            NorthCarolina => LimingMethod.NorthCarolina(residual),
            not null when WithoutInputs.TryGetValue(kind, out LimingMethod? method) => residual is null
                ? method
                : throw new JsonException($"liming method: \"{kind}\" takes no \"residual\"."),
            _ => throw new JsonException(
                $"liming method: unknown kind \"{kind}\"; known: {string.Join(", ", WithoutInputs.Keys)}, {NorthCarolina}."),
        };
    }

    public override void Write(Utf8JsonWriter writer, LimingMethod value, JsonSerializerOptions options)
    {
        writer.WriteStartObject();
        if (value is NorthCarolinaLiming northCarolina)
        {
            writer.WriteString("kind", NorthCarolina);
            if (northCarolina.Residual is not null)
            {
                writer.WritePropertyName("residual");
                JsonSerializer.Serialize(writer, northCarolina.Residual, Residual(options));
            }
        }
        else
        {
            writer.WriteString("kind", WithoutInputs.Single(known => known.Value == value).Key);
        }

        writer.WriteEndObject();
    }

    private static JsonTypeInfo<ResidualLime> Residual(JsonSerializerOptions options) =>
        (JsonTypeInfo<ResidualLime>)options.GetTypeInfo(typeof(ResidualLime));
}
