using System.Text;
using HortiCalc.Display;
using HortiCalc.Evidence;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Season;

/// <summary>Writes a plan as aligned text, in sections.</summary>
/// <remarks>
/// Sources are numbered. What is only custom has the letter c, and what is only arithmetic an equals sign. The needs of a crop and the daily record have their sources
/// where they are first named, and not again on every line that rests on them.
/// </remarks>
internal sealed class SeasonPlanText
{
    private const int Width = 110;
    private const int NarrowestLastColumn = 30;
    private const string Indent = "  ";
    private const string Custom = "c";
    private const string Exact = "=";

    private readonly SeasonPlan plan;
    private readonly TextStyle style;
    private readonly StringBuilder text = new();
    private readonly List<Source> numbered = [];
    private readonly Dictionary<Source, List<string>> methodNames = [];

    private SeasonPlanText(SeasonPlan plan, TextStyle style)
    {
        this.plan = plan;
        this.style = style;
    }

    public static string Write(SeasonPlan plan, TextStyle style)
    {
        SeasonPlanText writer = new(plan, style);
        writer.WriteHead();
        writer.WriteCrops();
        writer.WriteSupplies();
        writer.WriteDates();
        writer.WriteRisks();
        writer.WriteCautions();
        writer.WriteSources();
        return writer.text.ToString();
    }

    private void WriteHead()
    {
        double degrees = Boundary.Degrees(plan.Garden.Site.Latitude);
        string latitude = $"{QuantityText.Of(Angle.FromDegrees(Math.Abs(degrees)), style)} {(degrees < 0 ? "S" : "N")}";
        Row("", [plan.Title.ToUpperInvariant()], [], "");
        Row("", [$"{latitude}; {plan.Weather.ToString(style)}"], [], Number(plan.Weather.Source));
        Row("", ["Accepted in one season: " + (plan.Garden.Chances ?? AcceptedChances.Usual).ToString(style) + "."], [], "");
    }

    private void WriteCrops()
    {
        string Optional(Temperature? temperature) => temperature is Temperature known ? QuantityText.Of(known, style) : "-";
        Table(
            "CROPS, as given",
            ["crop", "soil pH", "hurt at", "warm from", "first harvest after", "spacing"],
            plan.Garden.Crops.Select(crop => (
                (IReadOnlyList<string>)
                [
                    crop.Name,
                    $"{QuantityText.Of(crop.LowestPh.Value, style)} to {QuantityText.Of(crop.HighestPh.Value, style)}",
                    QuantityText.Of(crop.HurtAt, style),
                    Optional(crop.WarmEnoughAt),
                    crop.Maturity?.Text(style) ?? "-",
                    crop.Spacing.ToString(style),
                ],
                Notes(crop.Sources))));
    }

    private void WriteSupplies()
    {
        Heading("SUPPLIES");
        string otherUnits = style.Other.Units == MeasurementSystem.UsCustomary ? "US units" : "metric";
        string[] columns = ["item", "amount", otherUnits, "bags", "because"];
        int[] widths = Widths([columns, .. plan.Supplies.Select(line => line.Cells(style))]);
        Row(Indent + Indent, columns, widths, "");
        string? place = null;
        foreach (SupplyLine line in plan.Supplies)
        {
            if (line.Place != place)
                Line(Indent + line.Place);
            place = line.Place;
            Row(Indent + Indent, line.Cells(style), widths, Notes(line));
        }
    }

    private void WriteDates() => Table(
        "DATES", ["day", "job", "crop", "because"], plan.Dates.Select(line => (line.Cells(style), Notes(line))));

    private void WriteRisks() => Table(
        "RISKS in one season", ["chance", "on record", "crop", "what can happen"], plan.Risks.Select(line => (line.Cells(style), Notes(line))));

    private void WriteCautions()
    {
        Heading("CAUTIONS");
        foreach (CautionLine line in plan.Cautions)
        {
            Row(
                Indent,
                [line.Caution.LevelWord, $"{line.Caution.Sentence} ({string.Join(", ", line.AppliesTo)})"],
                ["danger".Length],
                Notes([line.Caution.Source]));
        }
    }

    private void WriteSources()
    {
        Heading("SOURCES");
        int width = $"[{numbered.Count}]".Length;
        Row(Indent, [$"[{Exact}]", "exact arithmetic on the figures given"], [width], "");
        Row(Indent, [$"[{Custom}]", "common practice: custom of the trade, without a publication behind it"], [width], "");
        for (int i = 0; i < numbered.Count; i++)
        {
            Source source = numbered[i];
            string names = methodNames.TryGetValue(source, out List<string>? known) ? $": {string.Join("; ", known)}" : "";
            Row(Indent, [$"[{i + 1}]", $"{source}{names}{(source.Address is null ? "" : " " + source.Address)}"], [width], "");
        }
    }

    private void Table(string heading, IReadOnlyList<string> columns, IEnumerable<(IReadOnlyList<string> Cells, string Notes)> lines)
    {
        (IReadOnlyList<string> Cells, string Notes)[] rows = [.. lines];
        Heading(heading);
        int[] widths = Widths([columns, .. rows.Select(row => row.Cells)]);
        Row(Indent, columns, widths, "");
        foreach ((IReadOnlyList<string> cells, string notes) in rows)
            Row(Indent, cells, widths, notes);
        if (rows.Length == 0)
            Line(Indent + "none");
    }

    private void Heading(string heading)
    {
        Line("");
        Line(heading);
    }

    /// <summary>The width of each column but the last.</summary>
    private static int[] Widths(IReadOnlyList<IReadOnlyList<string>> rows) =>
        [.. Enumerable.Range(0, rows[0].Count - 1).Select(column => rows.Max(row => row[column].Length))];

    /// <summary>The cells side by side; the last, with its notes, takes as many lines as it needs.</summary>
    private void Row(string indent, IReadOnlyList<string> cells, int[] widths, string notes)
    {
        StringBuilder start = new(indent);
        for (int column = 0; column < widths.Length; column++)
            start.Append(cells[column].PadRight(widths[column])).Append(Indent);
        string last = $"{cells[^1]} {notes}".TrimEnd();
        if (Width - start.Length < NarrowestLastColumn)
        {
            // Long names have left no room beside them.
            Line(start.ToString());
            start.Clear().Append(indent + Indent + Indent);
        }

        string margin = new(' ', start.Length);
        List<string> lines = TextWrap.Lines(last, Width - margin.Length);
        Line(start + lines[0]);
        foreach (string line in lines.Skip(1))
            Line(margin + line);
    }

    private string Notes(PlanLine line)
    {
        List<Method> own = [.. line.Evidence.Where(method => method.Key is not (SeasonEvidence.CropNeedsKey or SeasonEvidence.RecordKey))];
        foreach (Method method in own.Where(method => method.Source.Kind == SourceKind.Published))
        {
            if (!methodNames.TryGetValue(method.Source, out List<string>? names))
                methodNames[method.Source] = names = [];
            if (!names.Contains(method.Name))
                names.Add(method.Name);
        }

        return Notes(own.Select(method => method.Source));
    }

    private string Notes(IEnumerable<Source> sources) => $"[{string.Join(",", sources.Select(Label).Distinct())}]";

    private string Number(Source source) => $"[{Label(source)}]";

    private string Label(Source source)
    {
        if (source.Kind == SourceKind.CommonPractice)
            return Custom;
        if (source == SeasonEvidence.Given)
            return Exact;
        if (!numbered.Contains(source))
            numbered.Add(source);
        return (numbered.IndexOf(source) + 1).ToString(System.Globalization.CultureInfo.InvariantCulture);
    }

    private void Line(string line) => text.Append(line.TrimEnd()).Append('\n');
}
