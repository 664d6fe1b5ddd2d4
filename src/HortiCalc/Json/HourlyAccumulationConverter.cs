using System.Text.Json;
using System.Text.Json.Serialization;
using System.Text.Json.Serialization.Metadata;
using HortiCalc.Climate;
using HortiCalc.Evidence;

namespace HortiCalc.Json;

/// <summary>
/// Reads and writes a count of hours as how it was counted and what each hour adds, with <c>null</c> for a missing one. Sums and cautions follow
/// from these.
/// </summary>
internal sealed class HourlyAccumulationConverter : JsonConverter<HourlyAccumulation>
{
    private const string Name = "hourly accumulation";

    public override HourlyAccumulation Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options)
    {
        DateTime? start = null;
        Method? method = null;
        AccumulationUnit? unit = null;
        double[]? hourly = null;
        if (reader.TokenType != JsonTokenType.StartObject)
            throw new JsonException($"{Name}: expected an object, found {reader.TokenType}.");
        while (reader.Read() && reader.TokenType == JsonTokenType.PropertyName)
        {
            string property = reader.GetString()!;
            reader.Read();
            switch (property)
            {
                case "start":
                    start = JsonHours.Hour(ref reader, Name, property);
                    break;
                case "method":
                    method = JsonSerializer.Deserialize(ref reader, Info(options));
                    break;
                case "unit":
                    unit = Unit(JsonSeries.Text(ref reader, Name, property));
                    break;
                case "hourly":
                    hourly = JsonSeries.Numbers(ref reader, Name, property);
                    break;
                default:
                    throw new JsonException($"{Name}: unknown property \"{property}\".");
            }
        }

        try
        {
            return HourlyAccumulation.Restore(
                start ?? throw Absent("start"), method ?? throw Absent("method"), unit ?? throw Absent("unit"), hourly ?? throw Absent("hourly"));
        }
        catch (ArgumentException refused)
        {
            throw new JsonException($"{Name}: {refused.Message}", refused);
        }
    }

    public override void Write(Utf8JsonWriter writer, HourlyAccumulation value, JsonSerializerOptions options)
    {
        writer.WriteStartObject();
        writer.WriteString("start", JsonHours.Text(value.Start));
        writer.WritePropertyName("method");
        JsonSerializer.Serialize(writer, value.Method, Info(options));
        writer.WriteString("unit", value.Unit.ToString());
        JsonSeries.Write(writer, "hourly", value.Hourly);
        writer.WriteEndObject();
    }

    private static AccumulationUnit Unit(string text) => Enum.GetNames<AccumulationUnit>().Contains(text)
        ? Enum.Parse<AccumulationUnit>(text)
        : throw new JsonException($"{Name}: unknown \"unit\" \"{text}\"; known: {string.Join(", ", Enum.GetNames<AccumulationUnit>())}.");

    private static JsonTypeInfo<Method> Info(JsonSerializerOptions options) => (JsonTypeInfo<Method>)options.GetTypeInfo(typeof(Method));

    private static JsonException Absent(string property) => new($"{Name}: \"{property}\" is missing.");
}
