using System.Globalization;
using System.Text.Json;
using System.Text.Json.Serialization;
using HortiCalc.Climate;
using UnitsNet.Units;

namespace HortiCalc.Json;

/// <summary>
/// Reads and writes a series of days with one unit for all, every digit kept and <c>null</c> for what is missing:
/// <c>{"start":"2024-02-28","unit":"°C","minima":[1.5,null],"maxima":[9,null]}</c>. It is written in Celsius.
/// </summary>
internal sealed class DailyTemperaturesConverter : JsonConverter<DailyTemperatures>
{
    private const string Name = "daily temperatures";
    private const string Example = """{"start":"2024-02-28","unit":"°C","minima":[1.5,null],"maxima":[9,null]}""";

    public override DailyTemperatures Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options)
    {
        DateOnly? start = null;
        TemperatureUnit? unit = null;
        double[]? minima = null;
        double[]? maxima = null;
        if (reader.TokenType != JsonTokenType.StartObject)
            throw new JsonException($"{Name}: expected an object such as {Example}, found {reader.TokenType}.");
        while (reader.Read() && reader.TokenType == JsonTokenType.PropertyName)
        {
            string property = reader.GetString()!;
            reader.Read();
            switch (property)
            {
                case "start":
                    start = Date(ref reader);
                    break;
                case "unit":
                    unit = Unit(ref reader);
                    break;
                case "minima":
                    minima = Numbers(ref reader, property);
                    break;
                case "maxima":
                    maxima = Numbers(ref reader, property);
                    break;
                default:
                    throw new JsonException($"{Name}: unknown property \"{property}\"; expected {Example}.");
            }
        }

        if (start is null || unit is null || minima is null || maxima is null)
        {
            string absent = start is null ? "start" : unit is null ? "unit" : minima is null ? "minima" : "maxima";
            throw new JsonException($"{Name}: \"{absent}\" is missing; expected {Example}.");
        }

        try
        {
            return DailyTemperatures.Create(start.Value, minima, maxima, unit.Value);
        }
        catch (ArgumentException refused)
        {
            throw new JsonException($"{Name}: {refused.Message}", refused);
        }
    }

    public override void Write(Utf8JsonWriter writer, DailyTemperatures value, JsonSerializerOptions options)
    {
        writer.WriteStartObject();
        writer.WriteString("start", value.Start.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture));
        writer.WriteString("unit", "°C");
        Write(writer, "minima", value.MinimaCelsius);
        Write(writer, "maxima", value.MaximaCelsius);
        writer.WriteEndObject();
    }

    private static void Write(Utf8JsonWriter writer, string property, ReadOnlySpan<double> values)
    {
        writer.WriteStartArray(property);
        foreach (double value in values)
        {
            if (double.IsNaN(value))
                writer.WriteNullValue();
            else
                writer.WriteNumberValue(value);
        }

        writer.WriteEndArray();
    }

    private static DateOnly Date(ref Utf8JsonReader reader) =>
        reader.TokenType == JsonTokenType.String
        && DateOnly.TryParseExact(reader.GetString(), "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out DateOnly date)
            ? date
            : throw new JsonException($"{Name}: expected a date such as \"2024-02-28\" for \"start\".");

    private static TemperatureUnit Unit(ref Utf8JsonReader reader)
    {
        string? text = reader.TokenType == JsonTokenType.String ? reader.GetString() : null;
        return text switch
        {
            "°C" => TemperatureUnit.DegreeCelsius,
            "°F" => TemperatureUnit.DegreeFahrenheit,
            "K" => TemperatureUnit.Kelvin,
            _ => throw new JsonException($"{Name}: unknown unit \"{text}\"; known: °C, °F, K."),
        };
    }

    private static double[] Numbers(ref Utf8JsonReader reader, string property)
    {
        if (reader.TokenType != JsonTokenType.StartArray)
            throw new JsonException($"{Name}: expected a list of numbers for \"{property}\", found {reader.TokenType}.");
        List<double> numbers = [];
        while (reader.Read() && reader.TokenType != JsonTokenType.EndArray)
        {
            numbers.Add(reader.TokenType switch
            {
                JsonTokenType.Null => double.NaN,
                JsonTokenType.Number when reader.TryGetDouble(out double number) => number,
                _ => throw new JsonException($"{Name}: expected numbers or null in \"{property}\", found {reader.TokenType}."),
            });
        }

        return [.. numbers];
    }
}
