using System.Buffers;
using System.Globalization;

namespace HortiCalc.Units;

/// <summary>
/// How a quantity of this library is written and read: a number, a space and a unit. The quantities of this room and their
/// JSON share it, so that a unit's abbreviation stands in one place.
/// </summary>
/// <typeparam name="T">The quantity.</typeparam>
/// <param name="name">The quantity's name, for messages.</param>
/// <param name="readerDecimals">How many decimals a reader is shown.</param>
/// <param name="metric">The metric unit, in which the quantity is kept, so that its number loses no digit.</param>
/// <param name="usCustomary">The US customary unit; none where the trade of the United States uses the metric one.</param>
internal sealed class QuantityNotation<T>(string name, int readerDecimals, NotedUnit<T> metric, NotedUnit<T>? usCustomary = null)
{
    private const char NoBreakSpace = '\u00A0';
    private static readonly SearchValues<char> NumberCharacters = SearchValues.Create("0123456789.,'+-−Ee \u00A0\u202F");

    public string Name => name;

    public NotedUnit<T> Metric => metric;

    public IReadOnlyList<NotedUnit<T>> Units { get; } = usCustomary is null ? [metric] : [metric, usCustomary];

    /// <summary>Writes the quantity in the format <c>M</c> (or none), <c>U</c> or <c>R</c>; without a culture in the invariant one.</summary>
    public string Format(T quantity, string? format, IFormatProvider? culture) => format switch
    {
        null or "" or "G" or "g" or "M" or "m" => ForReader(quantity, metric, culture),
        "U" or "u" => ForReader(quantity, usCustomary ?? metric, culture),
        "R" or "r" => EveryDigit(metric.ValueIn(quantity), culture) + " " + metric.Abbreviation,
        _ => throw new FormatException(
            $"'{format}' is not a format; allowed: M ({metric.Abbreviation}), U ({(usCustomary ?? metric).Abbreviation}), R (every digit)."),
    };

    public T Parse(ReadOnlySpan<char> text, IFormatProvider? culture) =>
        Read(text, culture, out T? quantity) is string complaint ? throw new FormatException(complaint) : quantity!;

    public bool TryParse(ReadOnlySpan<char> text, IFormatProvider? culture, out T? quantity) => Read(text, culture, out quantity) is null;

    /// <summary>A number rounded for a reader, without a minus before zero.</summary>
    public static string Rounded(double value, int decimals, IFormatProvider? culture) =>
        (Math.Round(value, decimals, MidpointRounding.AwayFromZero) + 0.0)
            .ToString("0." + new string('#', decimals), culture ?? CultureInfo.InvariantCulture);

    public static string EveryDigit(double value, IFormatProvider? culture) =>
        value.ToString("R", culture ?? CultureInfo.InvariantCulture);

    private string ForReader(T quantity, NotedUnit<T> unit, IFormatProvider? culture) =>
        Rounded(unit.ValueIn(quantity), readerDecimals, culture) + " " + unit.Abbreviation;

    /// <summary>Reads a quantity; gives what is wrong with the text, or null where nothing is.</summary>
    private string? Read(ReadOnlySpan<char> text, IFormatProvider? culture, out T? quantity)
    {
        quantity = default;
        ReadOnlySpan<char> trimmed = text.Trim();
        foreach (NotedUnit<T> unit in Units)
        {
            if (!unit.Ends(trimmed, out int length))
                continue;
            ReadOnlySpan<char> number = trimmed[..^length].TrimEnd().TrimEnd(NoBreakSpace);
            if (!double.TryParse(number, NumberStyles.Float, culture ?? CultureInfo.InvariantCulture, out double value))
                return $"{name}: '{number}' is not a number in the culture given; expected for instance '{Example(culture)}'.";
            try
            {
                quantity = unit.Make(value);
                return null;
            }
            catch (ArgumentOutOfRangeException refused)
            {
                return $"{name}: {refused.Message}";
            }
        }

        int unitStart = trimmed.IndexOfAnyExcept(NumberCharacters);
        return unitStart < 0
            ? $"{name}: '{trimmed}' has no unit; expected for instance '{Example(culture)}'."
            : $"{name}: unknown unit '{trimmed[unitStart..]}'; known: {string.Join(", ", Units.Select(unit => unit.Abbreviation))}.";
    }

    private string Example(IFormatProvider? culture) => EveryDigit(1.5, culture) + " " + metric.Abbreviation;
}
