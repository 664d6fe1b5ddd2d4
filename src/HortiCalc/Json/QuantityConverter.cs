using System.Text.Json;
using System.Text.Json.Serialization;

namespace HortiCalc.Json;

/// <summary>
/// Reads and writes a quantity as an object with its value and the abbreviation of its unit, every digit kept:
/// <c>{"value":1.5,"unit":"kg"}</c>.
/// </summary>
/// <typeparam name="T">The quantity.</typeparam>
/// <param name="name">The quantity's name, for messages.</param>
/// <param name="write">The value and the unit's abbreviation of a quantity.</param>
/// <param name="units">For each abbreviation, how a quantity is made of a value in that unit.</param>
internal abstract class QuantityConverter<T>(
    string name, Func<T, (double Value, string Unit)> write, IReadOnlyDictionary<string, Func<double, T>> units) : JsonConverter<T>
{
    public override T Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options)
    {
        double? value = null;
        string? unit = null;
        if (reader.TokenType != JsonTokenType.StartObject)
            throw new JsonException($"{name}: expected an object such as {Example}, found {reader.TokenType}.");
        while (reader.Read() && reader.TokenType == JsonTokenType.PropertyName)
        {
            string property = reader.GetString()!;
            reader.Read();
            switch (property)
            {
                case "value":
                    value = reader.TokenType == JsonTokenType.Number && reader.TryGetDouble(out double number) && double.IsFinite(number)
                        ? number
                        : throw new JsonException($"{name}: expected a finite number for \"value\", found {reader.TokenType}.");
                    break;
                case "unit":
                    unit = reader.TokenType == JsonTokenType.String
                        ? reader.GetString()
                        : throw new JsonException($"{name}: expected a text for \"unit\", found {reader.TokenType}.");
                    break;
                default:
                    throw new JsonException($"{name}: unknown property \"{property}\"; expected {Example}.");
            }
        }

        if (value is null || unit is null)
            throw new JsonException($"{name}: \"{(value is null ? "value" : "unit")}\" is missing; expected {Example}.");
        if (!units.TryGetValue(unit, out Func<double, T>? make))
            throw new JsonException($"{name}: unknown unit \"{unit}\"; known: {string.Join(", ", units.Keys)}.");
        try
        {
            return make(value.Value);
        }
        catch (ArgumentException refused)
        {
            throw new JsonException($"{name}: {refused.Message}", refused);
        }
    }

    public override void Write(Utf8JsonWriter writer, T value, JsonSerializerOptions options)
    {
        (double number, string unit) = write(value);
        writer.WriteStartObject();
        writer.WriteNumber("value", number);
        writer.WriteString("unit", unit);
        writer.WriteEndObject();
    }

    private string Example => $"{{\"value\":1.5,\"unit\":\"{units.Keys.First()}\"}}";
}
