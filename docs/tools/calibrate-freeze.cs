#!/usr/bin/env dotnet
#:project ../../src/HortiCalc/HortiCalc.csproj
#:property PublishAot=false

// Tries the freeze climate on real daily records: leaves out blocks of years, and counts how often a date of a chance is passed in them; then
// sets the dates beside official ones. The records stay where they are; only figures are written.
//
//     dotnet run docs/tools/calibrate-freeze.cs -- <folder of daily records> [docs/freeze-calibration.md]
//
// A record is a file daily_<station>.csv: lines '# name: text' (title, publisher, url), then a header with the columns date, tmin_C and, if
// there, tmax_C, then a line a day, dates as yyyy-MM-dd, an empty field where a reading is missing. Beside it may lie
// published_normals_<station>.csv with the columns threshold, probability_pct, period, value and element, of which the rows of the
// elements ANN-TMIN-PRBLST, -PRBFST and -PRBGSL at 32 degF and 1981-2010 are used: chances given a freeze, values MM-DD or days.

using System.Globalization;
using System.Text;
using HortiCalc.Climate;
using HortiCalc.Evidence;
using UnitsNet;
using UnitsNet.Units;

const int BlockYears = 5;
CultureInfo.CurrentCulture = CultureInfo.InvariantCulture;
if (args.Length is < 1 or > 2)
{
    Console.Error.WriteLine("usage: dotnet run docs/tools/calibrate-freeze.cs -- <folder of daily records> [file to write]");
    return 1;
}

(string Name, FreezeDateMethod Method)[] methods =
[
    ("mixed normal", FreezeDateMethod.MixedNormal),
    ("ranked, Weibull", FreezeDateMethod.Ranked(PlottingPosition.Weibull)),
    ("ranked, Hazen", FreezeDateMethod.Ranked(PlottingPosition.Hazen)),
    ("resampled years", FreezeDateMethod.ResampledYears(seed: 1)),
];
double[] chances = [10, 20, 50, 80, 90];
Temperature freezing = Temperature.FromDegreesCelsius(0);

List<Station> stations = [.. Directory.EnumerateFiles(args[0], "daily_*.csv").Order(StringComparer.Ordinal).Select(ReadStation)];
StringBuilder page = new();
page.AppendLine("# Freeze dates on real records");
page.AppendLine();
page.AppendLine("Written by `dotnet run docs/tools/calibrate-freeze.cs -- <folder of daily records>`; the tool tells the format. The records are other");
page.AppendLine("people's data and are not part of the project; their sources stand at the end. Threshold 0 °C.");
page.AppendLine();

// Left-out years.
page.AppendLine("## Is a 10 % date passed in 10 % of the years?");
page.AppendLine();
page.AppendLine($"Each record is cut into blocks of {BlockYears} cold seasons. One block is left out, the climate is made from all others, and each season of the");
page.AppendLine("block is asked whether its freeze came on the date or to its rare side: on it or later in spring, on it or earlier in autumn. Dates");
page.AppendLine("count all seasons, those without freeze too. Where a chance has no date, because fewer seasons have a freeze, the season is not");
page.AppendLine("counted. All stations together; *expected* is the chance itself, *error* one standard error of so many independent seasons, *off* how many");
page.AppendLine("of these the share lies from the chance. Places with freezes in every month are not counted: spring and autumn meet there. *recent* leaves out only blocks of the last 40 years of a record and learns from these 40 alone: less");
page.AppendLine("of a changing climate between the years that teach and those that test.");
page.AppendLine();
foreach (bool recent in new[] { false, true })
{
    page.AppendLine(recent ? "### Recent: within the last 40 years" : "### Whole records");
    page.AppendLine();
    page.AppendLine("| method | end | expected | passed | seasons | share | error | off |");
    page.AppendLine("|---|---|---|---|---|---|---|---|");
    foreach ((string name, FreezeDateMethod method) in methods)
    {
        Dictionary<(FreezeSide, double), (int Passed, int Seasons)> total = [];
        foreach (Station station in stations)
        {
            foreach (((FreezeSide, double) key, (int passed, int seasons)) in LeaveOut(station, method, recent))
            {
                (int p, int s) = total.GetValueOrDefault(key);
                total[key] = (p + passed, s + seasons);
                if (method is MixedNormalMethod)
                {
                    Dictionary<(FreezeSide, double), (int, int)> store = recent ? station.RecentOutcome : station.Outcome;
                    store[key] = (passed, seasons);
                }
            }
        }

        foreach (FreezeSide side in new[] { FreezeSide.Spring, FreezeSide.Autumn })
        {
            foreach (double chance in chances)
            {
                (int passed, int seasons) = total.GetValueOrDefault((side, chance));
                if (seasons == 0)
                    continue;
                double share = 100.0 * passed / seasons;
                double error = Math.Sqrt(chance * (100 - chance) / seasons);
                page.AppendLine($"| {name} | {(side == FreezeSide.Spring ? "spring" : "autumn")} | {chance} % | {passed} | {seasons} | {share:0.0} % | {error:0.0} % | {(share - chance) / error:+0.0;-0.0;0.0} |");
            }
        }

        Console.Error.WriteLine($"{(recent ? "recent" : "whole")}, {name}: done");
    }

    page.AppendLine();
}

page.AppendLine("### The 10 % dates station by station, mixed normal");
page.AppendLine();
page.AppendLine("Passed of left-out seasons; trend is the Theil-Sen slope of the last spring freeze over the whole record with the p-value of Mann and Kendall.");
page.AppendLine();
page.AppendLine("| station | spring, whole | autumn, whole | spring, recent | autumn, recent | trend in spring |");
page.AppendLine("|---|---|---|---|---|---|");
foreach (Station station in stations)
{
    string Cell(Dictionary<(FreezeSide, double), (int Passed, int Seasons)> outcome, FreezeSide side)
    {
        (int passed, int seasons) = outcome.GetValueOrDefault((side, 10.0));
        return seasons == 0 ? "no date" : $"{passed} of {seasons} ({100.0 * passed / seasons:0} %)";
    }

    page.AppendLine($"| {station.Name} | {Cell(station.Outcome, FreezeSide.Spring)} | {Cell(station.Outcome, FreezeSide.Autumn)} | {Cell(station.RecentOutcome, FreezeSide.Spring)} | {Cell(station.RecentOutcome, FreezeSide.Autumn)} | {station.Trend} |");
}

page.AppendLine();

// Official dates.
page.AppendLine("## Beside the official dates of 1981-2010");
page.AppendLine();
page.AppendLine("Ours less the official one at 32 °F, in days, from the part of the record within 1981-2010. The official dates are given that a freeze");
page.AppendLine("occurs, and come from 10,000 resampled years of homogenised and infilled minima; ours from the record as it is. Resampled years should agree");
page.AppendLine("within about 1 to 3 days, fits of thirty values within about 5: differences beyond that are marked *.");
page.AppendLine();
page.AppendLine("| station | method | spring 50 % | spring 90 % | autumn 50 % | autumn 90 % | length 50 % | length 90 % | seasons |");
page.AppendLine("|---|---|---|---|---|---|---|---|---|");
foreach (Station station in stations)
{
    string file = Path.Combine(args[0], $"published_normals_{station.Name}.csv");
    if (!File.Exists(file))
        continue;
    Dictionary<(string Element, double Chance), string> official = ReadOfficial(file);
    if (official.Count == 0)
        continue;
    DateOnly from = station.Days.Start > new DateOnly(1981, 1, 1) ? station.Days.Start : new DateOnly(1981, 1, 1);
    DateOnly to = station.Days.End < new DateOnly(2010, 12, 31) ? station.Days.End : new DateOnly(2010, 12, 31);
    foreach ((string name, FreezeDateMethod method) in methods.Where(one => one.Name is "mixed normal" or "ranked, Weibull" or "resampled years"))
    {
        FreezeClimate climate;
        try
        {
            climate = FreezeClimate.FromDaily(station.Days.Between(from, to), freezing, new FreezeClimateOptions(station.Hemisphere, method: method));
        }
        catch (ArgumentException problem)
        {
            page.AppendLine($"| {station.Name} | {name} | {problem.Message.Split(';')[0].Replace("|", "/")} | | | | | | |");
            continue;
        }

        int allowed = method is ResampledYearsMethod ? 3 : 5;
        string Date(string element, double chance, Func<Ratio, Estimate<MonthDay>?> dateOf)
        {
            string printed = official.GetValueOrDefault((element, chance), "");
            MonthDay? ours = dateOf(Ratio.FromPercent(chance))?.Value;
            if (!MonthDay.TryParse(printed, out MonthDay theirs))
                return $"{(ours is null ? "none" : ours.ToString())}; official {(printed.Length == 0 ? "not seen" : printed)}";
            if (ours is null)
                return $"none; official {theirs}";
            int days = (ours.Value.InYear(2001).DayOfYear - theirs.InYear(2001).DayOfYear + 547) % 365 - 182;
            return Signed(days, allowed);
        }

        string Length(double chance)
        {
            string printed = official.GetValueOrDefault(("PRBGSL", chance), "");
            if (!int.TryParse(printed, out int theirs) || theirs < 0)
                return $"official {(printed.Length == 0 ? "not seen" : printed)}";
            double ours = climate.SeasonWithoutFreeze.LengthWithChanceOfLongerSeason(Ratio.FromPercent(chance)).Value.Days;
            return Signed(ours - theirs, allowed);
        }

        page.AppendLine(
            $"| {station.Name} | {name} | {Date("PRBLST", 50, climate.LastInSpring.DateWithChanceOfLaterFreezeGivenAFreeze)} | {Date("PRBLST", 90, climate.LastInSpring.DateWithChanceOfLaterFreezeGivenAFreeze)} "
            + $"| {Date("PRBFST", 50, climate.FirstInAutumn.DateWithChanceOfEarlierFreezeGivenAFreeze)} | {Date("PRBFST", 90, climate.FirstInAutumn.DateWithChanceOfEarlierFreezeGivenAFreeze)} "
            + $"| {Length(50)} | {Length(90)} | {climate.LastInSpring.Seasons}, {climate.LastInSpring.ShareOfSeasonsWithFreeze.Percent:0} % with freeze |");
    }
}

page.AppendLine();
page.AppendLine("How to read it. Resampled years are made as the official ones are, and differ where the record does: the official minima are homogenised");
page.AppendLine("and their gaps filled, some of our records begin later or end earlier (the seasons used stand in the last column), and where few years freeze");
page.AppendLine("a single day more or less moves the rare dates by a week. Fits and ranks of some thirty values scatter by their own sampling error besides.");
page.AppendLine("-6666 is the official mark for a freeze in fewer than a tenth of the years, where no date is printed. The official length is the longest run");
page.AppendLine("within one resampled calendar year; ours of the fit and the ranks goes from freeze to freeze, and is 365 days where one is lacking.");
page.AppendLine();
page.AppendLine("## Sources of the records");
page.AppendLine();
foreach (Station station in stations)
    page.AppendLine($"- {station.Name}: {station.Title}; {station.Publisher}; <{station.Address}>; {station.Days.Start:yyyy-MM-dd} to {station.Days.End:yyyy-MM-dd}, {station.Days.MissingMinimaCount} minima missing");
if (args.Length == 2)
    File.WriteAllText(args[1], page.ToString());
else
    Console.Write(page);
return 0;

static string Signed(double days, int allowed) => days.ToString("+0;-0;0", CultureInfo.InvariantCulture) + (Math.Abs(days) > allowed ? " *" : "");

Dictionary<(FreezeSide, double), (int Passed, int Seasons)> LeaveOut(Station station, FreezeDateMethod method, bool recent)
{
    Dictionary<(FreezeSide, double), (int, int)> outcome = [];
    DailyTemperatures days = recent && station.Days.End.AddYears(-40) >= station.Days.Start
        ? station.Days.Between(station.Days.End.AddYears(-40).AddDays(1), station.Days.End)
        : station.Days;
    FreezeClimateOptions options = new(station.Hemisphere, method: method);
    FreezeClimate whole;
    try
    {
        whole = FreezeClimate.FromDaily(days, freezing, new FreezeClimateOptions(station.Hemisphere));
    }
    catch (ArgumentException)
    {
        return outcome;
    }

    // Where it freezes in every month the seasons meet at the cut, and a date beyond it belongs to the next one.
    if (whole.LastInSpring.Cautions.Any(caution => caution.Code == "freeze.every-month"))
        return outcome;

    MonthDay cut = whole.SeasonStart;
    double[] minima = new double[days.Count];
    for (int block = 0; block < whole.Seasons.Count; block += BlockYears)
    {
        List<FreezeSeason> left = [.. whole.Seasons.Skip(block).Take(BlockYears)];
        for (int day = 0; day < minima.Length; day++)
        {
            DateOnly date = days.Start.AddDays(day);
            minima[day] = date >= left[0].Start && date <= left[^1].End ? double.NaN : days.MinimumOn(date)?.DegreesCelsius ?? double.NaN;
        }

        FreezeClimate taught;
        try
        {
            taught = FreezeClimate.FromDaily(DailyTemperatures.FromMinima(days.Start, minima, TemperatureUnit.DegreeCelsius), freezing, options);
        }
        catch (ArgumentException)
        {
            continue;
        }

        foreach (double chance in chances)
        {
            MonthDay? late = taught.LastInSpring.Share() > 0 ? taught.LastInSpring.DateWithChanceOfLaterFreeze(Ratio.FromPercent(chance))?.Value : null;
            MonthDay? early = taught.FirstInAutumn.Share() > 0 ? taught.FirstInAutumn.DateWithChanceOfEarlierFreeze(Ratio.FromPercent(chance))?.Value : null;
            if (late is MonthDay spring)
                Add(FreezeSide.Spring, chance, left.Where(season => season.IsSpringKnown).Select(season => season.LastFreeze is DateOnly freeze && FromCut(MonthDay.From(freeze), cut) >= FromCut(spring, cut)));
            if (early is MonthDay autumn)
                Add(FreezeSide.Autumn, chance, left.Where(season => season.IsAutumnKnown).Select(season => season.FirstFreeze is DateOnly freeze && FromCut(MonthDay.From(freeze), cut) <= FromCut(autumn, cut)));
        }
    }

    return outcome;

    void Add(FreezeSide side, double chance, IEnumerable<bool> passed)
    {
        (int p, int s) = outcome.GetValueOrDefault((side, chance));
        foreach (bool one in passed)
        {
            p += one ? 1 : 0;
            s++;
        }

        outcome[(side, chance)] = (p, s);
    }
}

static int FromCut(MonthDay date, MonthDay cut) => (date.InYear(2001).DayOfYear - cut.InYear(2001).DayOfYear + 365) % 365;

Station ReadStation(string file)
{
    Dictionary<string, string> head = [];
    string[]? columns = null;
    List<(DateOnly Date, double Minimum)> rows = [];
    foreach (string line in File.ReadLines(file))
    {
        if (line.StartsWith('#'))
        {
            string[] pair = line[1..].Split(':', 2, StringSplitOptions.TrimEntries);
            if (pair.Length == 2)
                head.TryAdd(pair[0], pair[1]);
            continue;
        }

        string[] fields = line.Split(',');
        if (columns is null)
        {
            columns = fields;
            continue;
        }

        string text = fields[Array.IndexOf(columns, "tmin_C")];
        rows.Add((DateOnly.ParseExact(fields[0], "yyyy-MM-dd"), text.Length == 0 ? double.NaN : double.Parse(text)));
    }

    DateOnly start = rows[0].Date;
    double[] minima = new double[rows[^1].Date.DayNumber - start.DayNumber + 1];
    minima.AsSpan().Fill(double.NaN);
    foreach ((DateOnly date, double minimum) in rows)
        minima[date.DayNumber - start.DayNumber] = minimum;
    DailyTemperatures days = DailyTemperatures.FromMinima(start, minima, TemperatureUnit.DegreeCelsius);
    string name = Path.GetFileNameWithoutExtension(file)["daily_".Length..];

    // The hemisphere from the head where it tells, else from the data.
    Hemisphere? hemisphere = head.GetValueOrDefault("note", "") switch
    {
        string note when note.Contains("hemisphere=N", StringComparison.Ordinal) => Hemisphere.Northern,
        string note when note.Contains("hemisphere=S", StringComparison.Ordinal) => Hemisphere.Southern,
        _ => null,
    };
    string trend;
    try
    {
        trend = FreezeClimate.FromDaily(days, freezing, new FreezeClimateOptions(hemisphere)).TrendOfLastInSpring?.ToString() ?? "too few freezes";
    }
    catch (ArgumentException)
    {
        trend = "too few seasons";
    }

    return new Station(name, head.GetValueOrDefault("title", ""), head.GetValueOrDefault("publisher", ""), head.GetValueOrDefault("url", ""), hemisphere, days, trend);
}

static Dictionary<(string Element, double Chance), string> ReadOfficial(string file)
{
    Dictionary<(string, double), string> official = [];
    string[]? columns = null;
    foreach (string line in File.ReadLines(file).Where(line => !line.StartsWith('#')))
    {
        List<string> fields = Fields(line);
        if (columns is null)
        {
            columns = [.. fields];
            continue;
        }

        string Field(string name) => fields[Array.IndexOf(columns, name)];
        if (Field("period") != "1981-2010" || Field("threshold") != "32 degF" || !double.TryParse(Field("probability_pct"), out double chance))
            continue;
        foreach (string element in new[] { "PRBLST", "PRBFST", "PRBGSL" })
        {
            if (Field("element").Contains(element, StringComparison.Ordinal))
                official[(element, chance)] = Field("value");
        }
    }

    return official;
}

static List<string> Fields(string line)
{
    List<string> fields = [];
    StringBuilder field = new();
    bool quoted = false;
    foreach (char letter in line)
    {
        if (letter == '"')
            quoted = !quoted;
        else if (letter == ',' && !quoted)
        {
            fields.Add(field.ToString());
            field.Clear();
        }
        else
            field.Append(letter);
    }

    fields.Add(field.ToString());
    return fields;
}

internal sealed record Station(string Name, string Title, string Publisher, string Address, Hemisphere? Hemisphere, DailyTemperatures Days, string Trend)
{
    public Dictionary<(FreezeSide, double), (int Passed, int Seasons)> Outcome { get; } = [];

    public Dictionary<(FreezeSide, double), (int Passed, int Seasons)> RecentOutcome { get; } = [];
}

internal static class Shares
{
    public static double Share(this FreezeDateDistribution distribution) => distribution.ShareOfSeasonsWithFreeze.DecimalFractions;
}
