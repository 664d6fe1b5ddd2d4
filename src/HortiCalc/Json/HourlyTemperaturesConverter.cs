using System.Text.Json;
using System.Text.Json.Serialization;
using HortiCalc.Climate;
using UnitsNet.Units;

namespace HortiCalc.Json;

/// <summary>
/// Reads and writes a series of hours with one unit for all, every digit kept and <c>null</c> for what is missing:
/// <c>{"start":"2024-02-28T00:00","unit":"°C","values":[1.5,null]}</c>. It is written in Celsius.
/// </summary>
internal sealed class HourlyTemperaturesConverter : JsonConverter<HourlyTemperatures>
{
    private const string Name = "hourly temperatures";
    private const string Example = """{"start":"2024-02-28T00:00","unit":"°C","values":[1.5,null]}""";

    public override HourlyTemperatures Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options)
    {
        DateTime? start = null;
        TemperatureUnit? unit = null;
        double[]? values = null;
        if (reader.TokenType != JsonTokenType.StartObject)
            throw new JsonException($"{Name}: expected an object such as {Example}, found {reader.TokenType}.");
        while (reader.Read() && reader.TokenType == JsonTokenType.PropertyName)
        {
            string property = reader.GetString()!;
            reader.Read();
            switch (property)
            {
                case "start":
                    start = JsonHours.Hour(ref reader, Name, property);
                    break;
                case "unit":
                    unit = JsonSeries.Text(ref reader, Name, property) switch
                    {
                        "°C" => TemperatureUnit.DegreeCelsius,
                        "°F" => TemperatureUnit.DegreeFahrenheit,
                        "K" => TemperatureUnit.Kelvin,
                        string other => throw new JsonException($"{Name}: unknown unit \"{other}\"; known: °C, °F, K."),
                    };
                    break;
                case "values":
                    values = JsonSeries.Numbers(ref reader, Name, property);
                    break;
                default:
                    throw new JsonException($"{Name}: unknown property \"{property}\"; expected {Example}.");
            }
        }

        try
        {
            return HourlyTemperatures.Create(
                start ?? throw Absent("start"), values ?? throw Absent("values"), unit ?? throw Absent("unit"));
        }
        catch (ArgumentException refused)
        {
            throw new JsonException($"{Name}: {refused.Message}", refused);
        }
    }

    public override void Write(Utf8JsonWriter writer, HourlyTemperatures value, JsonSerializerOptions options)
    {
        writer.WriteStartObject();
        writer.WriteString("start", JsonHours.Text(value.Start));
        writer.WriteString("unit", "°C");
        JsonSeries.Write(writer, "values", value.Celsius);
        writer.WriteEndObject();
    }

    private static JsonException Absent(string property) => new($"{Name}: \"{property}\" is missing; expected {Example}.");
}
