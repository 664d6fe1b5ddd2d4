using System.Text.Json;
using System.Text.Json.Serialization;
using HortiCalc.Climate;

namespace HortiCalc.Json;

/// <summary>Reads and writes a method of counting degree days by its key: <c>"single-sine"</c>.</summary>
internal sealed class DegreeDayMethodConverter : JsonConverter<DegreeDayMethod>
{
    public override DegreeDayMethod Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options)
    {
        if (reader.TokenType != JsonTokenType.String)
            throw new JsonException($"degree-day method: expected a text such as \"single-sine\", found {reader.TokenType}.");
        try
        {
            return DegreeDayMethod.FromKey(reader.GetString()!);
        }
        catch (ArgumentException refused)
        {
            throw new JsonException($"degree-day method: {refused.Message}", refused);
        }
    }

    public override void Write(Utf8JsonWriter writer, DegreeDayMethod value, JsonSerializerOptions options) =>
        writer.WriteStringValue(value.Evidence.Key);
}
