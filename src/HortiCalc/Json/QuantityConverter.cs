using System.Buffers;
using System.Text;
using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Serialization;
using System.Text.Unicode;
using HortiCalc.Units;

namespace HortiCalc.Json;

/// <summary>
/// Reads and writes a quantity as an object with its value and the abbreviation of its unit, every digit kept:
/// <c>{"value":1.5,"unit":"kg"}</c>. A unit is also read in its ASCII spelling: <c>m2</c> for m², <c>degC</c> for °C.
/// </summary>
/// <typeparam name="T">The quantity.</typeparam>
/// <param name="name">The quantity's name, for messages.</param>
/// <param name="write">The value and the unit's abbreviation of a quantity.</param>
/// <param name="units">For each abbreviation, how a quantity is made of a value in that unit.</param>
internal abstract class QuantityConverter<T>(
    string name, Func<T, (double Value, string Unit)> write, IReadOnlyDictionary<string, Func<double, T>> units) : JsonConverter<T>
{
    // °, ², ³ and · stay as they are, whatever encoder the application has chosen for the rest.
    private static readonly JavaScriptEncoder Readable = JavaScriptEncoder.Create(UnicodeRanges.BasicLatin, UnicodeRanges.Latin1Supplement);

    private readonly Dictionary<string, JsonEncodedText> written =
        units.Keys.ToDictionary(unit => unit, unit => JsonEncodedText.Encode(unit, Readable));

    private readonly Dictionary<string, Func<double, T>> makers = units
        .Concat(units.Select(unit => KeyValuePair.Create(UnitSpelling.Ascii(unit.Key), unit.Value)))
        .DistinctBy(unit => unit.Key)
        .ToDictionary();

    /// <summary>A quantity of this library, in the units of its notation.</summary>
    protected QuantityConverter(QuantityNotation<T> notation)
        : this(
            notation.Name,
            quantity => (notation.Metric.ValueIn(quantity), notation.Metric.Abbreviation),
            notation.Units.ToDictionary(unit => unit.Abbreviation, unit => unit.Make))
    {
    }

    /// <summary>The units that are read, as they are written.</summary>
    public IEnumerable<string> Units => units.Keys;

    public override T Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options)
    {
        double? value = null;
        string? unit = null;
        if (reader.TokenType != JsonTokenType.StartObject)
            throw new JsonException($"{name}: expected an object such as {Example}, found {Found(ref reader)}.");
        while (reader.Read() && reader.TokenType == JsonTokenType.PropertyName)
        {
            string property = reader.GetString()!;
            reader.Read();
            switch (property)
            {
                case "value" when value is null:
                    value = reader.TokenType == JsonTokenType.Number && reader.TryGetDouble(out double number) && double.IsFinite(number)
                        ? number
                        : throw new JsonException($"{name}: expected a finite number for \"value\", found {Found(ref reader)}.");
                    break;
                case "unit" when unit is null:
                    unit = reader.TokenType == JsonTokenType.String
                        ? reader.GetString()
                        : throw new JsonException($"{name}: expected a text for \"unit\", found {Found(ref reader)}.");
                    break;
                case "value" or "unit":
                    throw new JsonException($"{name}: \"{property}\" is given twice; expected {Example}.");
                default:
                    throw new JsonException($"{name}: unknown property \"{property}\"; expected {Example}.");
            }
        }

        if (value is null || unit is null)
            throw new JsonException($"{name}: \"{(value is null ? "value" : "unit")}\" is missing; expected {Example}.");
        if (!makers.TryGetValue(unit, out Func<double, T>? make))
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
        writer.WriteString("unit", written[unit]);
        writer.WriteEndObject();
    }

    private static string Found(ref Utf8JsonReader reader) => reader.TokenType switch
    {
        JsonTokenType.StartObject => "an object",
        JsonTokenType.StartArray => "a list",
        JsonTokenType.String => $"the text \"{reader.GetString()}\"",
        _ => Encoding.UTF8.GetString(reader.HasValueSequence ? reader.ValueSequence.ToArray() : reader.ValueSpan),
    };

    private string Example => $"{{\"value\":1.5,\"unit\":\"{units.Keys.First()}\"}}";
}
