#!/usr/bin/env dotnet
#:project ../../src/HortiCalc/HortiCalc.csproj
#:property PublishAot=false

// How much lime: from a soil report to the amount by every published method that the report allows, why they differ, and what to take care of.
//
//     dotnet run docs/samples/how-much-lime.cs
//     dotnet run docs/samples/how-much-lime.cs -- --report soil.json --target 6.4 --depth 6 --area 200 --equivalent 92 --units us
//
// The report is described in shared/demo/README.md. In a notebook, the three lines that matter are
//
//     SoilReport soil = HortiCalcJson.Deserialize<SoilReport>(File.ReadAllText("soil.json"));
//     LimeComparison comparison = Liming.Compare(soil, new Ph(6.5), Length.FromCentimeters(15));
//     comparison

using System.Globalization;
using System.Runtime.CompilerServices;
using System.Text;
using System.Text.Json;
using HortiCalc.Display;
using HortiCalc.Evidence;
using HortiCalc.Json;
using HortiCalc.Soil;
using HortiCalc.Units;
using UnitsNet;
using UnitsNet.Units;

const string Help = """
    How much lime: a soil report, by every published method that it allows, for one depth and in the lime at hand.

    dotnet run docs/samples/how-much-lime.cs -- [options]

      --report FILE         the soil report as JSON                               (shared/demo/soil-report.json)
      --target PH           the pH in water that is wanted                        (6.5)
      --depth LENGTH        how deep the lime is worked in, cm or in              (15 cm or 6 in)
      --area AREA           the ground to be limed, m² or ft²                     (10 m² or 100 ft²)
      --equivalent PERCENT  the calcium carbonate equivalent on the bag           (100)
      --units UNITS         metric or us, for reading and writing                 (metric)
      --json                the comparison as JSON instead of text
      --help                this text

    Without options it takes the invented report of shared/demo.
    """;

Console.OutputEncoding = Encoding.UTF8;
if (args.Contains("--help") || args.Contains("-h"))
{
    Console.WriteLine(Help);
    return 0;
}

Dictionary<string, string> given = [];
string file = Demo();
try
{
    for (int i = 0; i < args.Length; i++)
    {
        if (args[i] == "--json")
            given[args[i]] = "";
        else if (args[i] is "--report" or "--target" or "--depth" or "--area" or "--equivalent" or "--units")
            given[args[i]] = i + 1 < args.Length ? args[++i] : throw new ArgumentException($"{args[i]}: expected a value, found nothing");
        else
            throw new ArgumentException($"{args[i]}: expected one of the options that --help lists");
    }

    file = given.GetValueOrDefault("--report", file);
    MeasurementSystem units = given.GetValueOrDefault("--units", "metric") switch
    {
        "metric" => MeasurementSystem.Metric,
        "us" => MeasurementSystem.UsCustomary,
        string other => throw new ArgumentException($"--units: expected metric or us, found {other}"),
    };
    bool us = units == MeasurementSystem.UsCustomary;
    Ph target = new(Number("--target") ?? 6.5);
    Length depth = new(Number("--depth") ?? (us ? 6 : 15), us ? LengthUnit.Inch : LengthUnit.Centimeter);
    Area area = new(Number("--area") ?? (us ? 100 : 10), us ? AreaUnit.SquareFoot : AreaUnit.SquareMeter);
    LimingMaterial material = Number("--equivalent") is double percent
        ? new LimingMaterial("the lime at hand", Ratio.FromPercent(percent))
        : LimingMaterial.GroundLimestone;

    SoilReport soil = HortiCalcJson.Deserialize<SoilReport>(File.ReadAllText(file));
    LimeComparison comparison = Liming.Compare(soil, target, depth, material);

    if (given.ContainsKey("--json"))
    {
        Console.WriteLine(JsonSerializer.Serialize(JsonSerializer.Deserialize<JsonElement>(HortiCalcJson.Serialize(comparison)), new JsonSerializerOptions { WriteIndented = true }));
        return 0;
    }

    string Show(IQuantity quantity) => QuantityText.Format(quantity, units);

    Console.WriteLine($"{material.Name} to {target}, worked in {Show(depth)} deep, for {Show(area)}");
    Console.WriteLine($"The soil: {soil}");

    Console.WriteLine();
    Console.WriteLine(comparison.Answers.Count == 0 ? "No method answers for this report." : "By method, the least first");
    foreach (LimeRequirement answer in comparison.Answers.OrderBy(answer => answer.Rate.Value.KilogramsPerSquareMeter))
    {
        string depthOf = answer.Depth is null ? "  (as published; its source names no depth)" : "";
        Console.WriteLine($"  {Show(answer.Rate.Value),16}  {Show(answer.Over(area).Value),9}  {answer.Rate.Method.Name}{depthOf}");
    }

    if (comparison.Spread is { } spread)
    {
        Console.WriteLine();
        Console.WriteLine($"Between {Show(spread.Low)} and {Show(spread.High)}: {spread.Meaning}.");
        Console.WriteLine("Give the least first, test again, and go on from there: lime is easily added and never taken out.");
    }

    Section("Why they differ", comparison.WhyTheyDiffer);
    Section("Not used", comparison.Refusals.Select(refusal => refusal.ToString()));
    Section("Take care", comparison.Cautions.OrderByDescending(caution => caution.Level).Select(caution => $"{caution.Level}: {caution.Sentence}{Where(comparison, caution)}"));
    Section("Sources", comparison.Answers.Select(answer => answer.Rate.Method.Source.ToString()).Distinct());
    return 0;
}
catch (Exception missing) when (missing is FileNotFoundException or DirectoryNotFoundException)
{
    return Fail($"{file}: expected a file, found none");
}
catch (Exception unreadable) when (unreadable is IOException or UnauthorizedAccessException)
{
    return Fail($"{file}: expected a file that can be read: {unreadable.Message}");
}
catch (JsonException malformed)
{
    return Fail($"{file}: {malformed.Message}");
}
catch (ArgumentException refused)
{
    // The first line says what was wrong; the rest only names the parameter again.
    return Fail(refused.Message.ReplaceLineEndings("\n").Split('\n')[0].Replace($" (Parameter '{refused.ParamName}')", "", StringComparison.Ordinal));
}

int Fail(string problem)
{
    Console.Error.WriteLine(problem.ReplaceLineEndings(" "));
    return 1;
}

void Section(string title, IEnumerable<string> lines)
{
    List<string> all = [.. lines];
    if (all.Count == 0)
        return;
    Console.WriteLine();
    Console.WriteLine(title);
    foreach (string line in all)
        Console.WriteLine($"  {line}");
}

// A caution that is not for every answer says for how many.
static string Where(LimeComparison comparison, Caution caution)
{
    int concerned = comparison.Answers.Count(answer => answer.Rate.Cautions.Contains(caution));
    return concerned == 0 || concerned == comparison.Answers.Count ? "" : $" ({concerned} of {comparison.Answers.Count} answers)";
}

double? Number(string option) => !given.TryGetValue(option, out string? text) ? null
    : double.TryParse(text, NumberStyles.Float, CultureInfo.InvariantCulture, out double number) && double.IsFinite(number) ? number
    : throw new ArgumentException($"{option}: expected a number such as 6.5, found {text}");

// The demo lies beside this file, wherever the command is given.
static string Demo([CallerFilePath] string sample = "") => Path.GetRelativePath(
    Environment.CurrentDirectory, Path.Combine(Path.GetDirectoryName(sample)!, "..", "..", "shared", "demo", "soil-report.json"));
