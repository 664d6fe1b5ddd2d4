using System.Text;

namespace HortiCalc.Reference;

/// <summary>Reads comma-separated lines, quoted as in RFC 4180.</summary>
internal static class CsvReader
{
    public static List<string> Fields(string line)
    {
        List<string> fields = [];
        StringBuilder field = new();
        bool quoted = false;
        for (int i = 0; i < line.Length; i++)
        {
            char c = line[i];
            if (quoted && c == '"' && i + 1 < line.Length && line[i + 1] == '"')
            {
                field.Append('"');
                i++;
            }
            else if (c == '"')
            {
                quoted = !quoted;
            }
            else if (c == ',' && !quoted)
            {
                fields.Add(field.ToString());
                field.Clear();
            }
            else
            {
                field.Append(c);
            }
        }

        fields.Add(field.ToString());
        return quoted ? throw new FormatException($"A quote is not closed: {line}") : fields;
    }
}
