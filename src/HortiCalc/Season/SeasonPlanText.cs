using System.Text;
using HortiCalc.Display;
using HortiCalc.Evidence;

namespace HortiCalc.Season;

/// <summary>Writes a plan as aligned text, with the sources numbered at the end.</summary>
internal sealed class SeasonPlanText
{
    private const int Width = 106;
    private const string Indent = "  ";

    private readonly SeasonPlan plan;
    private readonly TextStyle style;
    private readonly StringBuilder text = new();
    private readonly List<Source> numbered = [];
    private readonly Dictionary<Source, List<string>> methods = [];

    private SeasonPlanText(SeasonPlan plan, TextStyle style)
    {
        this.plan = plan;
        this.style = style;
    }

    public static string Write(SeasonPlan plan, TextStyle style)
    {
        SeasonPlanText writer = new(plan, style);
        writer.WriteAll();
        return writer.text.ToString();
    }

    private void WriteAll()
    {
        Line(plan.Title);
        Line(plan.Weather.ToString(style));
        WriteSupplies();
        WriteTable("DATES", plan.Dates);
        WriteTable("RISKS in one season: by the chance, and as counted on record", plan.Risks);
        WriteCautions();
        WriteSources();
    }

    private void WriteSupplies()
    {
        Heading("SUPPLIES");
        int[] widths = Widths(plan.Supplies);
        string? place = null;
        foreach (SupplyLine line in plan.Supplies)
        {
            if (line.Place != place)
                Line(Indent + line.Place);
            place = line.Place;
            Row(Indent + Indent, line.Cells(style), widths, Notes(line.Evidence));
        }
    }

    private void WriteTable(string heading, IReadOnlyList<PlanLine> lines)
    {
        Heading(heading);
        int[] widths = Widths(lines);
        foreach (PlanLine line in lines)
            Row(Indent, line.Cells(style), widths, Notes(line.Evidence));
        if (lines.Count == 0)
            Line(Indent + "none");
    }

    private void WriteCautions()
    {
        Heading("CAUTIONS");
        foreach (CautionLine line in plan.Cautions)
        {
            string note = Notes([new Method("caution", "caution", line.Caution.Source, new Domain(""))]);
            Row(Indent, [line.Caution.LevelWord, $"{line.Caution.Sentence} ({string.Join(", ", line.AppliesTo)})"], [6], note);
        }
    }

    private void WriteSources()
    {
        Heading("SOURCES");
        for (int i = 0; i < numbered.Count; i++)
        {
            Source source = numbered[i];
            string number = $"[{i + 1}]";
            string address = source.Address is null ? "" : $" {source.Address}";
            Row(Indent, [number, $"{source}: {string.Join("; ", methods[source])}.{address}"], [4], "");
        }
    }

    private void Heading(string heading)
    {
        Line("");
        Line(heading);
    }

    /// <summary>The width of each column but the last.</summary>
    private int[] Widths(IReadOnlyList<PlanLine> lines)
    {
        List<IReadOnlyList<string>> rows = [.. lines.Select(line => line.Cells(style))];
        return rows.Count == 0 ? [] : [.. Enumerable.Range(0, rows[0].Count - 1).Select(column => rows.Max(row => row[column].Length))];
    }

    /// <summary>The cells side by side; the last, with its notes, is broken over as many lines as it takes.</summary>
    private void Row(string indent, IReadOnlyList<string> cells, int[] widths, string notes)
    {
        StringBuilder start = new(indent);
        for (int column = 0; column < widths.Length; column++)
            start.Append(cells[column].PadRight(widths[column])).Append(Indent);
        int margin = start.Length;
        List<string> lines = Wrap($"{cells[^1]} {notes}".TrimEnd(), Width - margin);
        Line(start + lines[0]);
        foreach (string line in lines.Skip(1))
            Line(new string(' ', margin) + line);
    }

    private static List<string> Wrap(string sentence, int width)
    {
        List<string> lines = [];
        string line = "";
        foreach (string word in sentence.Split(' '))
        {
            if (line.Length > 0 && line.Length + 1 + word.Length > width)
            {
                lines.Add(line);
                line = "";
            }

            line += line.Length == 0 ? word : " " + word;
        }

        lines.Add(line);
        return lines;
    }

    /// <summary>The numbers of the sources, in square brackets.</summary>
    private string Notes(IReadOnlyList<Method> evidence)
    {
        List<int> numbers = [];
        foreach (Method method in evidence)
        {
            if (!methods.TryGetValue(method.Source, out List<string>? names))
            {
                numbered.Add(method.Source);
                methods[method.Source] = names = [];
            }

            if (!names.Contains(method.Name))
                names.Add(method.Name);
            int number = numbered.IndexOf(method.Source) + 1;
            if (!numbers.Contains(number))
                numbers.Add(number);
        }

        return $"[{string.Join(",", numbers)}]";
    }

    private void Line(string line) => text.Append(line.TrimEnd()).Append('\n');
}
