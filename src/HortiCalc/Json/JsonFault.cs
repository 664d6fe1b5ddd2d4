using System.Text;
using System.Text.Json;
using System.Text.Json.Serialization.Metadata;
using HortiCalc.Season;

namespace HortiCalc.Json;

/// <summary>
/// Finds the place of a fault in a JSON text that could not be read, by reading every value in it by itself, the innermost
/// first: the first that cannot be read is the one at fault.
/// </summary>
internal sealed class JsonFault
{
    private const int LongestQuote = 40;

    private readonly byte[] utf8;
    private readonly JsonSerializerOptions options;

    private JsonFault(byte[] utf8, JsonSerializerOptions options)
    {
        this.utf8 = utf8;
        this.options = options;
    }

    /// <summary>The fault in a text that <paramref name="failure"/> came from.</summary>
    public static MalformedInputException Find(byte[] utf8, JsonTypeInfo type, Exception failure)
    {
        JsonFault fault = new(utf8, type.Options);
        if (utf8.All(value => char.IsWhiteSpace((char)value)))
            return fault.At(0, $"expected {Expected(type)}, found nothing", failure);
        try
        {
            Utf8JsonReader reader = new(utf8);
            reader.Read();
            fault.Check(ref reader, type);
            return fault.At(0, failure.Message, failure);
        }
        catch (MalformedInputException found)
        {
            return found;
        }
        catch (JsonException syntax)
        {
            // The reader's own message ends in its own count of lines and bytes.
            string message = syntax.Message.Split(" LineNumber:")[0].TrimEnd('.');
            return new MalformedInputException(
                (int)(syntax.LineNumber ?? 0) + 1, fault.Column((int)(syntax.LineNumber ?? 0), (int)(syntax.BytePositionInLine ?? 0)), $"expected JSON: {message}", syntax);
        }
    }

    // The reader stands on the first token of the value, and is left on its last.
    private void Check(ref Utf8JsonReader reader, JsonTypeInfo type)
    {
        int start = (int)reader.TokenStartIndex;
        Dictionary<string, int> places = [];
        if (reader.TokenType == JsonTokenType.StartObject && type.Kind == JsonTypeInfoKind.Object)
            CheckProperties(ref reader, type, start, places);
        else if (reader.TokenType == JsonTokenType.StartArray && type.Kind == JsonTypeInfoKind.Enumerable)
            CheckItems(ref reader, type);
        else
            reader.Skip();

        ReadOnlySpan<byte> value = utf8.AsSpan(start..(int)reader.BytesConsumed);
        try
        {
            JsonSerializer.Deserialize(value, type);
        }
        catch (ArgumentException refused)
        {
            throw At(places.GetValueOrDefault(refused.ParamName ?? "", start), Sentence(refused), refused);
        }
        catch (Exception refused) when (refused is JsonException or NotSupportedException)
        {
            throw At(start, Expected(type) is string expected ? $"expected {expected}, found {Quote(value)}" : Sentence(refused), refused);
        }
    }

    private void CheckItems(ref Utf8JsonReader reader, JsonTypeInfo type)
    {
        JsonTypeInfo item = options.GetTypeInfo(type.ElementType!);
        while (reader.Read() && reader.TokenType != JsonTokenType.EndArray)
            Check(ref reader, item);
    }

    private void CheckProperties(ref Utf8JsonReader reader, JsonTypeInfo type, int start, Dictionary<string, int> places)
    {
        JsonTypeInfo shape = type;
        if (type.PolymorphismOptions is JsonPolymorphismOptions kinds)
            shape = ReadKind(reader, kinds, start);

        while (reader.Read() && reader.TokenType == JsonTokenType.PropertyName)
        {
            string name = reader.GetString()!;
            if (name == type.PolymorphismOptions?.TypeDiscriminatorPropertyName)
            {
                reader.Skip();
                continue;
            }

            JsonPropertyInfo property = shape.Properties.FirstOrDefault(known => known.Name == name)
                ?? throw At((int)reader.TokenStartIndex, $"unknown property \"{name}\"; known: {string.Join(", ", Settable(shape))}");
            reader.Read();
            places[name] = (int)reader.TokenStartIndex;
            if (reader.TokenType == JsonTokenType.Null && property.AssociatedParameter is { IsNullable: false })
                throw At(places[name], $"expected a value for \"{name}\", found null");
            Check(ref reader, options.GetTypeInfo(property.PropertyType));
        }

        if (shape.Properties.FirstOrDefault(property => property.IsRequired && !places.ContainsKey(property.Name)) is JsonPropertyInfo missing)
            throw At(start, $"expected the property \"{missing.Name}\" in this object, found none");
    }

    // Takes a copy of the reader and looks ahead, because the kind may stand anywhere in the object.
    private JsonTypeInfo ReadKind(Utf8JsonReader reader, JsonPolymorphismOptions kinds, int start)
    {
        string name = kinds.TypeDiscriminatorPropertyName;
        string known = string.Join(", ", kinds.DerivedTypes.Select(derived => $"\"{derived.TypeDiscriminator}\""));
        while (reader.Read() && reader.TokenType == JsonTokenType.PropertyName && reader.GetString() != name)
            reader.Skip();
        if (reader.TokenType != JsonTokenType.PropertyName)
            throw At(start, $"expected the property \"{name}\" in this object, one of {known}");
        reader.Read();
        string? kind = reader.TokenType == JsonTokenType.String ? reader.GetString() : null;
        int place = (int)reader.TokenStartIndex;
        foreach (JsonDerivedType derived in kinds.DerivedTypes)
        {
            if (kind is not null && Equals(derived.TypeDiscriminator, kind))
                return options.GetTypeInfo(derived.DerivedType);
        }

        throw At(place, $"expected one of {known}, found {Quote(utf8.AsSpan(place..(int)reader.BytesConsumed))}");
    }

    private static IEnumerable<string> Settable(JsonTypeInfo type) =>
        type.Properties.Where(property => property.AssociatedParameter is not null || property.Set is not null).Select(property => property.Name);

    /// <summary>What a value of the type looks like, where the type does not say it better itself.</summary>
    private static string? Expected(JsonTypeInfo type)
    {
        Type plain = Nullable.GetUnderlyingType(type.Type) ?? type.Type;
        if (plain.IsEnum)
            return "one of " + string.Join(", ", Enum.GetNames(plain).Select(name => $"\"{name}\""));
        if (plain == typeof(string))
            return "a text in quotes";
        if (plain == typeof(bool))
            return "true or false";
        if (plain == typeof(int))
            return "a whole number";
        if (plain == typeof(double))
            return "a number";
        return type.Kind switch
        {
            JsonTypeInfoKind.Enumerable => "a list [ ]",
            JsonTypeInfoKind.Object => "an object { }",
            _ => null,
        };
    }

    // The exception may append the parameter's name, which the message holds already.
    private static string Sentence(Exception refused) =>
        refused.Message.Split(" (Parameter")[0].TrimEnd('.');

    private static string Quote(ReadOnlySpan<byte> value)
    {
        string text = Encoding.UTF8.GetString(value).ReplaceLineEndings(" ");
        return text.Length <= LongestQuote ? text : text[..LongestQuote] + "...";
    }

    private MalformedInputException At(int offset, string problem, Exception? cause = null)
    {
        ReadOnlySpan<byte> before = utf8.AsSpan(0, offset);
        int line = before.Count((byte)'\n');
        return new MalformedInputException(line + 1, Column(line, offset - (before.LastIndexOf((byte)'\n') + 1)), problem, cause);
    }

    /// <summary>The character, from 1, that begins so many bytes into a line counted from 0.</summary>
    private int Column(int line, int bytes)
    {
        ReadOnlySpan<byte> rest = utf8;
        for (int skipped = 0; skipped < line && rest.Contains((byte)'\n'); skipped++)
            rest = rest[(rest.IndexOf((byte)'\n') + 1)..];
        return Encoding.UTF8.GetCharCount(rest[..Math.Min(bytes, rest.Length)]) + 1;
    }
}
