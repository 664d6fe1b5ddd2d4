using System.Text.Json;
using System.Text.Json.Serialization;
using HortiCalc.Climate;

namespace HortiCalc.Json;

/// <summary>A day of the year as month and day, two digits each: <c>"04-22"</c>.</summary>
internal sealed class MonthDayConverter : JsonConverter<MonthDay>
{
    public override MonthDay Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options)
    {
        string? text = reader.TokenType == JsonTokenType.String ? reader.GetString() : null;
        return MonthDay.TryParse(text, out MonthDay day)
            ? day
            : throw new JsonException($"A day of the year must be a text of month and day, as in \"04-22\"; found {text ?? reader.TokenType.ToString()}.");
    }

    public override void Write(Utf8JsonWriter writer, MonthDay value, JsonSerializerOptions options) =>
        writer.WriteStringValue(value.ToString("O", null));
}
