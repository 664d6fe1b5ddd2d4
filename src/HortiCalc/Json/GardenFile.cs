using System.Text;
using System.Text.Json;
using HortiCalc.Season;
using HortiCalc.Units;

namespace HortiCalc.Json;

/// <summary>Reads and writes a garden as JSON text that a person can edit.</summary>
public static class GardenFile
{
    /// <summary>Reads a garden.</summary>
    /// <param name="json">The text.</param>
    /// <returns>The garden.</returns>
    /// <exception cref="ArgumentNullException">The text is <see langword="null"/>.</exception>
    /// <exception cref="MalformedInputException">The text is not a garden; the line, the column and what was expected are given.</exception>
    public static Garden Read(string json)
    {
        byte[] utf8 = Encoding.UTF8.GetBytes(Guard.NotNull(json));
        try
        {
            return JsonSerializer.Deserialize(utf8, HortiCalcJsonContext.Default.Garden)
                ?? throw new MalformedInputException(1, 1, "expected an object { }, found null");
        }
        catch (Exception failure) when (failure is JsonException or ArgumentException or NotSupportedException)
        {
            throw JsonFault.Find(utf8, HortiCalcJsonContext.Default.Garden, failure);
        }
    }

    /// <summary>Writes a garden, indented.</summary>
    /// <param name="garden">The garden.</param>
    /// <returns>Text that <see cref="Read"/> gives the same garden for.</returns>
    /// <exception cref="ArgumentNullException">The garden is <see langword="null"/>.</exception>
    public static string Write(Garden garden)
    {
        using MemoryStream stream = new();
        using (Utf8JsonWriter writer = new(stream, new JsonWriterOptions { Indented = true, NewLine = "\n" }))
            JsonSerializer.Serialize(writer, Guard.NotNull(garden), HortiCalcJsonContext.Default.Garden);
        return Encoding.UTF8.GetString(stream.ToArray());
    }
}
