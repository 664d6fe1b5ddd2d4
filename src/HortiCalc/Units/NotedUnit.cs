namespace HortiCalc.Units;

/// <summary>A unit of a quantity: how it is abbreviated, and how the quantity's number in it is got and made into a quantity.</summary>
internal sealed record NotedUnit<T>(string Abbreviation, Func<T, double> ValueIn, Func<double, T> Make)
{
    private readonly string ascii = UnitSpelling.Ascii(Abbreviation);

    /// <summary>Whether the text ends with this unit, in either spelling, and how long the unit is in it.</summary>
    public bool Ends(ReadOnlySpan<char> text, out int length)
    {
        string? found = text.EndsWith(Abbreviation, StringComparison.Ordinal) ? Abbreviation
            : text.EndsWith(ascii, StringComparison.Ordinal) ? ascii
            : null;
        length = found?.Length ?? 0;
        return found is not null;
    }
}
