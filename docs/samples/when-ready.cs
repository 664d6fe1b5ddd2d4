#!/usr/bin/env dotnet
#:project ../../src/HortiCalc/HortiCalc.csproj
#:property PublishAot=false

// When will this crop be ready, and how sure is that? From the season so far and the past years of the same place:
//
//     dotnet run docs/samples/when-ready.cs
//     dotnet run docs/samples/when-ready.cs -- --weather weather.csv --sown 2025-05-20 --today 2025-07-10 --requirement 900 --base 8
//
// The weather file is described in shared/demo/README.md. Days of a weather forecast may stand at its end: set --today to the last of them.

using System.Globalization;
using System.Runtime.CompilerServices;
using System.Text;
using HortiCalc.Climate;
using HortiCalc.Evidence;
using HortiCalc.Season;
using HortiCalc.Units;
using UnitsNet;

const string Help = """
    When will this crop be ready, and how sure is that? Counts the degree days of this season so far, and goes on with each past year.

    dotnet run docs/samples/when-ready.cs -- [options]

      --weather FILE       daily temperatures of this and past years, CSV   (shared/demo/weather.csv)
      --sown DATE          the first day that counts                        (2025-05-15)
      --today DATE         the last day that is known                       (2025-07-01)
      --until DATE         the last day of the season                       (31 October of the year it was sown)
      --requirement SUM    degree days that the crop needs, °C·d or °F·d    (855 °C·d)
      --base DEGREES       lower threshold, °C or °F                        (10 °C)
      --upper DEGREES      upper threshold, °C or °F, or none               (30 °C)
      --method METHOD      how the requirement was published                (single-sine)
      --units UNITS        metric or us, for reading and writing            (metric)
      --help               this text

    A date is written as 2025-07-01. Without options it asks for the invented crop and place of shared/demo.
    """;

Console.OutputEncoding = Encoding.UTF8;
if (args.Contains("--help") || args.Contains("-h"))
{
    Console.WriteLine(Help);
    return 0;
}

Dictionary<string, string> given = [];
string[] known = ["--weather", "--sown", "--today", "--until", "--requirement", "--base", "--upper", "--method", "--units"];
for (int i = 0; i < args.Length; i += 2)
{
    if (!known.Contains(args[i]))
        return Fail($"{args[i]}: expected one of the options that --help lists");
    if (i + 1 == args.Length)
        return Fail($"{args[i]}: expected a value, found nothing");
    given[args[i]] = args[i + 1];
}

string unitsText = given.GetValueOrDefault("--units", "metric");
bool us = unitsText == "us";
if (!us && unitsText != "metric")
    return Fail($"--units: expected metric or us, found {unitsText}");
string format = us ? "U" : "M";
string file = given.GetValueOrDefault("--weather", Demo());

try
{
    DateOnly sown = Date("--sown", new DateOnly(2025, 5, 15));
    DateOnly today = Date("--today", new DateOnly(2025, 7, 1));
    DateOnly until = Date("--until", new DateOnly(sown.Year, 10, 31));
    ThermalTime sum = Number("--requirement") is not double degreeDays ? ThermalTime.FromCelsiusDays(855)
        : us ? ThermalTime.FromFahrenheitDays(degreeDays)
        : ThermalTime.FromCelsiusDays(degreeDays);
    Temperature lower = Degrees("--base") ?? Temperature.FromDegreesCelsius(10);
    Temperature? upper = given.GetValueOrDefault("--upper") == "none" ? null : Degrees("--upper") ?? Temperature.FromDegreesCelsius(30);
    DegreeDayMethod method = DegreeDayMethod.FromKey(given.GetValueOrDefault("--method", "single-sine"));

    using StreamReader reader = File.OpenText(file);
    DailyTemperatures record = WeatherCsv.Read(reader);
    if (sown < record.Start || today > record.End || today < sown)
        return Fail($"--sown, --today: expected days in order from {Text(record.Start)} to {Text(record.End)}, found {Text(sown)} and {Text(today)}");

    DegreeDayThresholds thresholds = new(lower, upper);
    Source source = new("given", "the requirement", "the grower", null, null, SourceKind.Given);
    HeatRequirement Need(DegreeDayMethod counting, UpperCutoff cutoff) => new(sum, thresholds, counting, cutoff, source);
    HeatRequirement need = Need(method, upper is null ? UpperCutoff.None : UpperCutoff.Horizontal);
    DailyTemperatures season = record.Between(sown, today);
    HeatForecast forecast = HeatForecast.For(need, season, record, until);

    Console.WriteLine($"Needed: {need.ToString(format, null)}");
    Console.WriteLine($"So far: {forecast.SoFar.ToString(format, null)} from {Text(sown)} to {Text(today)}");
    Console.WriteLine();
    if (forecast.ReachedOn is DateOnly day)
    {
        Console.WriteLine($"It was ready on {Text(day)}.");
    }
    else
    {
        Console.WriteLine($"Ready, by this season so far and the weather of {forecast.Years.Count} past years:");
        foreach (ForecastDate date in (ForecastDate[])[forecast.Early, forecast.Middle, forecast.Late])
            Console.WriteLine($"  with a chance of {Percent(date.Level),4} by  {Text(date.Date)}");
        Console.WriteLine($"  not before {Text(until)} in {Percent(forecast.NeverShare)} of the years");
        if (forecast.LeftOutYears.Count > 0)
            Console.WriteLine($"  left out for their gaps: {string.Join(", ", forecast.LeftOutYears)}");
        Console.WriteLine($"Without knowing this season: {Text(forecast.UsualDateAt(Ratio.FromPercent(50))?.Value)}");
        Console.WriteLine();
        Console.WriteLine("How sure is that? Each past year forecast from the others, on the same day of the year:");
        if (forecast.Skill is ForecastSkill skill)
        {
            Console.WriteLine($"  middle date off by {Days(skill.MeanAbsoluteError)} days on average, {Days(skill.Bias)} late on balance");
            Console.WriteLine($"  the usual date off by {Days(skill.UsualMeanAbsoluteError)} days: the season so far is worth {Days(skill.Gain)} days");
            Console.WriteLine($"  {Percent(skill.Coverage)} of {skill.Years} years fell into the range, which promises {Percent(skill.ExpectedCoverage)}");
        }
        else
        {
            Console.WriteLine("  too few past years to tell");
        }

        Console.WriteLine();
        Console.WriteLine("The same sum, had it been published for another way of counting:");
        foreach (DegreeDayMethod other in DegreeDayMethod.All)
        {
            foreach (UpperCutoff cutoff in other.Cutoffs.Where(cutoff => cutoff == UpperCutoff.None || upper is not null))
            {
                HeatForecast one = HeatForecast.For(Need(other, cutoff), season, record, until);
                Console.WriteLine($"  {other + Words(cutoff),-70} {Text(one.Middle.Date)}");
            }
        }
    }

    Console.WriteLine();
    foreach (Caution caution in forecast.Cautions)
        Console.WriteLine($"{caution.Level}: {caution.Sentence} [{caution.Source}]");
    Console.WriteLine($"Method: {forecast.Method}");
    return 0;
}
catch (MalformedInputException malformed)
{
    return Fail($"{file}, {malformed.Message}");
}
catch (Exception missing) when (missing is FileNotFoundException or DirectoryNotFoundException)
{
    return Fail($"{file}: expected a file, found none");
}
catch (Exception unreadable) when (unreadable is IOException or UnauthorizedAccessException)
{
    return Fail($"{file}: expected a file that can be read: {unreadable.Message}");
}
catch (Exception refused) when (refused is ArgumentException or FormatException)
{
    return Fail(refused.Message);
}

int Fail(string problem)
{
    Console.Error.WriteLine(problem.ReplaceLineEndings(" "));
    return 1;
}

DateOnly Date(string option, DateOnly otherwise)
{
    if (!given.TryGetValue(option, out string? text))
        return otherwise;
    return DateOnly.TryParseExact(text, "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out DateOnly date)
        ? date
        : throw new FormatException($"{option}: expected a date such as 2025-07-01, found {text}");
}

double? Number(string option)
{
    if (!given.TryGetValue(option, out string? text))
        return null;
    return double.TryParse(text, NumberStyles.Float, CultureInfo.InvariantCulture, out double number) && double.IsFinite(number)
        ? number
        : throw new FormatException($"{option}: expected a number, found {text}");
}

Temperature? Degrees(string option) => Number(option) is not double degrees ? null
    : us ? Temperature.FromDegreesFahrenheit(degrees)
    : Temperature.FromDegreesCelsius(degrees);

static string Words(UpperCutoff cutoff) => cutoff switch
{
    UpperCutoff.None => "",
    UpperCutoff.IntermediateBelowZero => ", intermediate cutoff, below zero too",
    _ => $", {cutoff.ToString().ToLowerInvariant()} cutoff",
};

static string Text(DateOnly? date) => date?.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture) ?? "not in this season";

static string Percent(Ratio share) => share.Percent.ToString("0", CultureInfo.InvariantCulture) + " %";

static string Days(Duration duration) => duration.Days.ToString("0.0", CultureInfo.InvariantCulture);

// The demo lies beside this file, wherever the command is given.
static string Demo([CallerFilePath] string sample = "") => Path.GetRelativePath(
    Environment.CurrentDirectory, Path.Combine(Path.GetDirectoryName(sample)!, "..", "..", "shared", "demo", "weather.csv"));
