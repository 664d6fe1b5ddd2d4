#!/usr/bin/env dotnet
#:project ../../src/HortiCalc/HortiCalc.csproj
#:project HortiCalc.Samples/HortiCalc.Samples.csproj
#:property PublishAot=false

// From what is on the bottle of bleach to what goes into the bucket: warnings first, then amounts that can be measured, and the strength
// that really results.
//
//     dotnet run docs/samples/from-label-to-bucket.cs
//     dotnet run docs/samples/from-label-to-bucket.cs -- --label 12.5 --basis trade --target 500 --bucket 2.5 --units us
//     dotnet run docs/samples/from-label-to-bucket.cs -- --label 5.25 --target 1:9
//
// The bottle, the bucket and the water are invented.

using System.Globalization;
using System.Text.Json;
using System.Text.Json.Nodes;
using HortiCalc.Display;
using HortiCalc.Evidence;
using HortiCalc.Json;
using HortiCalc.Mixes;
using HortiCalc.Samples;
using HortiCalc.Units;
using UnitsNet;
using UnitsNet.Units;

const string Help = """
    From label to bucket: how much bleach and water, with what spoon or cup, and how strong it really is.

    dotnet run docs/samples/from-label-to-bucket.cs -- [options]

      --label N          the per cent on the bottle                       (8.25)
      --basis NAME       what it counts: hypochlorite, chlorine or trade  (hypochlorite)
      --density N        of the bleach, kg/L                              (the printed one nearest to the label)
      --target N         available chlorine wanted, mg/L; or a ratio:     (5000)
                         1:9 for one part to nine, 1in10 for one in ten of the mix
      --bucket N         the finished mix, L or US gal                    (10 L)
      --kitchen NAME     us, metric, imperial, australian or graduated    (that of --units)
      --limit N          the largest error of measuring, %                (5)
      --ph N             pH measured in the mix, for the share that kills (not asked)
      --with NAMES       what else would go in, such as vinegar,soap      (nothing)
      --units UNITS      metric or us, for what is read and printed       (metric)
      --json             the answer as JSON
      --help             this text

    Without options it takes an invented bottle and a bucket for pots.
    """;

return CommandLine.Answer(args, Help, options =>
{
    MeasurementSystem units = options.Units;
    bool us = options.Us;
    string format = options.Format;
    CultureInfo culture = CultureInfo.InvariantCulture;

    // What the label says and what is wanted. All is worked out before the first line is printed.
    double percent = options.Number("--label", "8.25") ?? 8.25;
    string basis = options.Text("--basis", "hypochlorite");
    Density density = options.Number("--density", "1.11") is double heavy ? Density.FromKilogramsPerLiter(heavy) : Printed(basis, percent);
    HypochloriteLabel label = basis switch
    {
        "hypochlorite" => HypochloriteLabel.SodiumHypochlorite(MassFraction.FromPercent(percent), density),
        "chlorine" => HypochloriteLabel.ChlorineByMass(MassFraction.FromPercent(percent), density),
        "trade" => HypochloriteLabel.Trade(Ratio.FromPercent(percent), density),
        string other => throw new ArgumentException($"--basis: expected hypochlorite, chlorine or trade, found {other}"),
    };
    MixRatio? ratio = WantedRatio(options);
    MassConcentration target = ratio is MixRatio mix ? Hypochlorite.StrengthOf(label, mix).Value : MassConcentration.FromMilligramsPerLiter(options.Number("--target", "5000") ?? 5000);
    Volume bucket = new(options.Number("--bucket", "10") ?? (us ? 2.5 : 10), us ? VolumeUnit.UsGallon : VolumeUnit.Liter);
    Ratio limit = Ratio.FromPercent(options.Number("--limit", "5") ?? 5);
    Ph? pH = options.Number("--ph", "7.5") is double measuredPh ? new Ph(measuredPh) : null;

    // What must not meet is refused before anything is measured.
    _ = new PlannedTank("bucket", isStock: false, [MixIngredients.HouseholdBleach, .. Others(options)]);

    Estimate<MixBatch> batch = Hypochlorite.MakeUpTo(bucket, label, target);
    IReadOnlyList<KitchenMeasure> kitchen = Kitchen(options);
    PracticalAmount measured = Measuring.Nearest(batch.Value.Concentrate, kitchen, limit);
    Volume water = bucket - measured.Measured;
    Strength real = Dilution.Combine(measured.Measured, water, label.Strength).Strength!;
    Estimate<Ratio>? acid = pH is Ph read ? HypochlorousAcid.Share(read, HypochlorousConstant.UsGeologicalSurvey) : null;

    if (options.Has("--json"))
    {
        JsonObject answers = new()
        {
            ["batch"] = Node(batch),
            ["measured"] = Node(measured),
            ["strength"] = Node(real),
            ["hypochlorousAcid"] = acid is null ? null : Node(acid),
        };
        Console.WriteLine(answers.ToJsonString(new JsonSerializerOptions(HortiCalcJson.Options) { WriteIndented = true }));
        return;
    }

    void Line(string name, string text) => Console.WriteLine($"{name,-12}{text}");

    IReadOnlyList<Caution> cautions = [.. batch.Cautions.OrderByDescending(caution => caution.Level)];
    foreach (Caution caution in cautions)
        Line(caution.Level.ToString(), caution.Sentence);
    Console.WriteLine();
    Line("Label", label.ToString(format, culture));
    if (basis != "trade")
        Line("Density", $"{density.KilogramsPerLiter.ToString("0.00", culture)} kg/L, {(options.Has("--density") ? "as given" : "the printed one nearest to the label; the safety data sheet of the bottle knows better")}");
    if (ratio is MixRatio said)
        Line("Ratio", said.ToString());
    Line("Wanted", $"{Level(target)} of available chlorine in {QuantityText.Format(bucket, units)}");
    Line("Exactly", batch.Value.ToString(format, culture));
    Line("Measure", measured.ToString(format, culture));
    Line("Water", $"fill up to {QuantityText.Format(bucket, units)}, that is {QuantityText.Format(water, units)}; water first, then the bleach");
    Line("Really", $"{Level(((StrengthPerVolume)real).Concentration)} of available chlorine");
    if (acid is not null)
        Line("Kills", $"{QuantityText.Format(acid.Value, units)} of it is hypochlorous acid ({acid.Range!.ToString(format, culture)}, by the published constants)");
    Line("Use within", $"{ChlorineLoss.UseWithin.Range!.ToString(format, culture)}, {ChlorineLoss.UseWithin.Range.Meaning}");

    // Levels and times belong together: a time holds for its own level, not for a weaker mix.
    IReadOnlyList<ContactRecord> records = [.. new[] { MixUse.Pots, MixUse.Tools, MixUse.Benches }.SelectMany(ContactTimes.For).Where(record => record.Agent == MixIngredients.HouseholdBleach)];
    Console.WriteLine();
    Console.WriteLine("Published levels and times; each time is for its own level, and things are cleaned first");
    foreach (ContactRecord record in records)
    {
        string time = record.Time is Duration least ? $"at least {QuantityText.Format(least, units)}" : "no time printed";
        Console.WriteLine($"  {Level(record.Low)}, {time}: {record.Name}; {Rinsing(record.Rinse)}");
    }

    Console.WriteLine();
    Console.WriteLine("Sources");
    foreach (string source in records.Select(record => record.Source).Prepend(batch.Method.Source).Concat(cautions.Select(caution => caution.Source)).Select(source => source.ToString()).Distinct())
        Console.WriteLine($"  {source}");
});

static JsonNode Node<T>(T value) => JsonNode.Parse(HortiCalcJson.Serialize(value))!;

// The printed densities are of 6 and 8.25 % by mass; far from them the bottle's own is asked for.
static Density Printed(string basis, double percent)
{
    if (basis == "trade")
        return HypochloriteDensities.TwelveAndAHalfTradePercent;
    double hypochlorite = basis == "chlorine" && percent is > 0 and < 95 ? Hypochlorite.SodiumHypochloriteByMass(MassFraction.FromPercent(percent)).Percent : percent;
    return hypochlorite switch
    {
        < 5 or > 9 => throw new ArgumentException(
            $"--density: expected with a label of {percent.ToString(CultureInfo.InvariantCulture)} %, for printed densities are of household bleach, from 5 to 9 % hypochlorite"),
        < 7.125 => HypochloriteDensities.SixPercent,
        _ => HypochloriteDensities.EightAndAQuarterPercent,
    };
}

// "1:9" is read as one part to nine, and the answer says so in both meanings.
static MixRatio? WantedRatio(CommandLine options)
{
    string text = options.Text("--target", "");
    string[] halves = text.Split(text.Contains(':', StringComparison.Ordinal) ? ":" : "in");
    if (halves.Length == 1)
        return null;
    return halves.Length == 2
        && double.TryParse(halves[0], NumberStyles.Float, CultureInfo.InvariantCulture, out double one) && one > 0 && double.IsFinite(one)
        && double.TryParse(halves[1], NumberStyles.Float, CultureInfo.InvariantCulture, out double other) && other > 0 && double.IsFinite(other)
        ? text.Contains(':', StringComparison.Ordinal) ? MixRatio.PartsToParts(one, other) : MixRatio.OneIn(other / one)
        : throw new ArgumentException($"--target: expected mg/L such as 5000, or a ratio such as 1:9 or 1in10, found {text}");
}

// In mg/L whatever the units, as every source prints it, so that levels can be compared by eye.
static string Level(MassConcentration level) => $"{level.MilligramsPerLiter.ToString("0", CultureInfo.InvariantCulture)} mg/L";

static string Rinsing(RinseAdvice advice) => advice switch
{
    RinseAdvice.Rinse => "then rinse with clean water",
    RinseAdvice.RinseMetal => "then rinse metal",
    RinseAdvice.DoNotRinse => "let it dry, do not rinse",
    _ => "the source says nothing of a rinse",
};

static IReadOnlyList<KitchenMeasure> Kitchen(CommandLine options) => options.Text("--kitchen", options.Us ? "us" : "metric") switch
{
    "us" => KitchenMeasures.Us,
    "metric" => KitchenMeasures.Metric,
    "imperial" => KitchenMeasures.Imperial,
    "australian" => KitchenMeasures.Australian,
    "graduated" => KitchenMeasures.Graduated,
    string other => throw new ArgumentException($"--kitchen: expected us, metric, imperial, australian or graduated, found {other}"),
};

static IEnumerable<MixIngredient> Others(CommandLine options) => options.Text("--with", "").Split(',', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries).Select(name => name switch
{
    "vinegar" => MixIngredients.Vinegar,
    "ammonia" => MixIngredients.Ammonia,
    "alcohol" => MixIngredients.RubbingAlcohol,
    "soap" => MixIngredients.LiquidSoap,
    "citric-acid" => MixIngredients.CitricAcid,
    "feed" => MixIngredients.AmmoniumFertiliser,
    string other => throw new ArgumentException($"--with: expected vinegar, ammonia, alcohol, soap, citric-acid or feed, found {other}"),
});
