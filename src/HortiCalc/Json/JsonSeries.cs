using System.Globalization;
using System.Text.Json;

namespace HortiCalc.Json;

/// <summary>Reads and writes the parts that the series have in common: dates, and numbers with <c>null</c> for what is missing.</summary>
internal static class JsonSeries
{
    public static DateOnly Date(ref Utf8JsonReader reader, string name, string property) =>
        reader.TokenType == JsonTokenType.String
        && DateOnly.TryParseExact(reader.GetString(), "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out DateOnly date)
            ? date
            : throw new JsonException($"{name}: expected a date such as \"2024-02-28\" for \"{property}\".");

    public static List<DateOnly> Dates(ref Utf8JsonReader reader, string name, string property)
    {
        RequireList(ref reader, name, property);
        List<DateOnly> dates = [];
        while (reader.Read() && reader.TokenType != JsonTokenType.EndArray)
            dates.Add(Date(ref reader, name, property));
        return dates;
    }

    public static double[] Numbers(ref Utf8JsonReader reader, string name, string property)
    {
        RequireList(ref reader, name, property);
        List<double> numbers = [];
        while (reader.Read() && reader.TokenType != JsonTokenType.EndArray)
        {
            numbers.Add(reader.TokenType switch
            {
                JsonTokenType.Null => double.NaN,
                JsonTokenType.Number when reader.TryGetDouble(out double number) => number,
                _ => throw new JsonException($"{name}: expected numbers or null in \"{property}\", found {reader.TokenType}."),
            });
        }

        return [.. numbers];
    }

    public static string Text(ref Utf8JsonReader reader, string name, string property) => reader.TokenType == JsonTokenType.String
        ? reader.GetString()!
        : throw new JsonException($"{name}: expected a text for \"{property}\", found {reader.TokenType}.");

    public static string Text(DateOnly date) => date.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);

    public static void Write(Utf8JsonWriter writer, string property, ReadOnlySpan<double> values)
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

    public static void Write(Utf8JsonWriter writer, string property, IReadOnlyList<DateOnly> dates)
    {
        writer.WriteStartArray(property);
        foreach (DateOnly date in dates)
            writer.WriteStringValue(Text(date));
        writer.WriteEndArray();
    }

    private static void RequireList(ref Utf8JsonReader reader, string name, string property)
    {
        if (reader.TokenType != JsonTokenType.StartArray)
            throw new JsonException($"{name}: expected a list for \"{property}\", found {reader.TokenType}.");
    }
}
