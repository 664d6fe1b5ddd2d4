#!/usr/bin/env dotnet
#:project ../../src/HortiCalc/HortiCalc.csproj
#:property PublishAot=false

// Plans a growing season from a site file (JSON) and a weather file (CSV):
//
//     dotnet run docs/samples/plan-season.cs
//     dotnet run docs/samples/plan-season.cs -- --site site.json --weather weather.csv --units us
//
// Both formats are described in shared/demo/README.md.

using System.Globalization;
using System.Runtime.CompilerServices;
using System.Text;
using HortiCalc.Climate;
using HortiCalc.Json;
using HortiCalc.Season;
using HortiCalc.Units;

const string Help = """
    Plans a growing season: supplies, dates, risks and cautions, every line with its source.

    dotnet run docs/samples/plan-season.cs -- [options]

      --site FILE        the garden, as JSON                       (shared/demo/site.json)
      --weather FILE     daily temperatures, as CSV                (shared/demo/weather.csv)
      --units UNITS      metric or us                              (metric)
      --culture NAME     culture of the numbers, such as de-DE     (invariant)
      --json             the plan as JSON instead of text
      --help             this text

    Without options it plans the invented garden of shared/demo.
    """;

Console.OutputEncoding = Encoding.UTF8;
if (args.Contains("--help") || args.Contains("-h"))
{
    Console.WriteLine(Help);
    return 0;
}

string site = Path.Combine(DemoFolder(), "site.json");
string weather = Path.Combine(DemoFolder(), "weather.csv");
MeasurementSystem units = MeasurementSystem.Metric;
CultureInfo culture = CultureInfo.InvariantCulture;
bool json = false;
List<string> problems = [];

for (int i = 0; i < args.Length; i++)
{
    string option = args[i];
    if (option == "--json")
    {
        json = true;
        continue;
    }

    string? value = i + 1 < args.Length ? args[++i] : null;
    switch (option, value)
    {
        case ("--site", not null):
            site = value;
            break;
        case ("--weather", not null):
            weather = value;
            break;
        case ("--units", "metric"):
            units = MeasurementSystem.Metric;
            break;
        case ("--units", "us"):
            units = MeasurementSystem.UsCustomary;
            break;
        case ("--units", _):
            problems.Add($"--units: expected metric or us, found {value ?? "nothing"}");
            break;
        case ("--culture", not null):
            try
            {
                culture = CultureInfo.GetCultureInfo(value, predefinedOnly: true);
            }
            catch (CultureNotFoundException)
            {
                problems.Add($"--culture: expected the name of a culture such as de-DE, found {value}");
            }

            break;
        case ("--site" or "--weather" or "--culture", null):
            problems.Add($"{option}: expected a value, found nothing");
            break;
        default:
            problems.Add($"{option}: expected one of the options that --help lists");
            break;
    }
}

bool options = problems.Count == 0;
Garden? garden = options ? Read(site, GardenFile.Read) : null;
DailyTemperatures? days = options ? Read(weather, text => WeatherCsv.Read(new StringReader(text))) : null;
if (garden is null || days is null || problems.Count > 0)
{
    foreach (string problem in problems)
        Console.Error.WriteLine(problem);
    return 1;
}

SeasonPlan plan = SeasonPlan.For(garden, days);
Console.Write(json
    ? HortiCalcJson.Serialize(plan) + "\n"
    : plan.ToText(units, culture));
return 0;

// Reads a file, or says in one line what is wrong with it.
T? Read<T>(string file, Func<string, T> parse)
    where T : class
{
    try
    {
        return parse(File.ReadAllText(file));
    }
    catch (MalformedInputException malformed)
    {
        problems.Add($"{file}, {malformed.Message}");
    }
    catch (Exception missing) when (missing is FileNotFoundException or DirectoryNotFoundException)
    {
        problems.Add($"{file}: expected a file, found none");
    }
    catch (Exception unreadable) when (unreadable is IOException or UnauthorizedAccessException)
    {
        problems.Add($"{file}: expected a file that can be read: {unreadable.Message}");
    }

    return null;
}

// The demo lies beside this file, wherever the command is given.
static string DemoFolder([CallerFilePath] string sample = "") =>
    Path.GetRelativePath(Environment.CurrentDirectory, Path.Combine(Path.GetDirectoryName(sample)!, "..", "..", "shared", "demo"));
