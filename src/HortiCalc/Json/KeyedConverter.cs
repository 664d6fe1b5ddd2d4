using System.Text.Json;
using System.Text.Json.Serialization;

namespace HortiCalc.Json;

/// <summary>Reads and writes a published method by its key, as a text.</summary>
internal abstract class KeyedConverter<T>(string name, string example, Func<string, T> fromKey, Func<T, string> keyOf) : JsonConverter<T>
{
    public override T Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options)
    {
        if (reader.TokenType != JsonTokenType.String)
            throw new JsonException($"{name}: expected a text such as \"{example}\", found {reader.TokenType}.");
        try
        {
            return fromKey(reader.GetString()!);
        }
        catch (ArgumentException refused)
        {
            throw new JsonException($"{name}: {refused.Message}", refused);
        }
    }

    public override void Write(Utf8JsonWriter writer, T value, JsonSerializerOptions options) => writer.WriteStringValue(keyOf(value));
}
