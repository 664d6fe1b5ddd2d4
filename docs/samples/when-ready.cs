#!/usr/bin/env dotnet
#:project ../../src/HortiCalc/HortiCalc.csproj
#:project HortiCalc.Samples/HortiCalc.Samples.csproj
#:property PublishAot=false

// When will this crop be ready, and how sure is that? From the season so far and the past years of the same place:
//
//     dotnet run docs/samples/when-ready.cs
//     dotnet run docs/samples/when-ready.cs -- --weather weather.csv --sown 2025-05-20 --today 2025-07-10 --requirement 900 --base 8
//
// The weather file is described in shared/demo/README.md. Days of a weather forecast may stand at its end: set --today to the last of them.

using System.Globalization;
using HortiCalc.Climate;
using HortiCalc.Evidence;
using HortiCalc.Samples;
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

return CommandLine.Answer(args, Help, options =>
{
    bool us = options.Us;
    string format = options.Format;
    DateOnly sown = Date(options, "--sown", new DateOnly(2025, 5, 15));
    DateOnly today = Date(options, "--today", new DateOnly(2025, 7, 1));
    DateOnly until = Date(options, "--until", new DateOnly(sown.Year, 10, 31));
    ThermalTime sum = options.Number("--requirement", "855") is not double degreeDays ? ThermalTime.FromCelsiusDays(855)
        : us ? ThermalTime.FromFahrenheitDays(degreeDays)
        : ThermalTime.FromCelsiusDays(degreeDays);
    Temperature lower = Degrees(options, "--base") ?? Temperature.FromDegreesCelsius(10);
    Temperature? upper = options.Text("--upper", "") == "none" ? null : Degrees(options, "--upper") ?? Temperature.FromDegreesCelsius(30);
    DegreeDayMethod method = DegreeDayMethod.FromKey(options.Text("--method", "single-sine"));

    DailyTemperatures record = options.Read("--weather", "weather.csv", WeatherCsv.Read);
    if (sown < record.Start || today > record.End || today < sown)
        throw new ArgumentException($"--sown, --today: expected days in order from {Text(record.Start)} to {Text(record.End)}, found {Text(sown)} and {Text(today)}");

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
});

static DateOnly Date(CommandLine options, string option, DateOnly otherwise) =>
    !options.Has(option) ? otherwise
    : DateOnly.TryParseExact(options.Text(option, ""), "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out DateOnly date) ? date
    : throw new ArgumentException($"{option}: expected a date such as 2025-07-01, found {options.Text(option, "")}");

static Temperature? Degrees(CommandLine options, string option) => options.Number(option, "10") is not double degrees ? null
    : options.Us ? Temperature.FromDegreesFahrenheit(degrees)
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
