using System.Text.Json;
using System.Text.Json.Serialization;

namespace HortiCalc.Json;

/// <summary>Reads and writes a method that is one of a known set by its key.</summary>
/// <typeparam name="T">The type of the methods.</typeparam>
/// <param name="name">What the methods are, for messages.</param>
/// <param name="keyOf">The key of a method.</param>
/// <param name="fromKey">The method of a key; refuses an unknown one with the known ones.</param>
internal abstract class KeyedConverter<T>(string name, Func<T, string> keyOf, Func<string, T> fromKey) : JsonConverter<T>
{
    public override T Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options)
    {
        if (reader.TokenType != JsonTokenType.String)
            throw new JsonException($"{name}: expected the key of one as a text, found {reader.TokenType}.");
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
