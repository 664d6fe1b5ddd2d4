namespace HortiCalc.Soil;

/// <summary>How the tables of crops find a name: by its words, capitals and plural or not.</summary>
internal static class CropNames
{
    /// <summary>Whether all the words asked for stand in a name, and there is one.</summary>
    public static bool Matches(string wanted, string name)
    {
        string[] words = [.. Words(wanted)];
        HashSet<string> has = [.. Words(name)];
        return words.Length > 0 && words.All(has.Contains);
    }

    /// <summary>The words of a name, in lower case and singular.</summary>
    private static IEnumerable<string> Words(string name) => string
        .Concat(name.Select(sign => char.IsLetter(sign) ? char.ToLowerInvariant(sign) : ' '))
        .Split(' ', StringSplitOptions.RemoveEmptyEntries)
        .Select(word => word switch
        {
            _ when word.EndsWith("ies", StringComparison.Ordinal) => word[..^3] + "y",
            _ when word.EndsWith("oes", StringComparison.Ordinal) => word[..^2],
            _ when word.EndsWith('s') && !word.EndsWith("ss", StringComparison.Ordinal) && !word.EndsWith("us", StringComparison.Ordinal) => word[..^1],
            _ => word,
        });
}
