namespace HortiCalc.Season;

/// <summary>Breaks a sentence into lines.</summary>
internal static class TextWrap
{
    // Keeps a number and what follows it on one line, as in "10 %" and "0 °C"; put back to a blank in the end.
    private const char Tied = '\u00A0';

    /// <summary>Lines no longer than a width, broken at blanks but not after a number; a longer word has a line of its own.</summary>
    public static List<string> Lines(string sentence, int width)
    {
        List<string> lines = [];
        string line = "";
        foreach (string word in Tie(sentence).Split(' '))
        {
            if (line.Length > 0 && line.Length + 1 + word.Length > width)
            {
                lines.Add(line.Replace(Tied, ' '));
                line = "";
            }

            line += line.Length == 0 ? word : " " + word;
        }

        lines.Add(line.Replace(Tied, ' '));
        return lines;
    }

    private static string Tie(string sentence)
    {
        char[] characters = sentence.ToCharArray();
        for (int i = 1; i < characters.Length - 1; i++)
        {
            if (characters[i] == ' ' && char.IsAsciiDigit(characters[i - 1]) && characters[i + 1] != '[')
                characters[i] = Tied;
        }

        return new string(characters);
    }
}
