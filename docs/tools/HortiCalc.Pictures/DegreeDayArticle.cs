using System.Globalization;
using System.Text;
using HortiCalc.Climate;
using HortiCalc.Reference;
using HortiCalc.Units;
using UnitsNet;
using UnitsNet.Units;

namespace HortiCalc.Pictures;

/// <summary>The part of docs/degree-days.md that is written by the library: the yearly sums of an open record by every method.</summary>
public static class DegreeDayArticle
{
    private const string Begin = "<!-- yearly sums: written by docs/tools/draw-degree-days.cs -->\n";
    private const string End = "<!-- end of the yearly sums -->\n";

    public static string FilePath { get; } = Path.Combine(ReferenceLibrary.RepositoryRoot, "docs", "degree-days.md");

    /// <summary>The article with the table that the library gives now.</summary>
    /// <param name="article">The article, with the two lines that the table stands between.</param>
    /// <returns>The article; the same where its table is current.</returns>
    /// <exception cref="FormatException">A line that the table stands between is missing.</exception>
    public static string WithTable(string article)
    {
        string text = article.ReplaceLineEndings("\n");
        int from = text.IndexOf(Begin, StringComparison.Ordinal);
        int to = text.IndexOf(End, StringComparison.Ordinal);
        return from >= 0 && to > from
            ? string.Concat(text.AsSpan(0, from + Begin.Length), Table(), text.AsSpan(to))
            : throw new FormatException($"docs/degree-days.md must have the lines '{Begin.Trim()}' and '{End.Trim()}'.");
    }

    private static string Table()
    {
        DailyTemperatures record = Seattle();
        DegreeDayThresholds thresholds = new(Temperature.FromDegreesCelsius(10), Temperature.FromDegreesCelsius(30));
        List<DegreeDayComparison> years = [.. Enumerable.Range(record.Start.Year, record.End.Year - record.Start.Year + 1)
            .Select(year => DegreeDays.Compare(record.Between(new DateOnly(year, 1, 1), new DateOnly(year, 12, 31)), thresholds))];
        DailyTemperatures lastYear = record.Between(new DateOnly(record.End.Year, 1, 1), record.End);
        double yardstick = years.Average(year => year.TotalBy(DegreeDayMethod.SingleSine, UpperCutoff.None)!.Value.CelsiusDays);

        StringBuilder table = new();
        table.Append(CultureInfo.InvariantCulture, $"| method | cutoff | {string.Join(" | ", years.Select(year => year.Start.Year))} | against the single sine | 500 °C·d in {years[^1].Start.Year} |\n");
        table.Append(CultureInfo.InvariantCulture, $"|---|---|{string.Concat(years.Select(_ => "---:|"))}---:|---|\n");
        for (int row = 0; row < years[0].Totals.Count; row++)
        {
            DegreeDayTotal total = years[0].Totals[row];
            List<double> sums = [.. years.Select(year => year.Totals[row].Sum.CelsiusDays)];
            table.Append(
                CultureInfo.InvariantCulture,
                $"| {total.Method} | {Words(total.Cutoff)} | {string.Join(" | ", sums.Select(Tenths))} | {Percent(sums.Average() / yardstick - 1)} | {Reached(total)} |\n");
        }

        Spread(table, "spread, the maximum alone left out", years, total => total.Method != DegreeDayMethod.MaximumOnly);
        Spread(table, "spread without a cutoff", years, total => total.Cutoff == UpperCutoff.None);
        Spread(table, "spread of the cutoffs of the single sine", years, total => total.Method == DegreeDayMethod.SingleSine);
        return table.ToString();

        string Reached(DegreeDayTotal total) => DegreeDays.Accumulate(lastYear, thresholds, total.Method, total.Cutoff)
            .DateReached(ThermalTime.FromCelsiusDays(500))?.ToString("d MMMM", CultureInfo.InvariantCulture) ?? "not";
    }

    /// <summary>By how much the largest of some sums is above the smallest, year by year.</summary>
    private static void Spread(StringBuilder table, string name, List<DegreeDayComparison> years, Func<DegreeDayTotal, bool> isMeant)
    {
        IEnumerable<string> spreads = years.Select(year =>
        {
            List<double> sums = [.. year.Totals.Where(isMeant).Select(total => total.Sum.CelsiusDays)];
            return $"**{(100 * (sums.Max() / sums.Min() - 1)).ToString("0.0", CultureInfo.InvariantCulture)} %**";
        });
        table.Append(CultureInfo.InvariantCulture, $"| **{name}** | | {string.Join(" | ", spreads)} | | |\n");
    }

    private static DailyTemperatures Seattle()
    {
        List<string[]> rows = [.. File.ReadLines(Path.Combine(ReferenceLibrary.RepositoryRoot, "shared", "weather", "seattle-2012-2015.csv"))
            .Where(line => line.Length > 0 && char.IsDigit(line[0]))
            .Select(line => line.Split(','))];
        return DailyTemperatures.Create(
            DateOnly.Parse(rows[0][0], CultureInfo.InvariantCulture), Column(1), Column(2), TemperatureUnit.DegreeCelsius);

        double[] Column(int index) => [.. rows.Select(row => double.Parse(row[index], CultureInfo.InvariantCulture))];
    }

    private static string Words(UpperCutoff cutoff) => cutoff switch
    {
        UpperCutoff.Horizontal => "horizontal",
        UpperCutoff.Intermediate => "intermediate",
        UpperCutoff.IntermediateBelowZero => "intermediate, below zero",
        UpperCutoff.Vertical => "vertical",
        _ => "none",
    };

    private static string Tenths(double value) => value.ToString("0.0", CultureInfo.InvariantCulture);

    private static string Percent(double share) => (100 * share).ToString("+0.0' %';−0.0' %';0.0' %'", CultureInfo.InvariantCulture);
}
