using System.Globalization;
using System.Text.Json;

namespace HortiCalc.Json;

/// <summary>Reads and writes an hour of a series as a text without a zone: <c>2024-02-28T13:00</c>.</summary>
internal static class JsonHours
{
    private const string Pattern = "yyyy-MM-ddTHH:mm";

    public static DateTime Hour(ref Utf8JsonReader reader, string name, string property) =>
        reader.TokenType == JsonTokenType.String
        && DateTime.TryParseExact(reader.GetString(), Pattern, CultureInfo.InvariantCulture, DateTimeStyles.None, out DateTime hour)
            ? hour
            : throw new JsonException($"{name}: expected an hour such as \"2024-02-28T13:00\" for \"{property}\".");

    public static string Text(DateTime hour) => hour.ToString(Pattern, CultureInfo.InvariantCulture);
}
