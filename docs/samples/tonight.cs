#!/usr/bin/env dotnet
#:project ../../src/HortiCalc/HortiCalc.csproj
#:property PublishAot=false

// From what is read two hours after sunset: how cold the night becomes, how sure that is, what it does to the crop, and what to do when.
//
//     dotnet run docs/samples/tonight.cs
//     dotnet run docs/samples/tonight.cs -- --temperature 39 --dew-point 27 --wind 2 --crop peach --stage "full bloom" --units us
//
// The file of past nights is described in shared/demo/README.md.

using System.Globalization;
using System.Runtime.CompilerServices;
using System.Text;
using HortiCalc.Climate;
using HortiCalc.Display;
using HortiCalc.Evidence;
using HortiCalc.Units;
using UnitsNet;
using UnitsNet.Units;

const string Help = """
    Tonight: from the readings of an evening to minimum, hours of danger, damage and what to do, each with its source.

    dotnet run docs/samples/tonight.cs -- [options]

      --temperature N    air temperature two hours after sunset       (4.2 °C)
      --dew-point N      dew point then                               (-3.1 °C)
      --humidity N       relative humidity in %, instead of the dew point
      --wind N           wind speed, m/s or mph                       (0.8 m/s)
      --cloudy           there is cloud, fog or rain                  (clear)
      --sunset TIME      as 2027-04-20T20:04                          (20 April 2027)
      --sunrise TIME     of the next morning                          (06:02)
      --crop NAME        such as apple, "sweet cherry", strawberry    (apple)
      --stage NAME       such as "full bloom"                         (full bloom)
      --nights FILE      past clear, calm nights, as CSV              (shared/demo/frost-nights.csv)
      --fitting NAME     two-step, joint or temperature               (two-step)
      --units UNITS      metric or us, for what is read and printed   (metric)
      --help             this text

    Without options it takes an invented evening of the garden of shared/demo.
    """;

Console.OutputEncoding = Encoding.UTF8;
if (args.Contains("--help") || args.Contains("-h"))
{
    Console.WriteLine(Help);
    return 0;
}

Dictionary<string, string> given = [];
try
{
    for (int i = 0; i < args.Length; i++)
    {
        if (args[i] == "--cloudy")
            given[args[i]] = "";
        else if (args[i] is "--temperature" or "--dew-point" or "--humidity" or "--wind" or "--sunset" or "--sunrise" or "--crop" or "--stage"
            or "--nights" or "--fitting" or "--units")
            given[args[i]] = i + 1 < args.Length ? args[++i] : throw new ArgumentException($"{args[i]}: expected a value, found nothing");
        else
            throw new ArgumentException($"{args[i]}: expected one of the options that --help lists");
    }

    MeasurementSystem units = Text("--units", "metric") switch
    {
        "metric" => MeasurementSystem.Metric,
        "us" => MeasurementSystem.UsCustomary,
        string other => throw new ArgumentException($"--units: expected metric or us, found {other}"),
    };
    bool us = units == MeasurementSystem.UsCustomary;
    string format = us ? "U" : "M";
    TemperatureUnit degrees = us ? TemperatureUnit.DegreeFahrenheit : TemperatureUnit.DegreeCelsius;

    // What was read.
    Temperature temperature = Number("--temperature") is double air ? new Temperature(air, degrees) : Temperature.FromDegreesCelsius(4.2);
    Temperature dewPoint = Number("--dew-point") is double dew ? new Temperature(dew, degrees)
        : Number("--humidity") is double humidity
            ? MoistAir.FromRelativeHumidity(temperature, RelativeHumidity.FromPercent(humidity), Pressure.FromKilopascals(101.325)).DewPoint()
            : Temperature.FromDegreesCelsius(-3.1);
    Speed wind = Number("--wind") is double blows
        ? new Speed(blows, us ? SpeedUnit.MilePerHour : SpeedUnit.MeterPerSecond)
        : Speed.FromMetersPerSecond(0.8);
    DateTime sunset = Time("--sunset", new DateTime(2027, 4, 20, 20, 4, 0));
    DateTime sunrise = Time("--sunrise", sunset.Date.AddDays(1).AddHours(6).AddMinutes(2));
    bool isClear = !given.ContainsKey("--cloudy");
    IReadOnlyList<CriticalTemperature> crop = CriticalTemperatures.For(Text("--crop", "apple"), Text("--stage", "full bloom"));
    FrostEvening evening = new(sunset, sunrise, temperature, dewPoint, wind, isClear);

    // Nothing is published for windy or cloudy nights but the forecast. All is worked out before the first line is printed.
    FrostNight? night = wind.MetersPerSecond < 2 && isClear
        ? new FrostNight(evening, new NightMinimumModel(Fitting(), Nights()), crop)
        : null;

    string Show(IQuantity quantity) => QuantityText.Format(quantity, units);
    string Clock(DateTime? time) => time is DateTime known ? known.ToString("HH:mm", CultureInfo.InvariantCulture) : "not tonight";
    void Line(string label, string text) => Console.WriteLine($"{label,-14}{text}");

    Estimate<FrostType> type = FrostTypes.Of(wind, isClear);
    Console.WriteLine($"Night of {sunset:yyyy-MM-dd}: {Show(temperature)}, dew point {Show(dewPoint)}, wind {Show(wind)}, {(isClear ? "clear" : "not clear")}");
    Line("Frost", $"{type.Value.ToString().ToLowerInvariant()} by {type.Method}");

    if (night is not FrostNight tonight)
    {
        Line("Minimum", "take it from the local forecast: the regression is for wind below 2 m/s and a clear sky");
        foreach (CriticalTemperature line in crop)
            Line("Crop", line.ToString(format, CultureInfo.InvariantCulture));
        foreach (Caution caution in type.Cautions)
            Line(caution.Level.ToString(), caution.Sentence);
        return 0;
    }

    Line("To do", tonight.Advice switch
    {
        FrostAdvice.Protect => "protect the crop",
        FrostAdvice.BeReady => "be ready: the cold end of the range harms the crop",
        _ => "watch the thermometer",
    });
    Line("Minimum", $"{Show(tonight.Minimum.Value)} at {Clock(sunrise)} ({tonight.Minimum.Range!.ToString(format, CultureInfo.InvariantCulture)}, {tonight.Minimum.Range.Meaning})");
    Line("How sure", tonight.Model.ToString(format, CultureInfo.InvariantCulture));
    Line("Called", string.Join(", ", tonight.Definitions.Select(word => word.Term).DefaultIfEmpty("no frost by any definition")));
    Line("Harm from", $"{Show(tonight.Harmful)}, chance {Show(tonight.ChanceOfHarm.Value)}; "
        + (tonight.TimeOfHarm is null ? "the minimum to expect is warmer" : $"at {Clock(tonight.TimeOfHarm)}, for {Show(tonight.DurationOfHarm)} up to sunrise"));
    foreach (FrostDamage damage in tonight.Damage)
        Line("Damage", damage.ToString(format, CultureInfo.InvariantCulture));
    foreach (RowCover cover in RowCover.All.Take(2))
        Line("Cover", $"{cover} keeps it {cover.Gain.Range!.ToString(format, CultureInfo.InvariantCulture)} warmer [{cover.Evidence.Source}]");
    if (tonight.SprinklerStart is Estimate<Temperature> start)
    {
        Line("Sprinklers", $"start at {Show(start.Value)} ({Clock(tonight.SprinklerStartTime)}), "
            + $"stop above {Show(Sprinkling.StopTemperature(dewPoint, tonight.Harmful).Value)} when the ice melts; {start.Method.Name}");
    }

    if (tonight.Cooling.AtFullHours() is HourlyTemperatures hours)
    {
        Line("Hour by hour", string.Join("  ", Enumerable.Range(0, hours.Count).Select(hour => hours.Start.AddHours(hour))
            .Select(hour => $"{Clock(hour)} {Show(hours[hour]!.Value)}")));
    }

    foreach (Caution caution in tonight.Cautions)
        Line(caution.Level.ToString(), caution.Sentence);
    return 0;
}
catch (ArgumentException refused)
{
    // The first line says what was wrong; the rest only names the parameter again.
    Console.Error.WriteLine(refused.Message.ReplaceLineEndings("\n").Split('\n')[0].Replace($" (Parameter '{refused.ParamName}')", "", StringComparison.Ordinal));
    return 1;
}
catch (Exception unreadable) when (unreadable is IOException or UnauthorizedAccessException)
{
    Console.Error.WriteLine($"{Text("--nights", "the demo")}: expected a file that can be read: {unreadable.Message}");
    return 1;
}

string Text(string option, string usual) => given.GetValueOrDefault(option, usual);

double? Number(string option) => !given.TryGetValue(option, out string? text) ? null
    : double.TryParse(text, NumberStyles.Float, CultureInfo.InvariantCulture, out double number) && double.IsFinite(number) ? number
    : throw new ArgumentException($"{option}: expected a number such as -3.5, found {text}");

NightMinimumFitting Fitting() => Text("--fitting", "two-step") switch
{
    "two-step" => NightMinimumFitting.TwoStep,
    "joint" => NightMinimumFitting.Joint,
    "temperature" => NightMinimumFitting.TemperatureOnly,
    string other => throw new ArgumentException($"--fitting: expected two-step, joint or temperature, found {other}"),
};

DateTime Time(string option, DateTime usual) => !given.TryGetValue(option, out string? text) ? usual
    : DateTime.TryParseExact(text, "yyyy-MM-dd'T'HH:mm", CultureInfo.InvariantCulture, DateTimeStyles.None, out DateTime time) ? time
    : throw new ArgumentException($"{option}: expected a time such as 2027-04-20T20:04, found {text}");

// Past nights: the first line that is no comment names the columns.
List<PastNight> Nights([CallerFilePath] string sample = "")
{
    string file = Text("--nights", Path.Combine(Path.GetDirectoryName(sample)!, "..", "..", "shared", "demo", "frost-nights.csv"));
    string name = given.ContainsKey("--nights") ? file : "frost-nights.csv";
    List<PastNight> nights = [];
    string[]? columns = null;
    int number = 0;
    foreach (string line in File.ReadLines(file))
    {
        number++;
        if (line.StartsWith('#') || line.Trim().Length == 0)
            continue;
        string[] fields = [.. line.Split(',').Select(field => field.Trim())];
        if (columns is null)
        {
            columns = fields;
            continue;
        }

        Temperature Field(string column)
        {
            int celsius = Array.IndexOf(columns, column + "_c");
            int index = celsius >= 0 ? celsius : Array.IndexOf(columns, column + "_f");
            if (index < 0)
                throw new ArgumentException($"{name}: expected a column {column}_c or {column}_f, found {string.Join(", ", columns)}");
            return index < fields.Length && double.TryParse(fields[index], NumberStyles.Float, CultureInfo.InvariantCulture, out double value) && double.IsFinite(value)
                ? new Temperature(value, celsius >= 0 ? TemperatureUnit.DegreeCelsius : TemperatureUnit.DegreeFahrenheit)
                : throw new ArgumentException($"{name}, line {number}: expected a temperature for {column}, found \"{fields.ElementAtOrDefault(index)}\"");
        }

        try
        {
            nights.Add(new PastNight(Field("evening"), Field("dew_point"), Field("minimum")));
        }
        catch (ArgumentOutOfRangeException refused)
        {
            throw new ArgumentException($"{name}, line {number}: {refused.Message}");
        }
    }

    return nights;
}
