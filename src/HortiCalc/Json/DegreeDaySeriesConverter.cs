using System.Text.Json;
using System.Text.Json.Serialization;
using System.Text.Json.Serialization.Metadata;
using HortiCalc.Climate;

namespace HortiCalc.Json;

/// <summary>
/// Reads and writes a series of degree days as how it was counted and what each day adds, with one unit for all and <c>null</c> for
/// a day left out. Sums and cautions follow from these.
/// </summary>
internal sealed class DegreeDaySeriesConverter : JsonConverter<DegreeDaySeries>
{
    private const string Name = "degree-day series";
    private const string CelsiusDays = "°C·d";

    public override DegreeDaySeries Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options)
    {
        DateOnly? start = null;
        DegreeDayThresholds? thresholds = null;
        DegreeDayMethod? method = null;
        UpperCutoff? cutoff = null;
        MissingDays? missingDays = null;
        List<DateOnly>? missing = null;
        string? unit = null;
        double[]? daily = null;
        if (reader.TokenType != JsonTokenType.StartObject)
            throw new JsonException($"{Name}: expected an object, found {reader.TokenType}.");
        while (reader.Read() && reader.TokenType == JsonTokenType.PropertyName)
        {
            string property = reader.GetString()!;
            reader.Read();
            switch (property)
            {
                case "start":
                    start = JsonSeries.Date(ref reader, Name, property);
                    break;
                case "thresholds":
                    thresholds = JsonSerializer.Deserialize(ref reader, Info<DegreeDayThresholds>(options));
                    break;
                case "method":
                    method = JsonSerializer.Deserialize(ref reader, Info<DegreeDayMethod>(options));
                    break;
                case "cutoff":
                    cutoff = Word<UpperCutoff>(ref reader, property);
                    break;
                case "missingDays":
                    missingDays = Word<MissingDays>(ref reader, property);
                    break;
                case "missing":
                    missing = JsonSeries.Dates(ref reader, Name, property);
                    break;
                case "unit":
                    unit = JsonSeries.Text(ref reader, Name, property);
                    break;
                case "daily":
                    daily = JsonSeries.Numbers(ref reader, Name, property);
                    break;
                default:
                    throw new JsonException($"{Name}: unknown property \"{property}\".");
            }
        }

        if (Required(unit, "unit") != CelsiusDays)
            throw new JsonException($"{Name}: unknown unit \"{unit}\"; known: {CelsiusDays}.");
        try
        {
            return DegreeDaySeries.Restore(
                Required(start, "start"),
                Required(thresholds, "thresholds"),
                Required(method, "method"),
                Required(cutoff, "cutoff"),
                Required(missingDays, "missingDays"),
                Required(missing, "missing"),
                Required(daily, "daily"));
        }
        catch (ArgumentException refused)
        {
            throw new JsonException($"{Name}: {refused.Message}", refused);
        }
    }

    public override void Write(Utf8JsonWriter writer, DegreeDaySeries value, JsonSerializerOptions options)
    {
        writer.WriteStartObject();
        writer.WriteString("start", JsonSeries.Text(value.Start));
        writer.WritePropertyName("thresholds");
        JsonSerializer.Serialize(writer, value.Thresholds, Info<DegreeDayThresholds>(options));
        writer.WriteString("method", value.Method.Evidence.Key);
        writer.WriteString("cutoff", value.Cutoff.ToString());
        writer.WriteString("missingDays", value.MissingDays.ToString());
        JsonSeries.Write(writer, "missing", value.Missing);
        writer.WriteString("unit", CelsiusDays);
        JsonSeries.Write(writer, "daily", value.DailyCelsiusDays);
        writer.WriteEndObject();
    }

    private static JsonTypeInfo<T> Info<T>(JsonSerializerOptions options) => (JsonTypeInfo<T>)options.GetTypeInfo(typeof(T));

    private static T Word<T>(ref Utf8JsonReader reader, string property)
        where T : struct, Enum
    {
        string text = JsonSeries.Text(ref reader, Name, property);
        return Enum.GetNames<T>().Contains(text)
            ? Enum.Parse<T>(text)
            : throw new JsonException($"{Name}: unknown \"{property}\" \"{text}\"; known: {string.Join(", ", Enum.GetNames<T>())}.");
    }

    private static T Required<T>(T? value, string property)
        where T : class => value ?? throw Absent(property);

    private static T Required<T>(T? value, string property)
        where T : struct => value ?? throw Absent(property);

    private static JsonException Absent(string property) => new($"{Name}: \"{property}\" is missing.");
}
