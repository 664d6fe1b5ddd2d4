#!/usr/bin/env dotnet
#:project ../../src/HortiCalc/HortiCalc.csproj
#:project HortiCalc.Samples/HortiCalc.Samples.csproj
#:property PublishAot=false

// My frost dates: from a file of daily minima to the last and the first freeze at any chance, how sure they are, and what they rest on.
//
//     dotnet run docs/samples/my-frost-dates.cs
//     dotnet run docs/samples/my-frost-dates.cs -- --weather weather.csv --units us --threshold 28 --chance 20 --recent-years 15
//
// The file is described in shared/demo/README.md; a column of maxima is not needed.

using System.Globalization;
using System.Text.Json;
using System.Text.Json.Nodes;
using HortiCalc.Climate;
using HortiCalc.Display;
using HortiCalc.Evidence;
using HortiCalc.Json;
using HortiCalc.Samples;
using HortiCalc.Season;
using HortiCalc.Units;
using UnitsNet;
using UnitsNet.Units;

const string Help = """
    My frost dates: the last freeze in spring and the first in autumn, from the daily minima of ten years or more.

    dotnet run docs/samples/my-frost-dates.cs -- [options]

      --weather FILE       daily temperatures as CSV; minima alone will do      (shared/demo/weather.csv)
      --threshold DEGREES  a night at or below this counts as a freeze          (0 °C or 32 °F)
      --chance PERCENT     the chance of a freeze that you accept               (10)
      --method NAME        mixed-normal, ranked or resampled                    (mixed-normal)
      --recent-years N     only the last N years of the record, 11 or more      (all)
      --units UNITS        metric or us, for reading and writing                (metric)
      --json               the answers as JSON instead of text
      --help               this text

    Without options it takes the invented weather of shared/demo.
    """;

const int Seed = 1;

return CommandLine.Answer(args, Help, options =>
{
    MeasurementSystem units = options.Units;
    bool us = options.Us;
    string format = options.Format;
    Temperature threshold = options.Number("--threshold", "-2.5") is double degrees
        ? new Temperature(degrees, us ? TemperatureUnit.DegreeFahrenheit : TemperatureUnit.DegreeCelsius)
        : Temperature.FromDegreesCelsius(0);
    Ratio accepted = Ratio.FromPercent(options.Number("--chance", "10") switch
    {
        null => 10,
        double percent and > 0 and < 100 => percent,
        double percent => throw new ArgumentException($"--chance: expected a chance above 0 and below 100 %, found {percent.ToString(CultureInfo.InvariantCulture)}"),
    });
    FreezeDateMethod method = options.Text("--method", "mixed-normal") switch
    {
        "mixed-normal" => FreezeDateMethod.MixedNormal,
        "ranked" => FreezeDateMethod.Ranked(),
        "resampled" => FreezeDateMethod.ResampledYears(Seed),
        string other => throw new ArgumentException($"--method: expected mixed-normal, ranked or resampled, found {other}"),
    };
    int? recent = options.Number("--recent-years", "15") switch
    {
        null => null,
        double years when years == Math.Floor(years) && years is >= 11 and <= 1000 => (int)years,
        _ => throw new ArgumentException($"--recent-years: expected a whole number, 11 or more, found {options.Text("--recent-years", "")}"),
    };

    DailyTemperatures days = options.Read("--weather", "weather.csv", WeatherCsv.Read);
    if (recent is int last && last < days.End.Year && days.End.AddYears(-last) >= days.Start)
        days = days.Between(days.End.AddYears(-last).AddDays(1), days.End);

    FreezeClimate climate = FreezeClimate.FromDaily(days, threshold, new FreezeClimateOptions(method: method));
    FreezeBootstrap sure = new(climate, Seed);
    Ratio confidence = Ratio.FromPercent(95);
    (WinterMinima? winters, string tooFew) = Winters(days, climate.Hemisphere);
    Estimate<HardinessClass>? zone = winters is null ? null : HardinessScheme.UsdaZones.ClassOf(winters.MeanLowest.Value);
    List<Ratio> chances = [.. new[] { 10, 50, 90, accepted.Percent }.Distinct().Order().Select(percent => Ratio.FromPercent(percent))];
    int lengths = climate.SeasonWithoutFreeze.Years.Count;

    // So many years tell no rarer length than this.
    List<Ratio> lengthChances = [.. chances.Where(chance => lengths >= 5 && chance.Percent >= 100.0 / (lengths + 1) && chance.Percent <= 100.0 * lengths / (lengths + 1))];

    if (options.Has("--json"))
    {
        JsonObject answers = new()
        {
            ["climate"] = Node(climate),
            ["chances"] = Nodes(chances),
            ["lastInSpring"] = Nodes(climate.LastInSpring.HasDates ? chances.Select(chance => sure.DateWithChanceOfLaterFreeze(chance, confidence)) : []),
            ["firstInAutumn"] = Nodes(climate.FirstInAutumn.HasDates ? chances.Select(chance => sure.DateWithChanceOfEarlierFreeze(chance, confidence)) : []),
            ["seasonLengthChances"] = Nodes(lengthChances),
            ["seasonLengths"] = Nodes(lengthChances.Select(chance => sure.LengthWithChanceOfLongerSeason(chance, confidence))),
            ["winters"] = winters is null ? null : Node(winters),
            ["hardinessZone"] = zone is null ? null : Node(zone),
        };
        Console.WriteLine(answers.ToJsonString(new JsonSerializerOptions(HortiCalcJson.Options) { WriteIndented = true }));
        return;
    }

    string Show(IQuantity quantity) => QuantityText.Format(quantity, units);
    string Date(MonthDay? date) => date?.ToString(format, CultureInfo.InvariantCulture) ?? "no date";
    string Interval(FreezeDateInterval dates) => $"{Date(dates.Date?.Value),-8} (95 %: {Date(dates.Earliest)} to {Date(dates.Latest)})";

    Console.WriteLine($"Freezes at {Show(threshold)} or colder, {Day(days.Start)} to {Day(days.End)}, {climate.Hemisphere.ToString().ToLowerInvariant()} hemisphere, {climate.Method}");
    Console.WriteLine("Chances are over all years, those without a freeze counted in. The range holds the true date in 95 of 100 such records.");

    Side("Last in spring", "a later freeze", climate.LastInSpring, chance => sure.DateWithChanceOfLaterFreeze(chance, confidence), chance => climate.LastInSpring.DateWithChanceOfLaterFreezeGivenAFreeze(chance));
    Side("First in autumn", "an earlier freeze", climate.FirstInAutumn, chance => sure.DateWithChanceOfEarlierFreeze(chance, confidence), chance => climate.FirstInAutumn.DateWithChanceOfEarlierFreezeGivenAFreeze(chance));

    Console.WriteLine();
    Console.WriteLine($"Season without freeze, from {lengths} yearly lengths");
    foreach (Ratio chance in lengthChances)
    {
        Estimate<Duration> length = sure.LengthWithChanceOfLongerSeason(chance, confidence);
        Console.WriteLine($"  {Show(chance),4} of years have  {Whole(length.Value)} days or more (95 %: {Whole(length.Range!.Low)} to {Whole(length.Range.High)})");
    }

    if (lengthChances.Count == 0)
        Console.WriteLine("  too few years to rank");

    Console.WriteLine();
    Console.WriteLine($"To plan with, {Show(accepted)} accepted");
    Console.WriteLine($"  plant tender crops out from  {(climate.LastInSpring.HasDates ? Date(climate.LastInSpring.EarliestSafePlanting(accepted)?.Value) : "no date")}");
    Console.WriteLine($"  cover or bring in before     {(climate.FirstInAutumn.HasDates ? Date(climate.FirstInAutumn.DateWithChanceOfEarlierFreeze(accepted)?.Value) : "no date")}");

    Console.WriteLine();
    Console.WriteLine("Trend of the record (p below 0.05: hardly chance)");
    Console.WriteLine($"  last in spring               {climate.TrendOfLastInSpring?.ToString() ?? "too few years with a freeze"}");
    Console.WriteLine($"  first in autumn              {climate.TrendOfFirstInAutumn?.ToString() ?? "too few years with a freeze"}");

    Console.WriteLine();
    Console.WriteLine(zone is null
        ? $"Hardiness: {tooFew}"
        : $"Hardiness: {Show(winters!.MeanLowest.Value)} is the mean of the lowest of {winters.Winters.Count} winters: USDA zone {zone.Value.ToString(format, CultureInfo.InvariantCulture)}");

    Console.WriteLine();
    Console.WriteLine(climate.LeftOut.Count == 0 ? "Left out: nothing" : "Left out");
    foreach (LeftOutSeason left in climate.LeftOut)
        Console.WriteLine($"  {left}");

    Console.WriteLine();
    foreach (Caution caution in climate.LastInSpring.Cautions.Concat(climate.FirstInAutumn.Cautions).Concat(climate.SeasonWithoutFreeze.Cautions).Concat(zone?.Cautions ?? []).Distinct())
        Console.WriteLine($"{caution.Level}: {caution.Sentence}");
    return;

    void Side(string title, string words, FreezeDateDistribution freezes, Func<Ratio, FreezeDateInterval> overAll, Func<Ratio, Estimate<MonthDay>?> givenAFreeze)
    {
        Console.WriteLine();
        Console.WriteLine($"{title}: {Show(freezes.ShareOfSeasonsWithFreeze)} of {freezes.Seasons} seasons had a freeze");
        if (!freezes.HasDates)
        {
            Console.WriteLine("  no freeze, so no date");
            return;
        }

        foreach (Ratio chance in chances)
            Console.WriteLine($"  {Show(chance),4} chance of {words}: {Interval(overAll(chance))}");
        Console.WriteLine(freezes.ShareOfSeasonsWithFreeze.Percent >= 100
            ? "  every season had one: given that a freeze comes the dates are the same"
            : $"  given that a freeze comes: {string.Join(", ", chances.Select(chance => $"{Show(chance)} {Date(givenAFreeze(chance)?.Value)}"))}");
    }
});

static (WinterMinima? Winters, string Problem) Winters(DailyTemperatures days, Hemisphere hemisphere)
{
    try
    {
        return (WinterMinima.FromDaily(days, hemisphere), "");
    }
    catch (ArgumentException)
    {
        return (null, "fewer than ten whole winters");
    }
}

static JsonNode Node<T>(T value) => JsonNode.Parse(HortiCalcJson.Serialize(value))!;

static JsonArray Nodes<T>(IEnumerable<T> values) => [.. values.Select(value => Node(value))];

static string Day(DateOnly date) => date.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);

static string Whole(Duration length) => Math.Round(length.Days, MidpointRounding.AwayFromZero).ToString(CultureInfo.InvariantCulture);
