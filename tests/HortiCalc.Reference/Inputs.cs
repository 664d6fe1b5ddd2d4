using System.Globalization;

namespace HortiCalc.Reference;

/// <summary>The inputs of one published value, by name.</summary>
public sealed class Inputs
{
    private readonly Dictionary<string, string> values;

    public Inputs(string text)
    {
        Text = text;
        values = text.Split(';', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries)
            .Select(pair => pair.Split('=', 2))
            .ToDictionary(pair => pair[0].Trim(), pair => pair.Length == 2 ? pair[1].Trim() : throw new FormatException($"'{text}' is not name=value;..."));
    }

    public string Text { get; }

    public string this[string name] => values.TryGetValue(name, out string? value)
        ? value
        : throw new FormatException($"The input '{name}' is missing in '{Text}'.");

    public bool Has(string name) => values.ContainsKey(name);

    public double Number(string name) => double.Parse(this[name], NumberStyles.Float, CultureInfo.InvariantCulture);

    public double[] Numbers(string name) =>
        [.. this[name].Split('|').Select(text => double.Parse(text, NumberStyles.Float, CultureInfo.InvariantCulture))];

    public DateOnly Date(string name) => DateOnly.ParseExact(this[name], "yyyy-MM-dd", CultureInfo.InvariantCulture);

    public override string ToString() => Text;
}
