using System.Globalization;
using System.Text;

namespace HortiCalc.Reference;

/// <summary>Writes docs/validation.md: what is reproduced of what was published, and what is not and why.</summary>
public static class ValidationPage
{
    public static string FilePath { get; } = Path.Combine(ReferenceLibrary.RepositoryRoot, "docs", "validation.md");

    public static string Write()
    {
        List<Comparison> all = [.. ReferenceLibrary.Values.Select(Comparison.Run)];
        StringBuilder page = new();
        page.Append("""
            # Validation

            Published values beside what the library gives. This page is written by `dotnet run docs/tools/write-validation.cs` from
            `shared/reference`, and the tests fail when it is stale. A value counts as reproduced when it is met within half of its last
            printed digit (or of the rounding step that the source states); a gap is a difference of formula that is known and
            named beside the value.


            """);
        List<Comparison> published = Of(all, ReferenceKind.Published);
        Summary(page, published);
        Section(page, "Published values", "", published);
        NotReproduced(page, published);
        Section(
            page,
            "Common practice",
            "Customs of the trade that no publication stands behind. They are checked like the others and counted apart.",
            Of(all, ReferenceKind.CommonPractice));
        Section(
            page,
            "Computed references",
            "Figures from an independent program or formula. They are no publication and are counted apart.",
            Of(all, ReferenceKind.Computed));
        return page.ToString().TrimEnd() + "\n";
    }

    private static List<Comparison> Of(IEnumerable<Comparison> all, ReferenceKind kind) =>
        [.. all.Where(comparison => comparison.Value.Source.Kind == kind)];

    private static void Summary(StringBuilder page, List<Comparison> published)
    {
        int reproduced = published.Count(comparison => comparison.Agrees);
        int readBack = published.Count(comparison => comparison.Agrees && Calculations.ReadBack.Contains(comparison.Value.Calculation));
        int toPrint = published.Count(comparison => comparison.Agrees && comparison.Value.Gap.Length == 0);
        page.Append(CultureInfo.InvariantCulture, $"""
            | | |
            |---|---:|
            | published values | {published.Count} |
            | reproduced | {reproduced} |
            | of these within the precision of the print | {toPrint} |
            | of these with a named gap | {reproduced - toPrint} |
            | of these worked out by a rule | {reproduced - readBack} |
            | of these read back from a table that the library holds as printed, which guards the typing alone | {readBack} |
            | not reproduced, each listed below with its reason | {published.Count - reproduced} |
            | sources | {published.Select(comparison => comparison.Value.Source.Key).Distinct().Count()} |


            """);
    }

    private static void Section(StringBuilder page, string title, string introduction, List<Comparison> comparisons)
    {
        if (comparisons.Count == 0)
            return;
        page.Append(CultureInfo.InvariantCulture, $"## {title}\n\n");
        if (introduction.Length > 0)
            page.Append(introduction).Append("\n\n");
        foreach (IGrouping<string, Comparison> room in comparisons.GroupBy(comparison => comparison.Value.Source.Room))
        {
            page.Append(CultureInfo.InvariantCulture, $"### {Heading(room.Key)}\n\n")
                .Append("| source | values | reproduced | largest difference among them | where it was seen |\n|---|---:|---:|---|---|\n");
            foreach (IGrouping<ReferenceSource, Comparison> source in room.GroupBy(comparison => comparison.Value.Source))
            {
                page.Append(
                    CultureInfo.InvariantCulture,
                    $"| {Cell(source.Key.Title)}, {Cell(source.Key.Publisher)}, {source.Key.Year} | {source.Count()} | {source.Count(c => c.Agrees)} | {Largest([.. source])} | {Address(source.Key.Url)} |\n");
            }

            page.Append('\n');
        }
    }

    private static void NotReproduced(StringBuilder page, List<Comparison> published)
    {
        page.Append("## Not reproduced\n\n");
        List<Comparison> rows = [.. published.Where(comparison => !comparison.Agrees)];
        if (rows.Count == 0)
        {
            page.Append("None.\n\n");
            return;
        }

        page.Append("| value | printed | the library gives | why |\n|---|---|---|---|\n");
        foreach (Comparison row in rows)
        {
            page.Append(
                CultureInfo.InvariantCulture,
                $"| `{row.Value.Key}`: {Cell(row.Value.Inputs.Text.Replace(";", "; ", StringComparison.Ordinal))} | {Cell(row.Value.Expected)} {Unit(row.Value)} | {Cell(Shown(row))} | {Reason(row.Value)} |\n");
        }

        page.Append('\n');
    }

    private static string Largest(IReadOnlyCollection<Comparison> source)
    {
        if (source.All(c => !c.Agrees))
            return "none agrees";
        Comparison? largest = source.Where(c => c.Agrees && !c.Value.IsText).MaxBy(c => c.Difference / Math.Max(c.Value.Tolerance, 1e-300));
        return largest is null
            ? "exact"
            : string.Create(CultureInfo.InvariantCulture, $"{Rounded(largest.Difference)} {Days(largest.Value)}, {Rounded(largest.Value.Tolerance)} allowed");
    }

    /// <summary>Two significant digits, rounded so that the last bits of a processor do not show.</summary>
    private static string Rounded(double value) =>
        value < 1e-9 ? "0" : double.Parse(value.ToString("G2", CultureInfo.InvariantCulture), CultureInfo.InvariantCulture).ToString("0.############", CultureInfo.InvariantCulture);

    private static string Shown(Comparison row) => (row.Value.IsText, row.Value.IsDate) switch
    {
        (true, _) => row.Computed.Text ?? "",
        (_, true) => new DateOnly(2001, 1, 1).AddDays((int)Math.Round(row.Computed.Number, MidpointRounding.AwayFromZero) - 1).ToString("MM-dd", CultureInfo.InvariantCulture),
        _ => row.Computed.Number.ToString("G5", CultureInfo.InvariantCulture),
    };

    private static string Days(ReferenceValue value) => value.IsDate ? "days" : Cell(value.Unit);

    private static string Unit(ReferenceValue value) => value.IsDate || value.IsText ? "" : Cell(value.Unit);

    private static string Reason(ReferenceValue value) =>
        (value.Status == ReferenceStatus.SourceInconsistent ? "the source contradicts itself: " : "another method: ") + Cell(value.Note);

    private static string Heading(string room) => char.ToUpperInvariant(room[0]) + room[1..];

    private static string Address(string url) => url.StartsWith("http", StringComparison.Ordinal) ? $"<{url}>" : Cell(url);

    private static string Cell(string text) => text.Replace("|", "\\|", StringComparison.Ordinal);
}
