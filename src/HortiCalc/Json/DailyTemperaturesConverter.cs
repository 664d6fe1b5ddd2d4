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
                    start = JsonSeries.Date(ref reader, Name, property);
                    break;
                case "unit":
                    unit = Unit(JsonSeries.Text(ref reader, Name, property));
                    break;
                case "minima":
                    minima = JsonSeries.Numbers(ref reader, Name, property);
                    break;
                case "maxima":
                    maxima = JsonSeries.Numbers(ref reader, Name, property);
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
        writer.WriteString("start", JsonSeries.Text(value.Start));
        writer.WriteString("unit", "°C");
        JsonSeries.Write(writer, "minima", value.MinimaCelsius);
        JsonSeries.Write(writer, "maxima", value.MaximaCelsius);
        writer.WriteEndObject();
    }

    private static TemperatureUnit Unit(string text) => text switch
    {
        "°C" => TemperatureUnit.DegreeCelsius,
        "°F" => TemperatureUnit.DegreeFahrenheit,
        "K" => TemperatureUnit.Kelvin,
        _ => throw new JsonException($"{Name}: unknown unit \"{text}\"; known: °C, °F, K."),
    };
}
