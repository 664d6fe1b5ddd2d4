#!/usr/bin/env dotnet
#:project ../../src/HortiCalc/HortiCalc.csproj
#:project HortiCalc.Samples/HortiCalc.Samples.csproj
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
using System.Text.Json;
using HortiCalc.Display;
using HortiCalc.Evidence;
using HortiCalc.Json;
using HortiCalc.Samples;
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

return CommandLine.Answer(args, Help, options =>
{
    bool us = options.Us;
    MeasurementSystem units = options.Units;
    Ph target = new(options.Number("--target", "6.5") ?? 6.5);
    Length depth = new(options.Number("--depth", "6.5") ?? (us ? 6 : 15), us ? LengthUnit.Inch : LengthUnit.Centimeter);
    Area area = new(options.Number("--area", "6.5") ?? (us ? 100 : 10), us ? AreaUnit.SquareFoot : AreaUnit.SquareMeter);
    LimingMaterial material = options.Number("--equivalent", "6.5") is double percent
        ? new LimingMaterial("the lime at hand", Ratio.FromPercent(percent))
        : LimingMaterial.GroundLimestone;

    SoilReport soil = options.Read("--report", "soil-report.json", file => HortiCalcJson.Deserialize<SoilReport>(file.ReadToEnd()));
    LimeComparison comparison = Liming.Compare(soil, target, depth, material);

    if (options.Has("--json"))
    {
        Console.WriteLine(JsonSerializer.Serialize(JsonSerializer.Deserialize<JsonElement>(HortiCalcJson.Serialize(comparison)), new JsonSerializerOptions { WriteIndented = true }));
        return;
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
});

static void Section(string title, IEnumerable<string> lines)
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
