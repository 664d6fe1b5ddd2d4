#!/usr/bin/env dotnet
#:project ../../src/HortiCalc/HortiCalc.csproj
#:project HortiCalc.Samples/HortiCalc.Samples.csproj
#:property PublishAot=false

// From what is read two hours after sunset: how cold the night becomes, how sure that is, what it does to the crop, and what to do when.
//
//     dotnet run docs/samples/tonight.cs
//     dotnet run docs/samples/tonight.cs -- --temperature 39 --dew-point 27 --wind 2 --crop peach --stage "full bloom" --units us
//
// The file of past nights is described in shared/demo/README.md.

using System.Globalization;
using HortiCalc.Climate;
using HortiCalc.Display;
using HortiCalc.Evidence;
using HortiCalc.Samples;
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

return CommandLine.Answer(args, Help, options =>
{
    MeasurementSystem units = options.Units;
    bool us = options.Us;
    string format = options.Format;
    TemperatureUnit degrees = us ? TemperatureUnit.DegreeFahrenheit : TemperatureUnit.DegreeCelsius;

    // What was read.
    Temperature temperature = options.Number("--temperature", "-3.5") is double air ? new Temperature(air, degrees) : Temperature.FromDegreesCelsius(4.2);
    Temperature dewPoint = options.Number("--dew-point", "-3.5") is double dew ? new Temperature(dew, degrees)
        : options.Number("--humidity", "-3.5") is double humidity
            ? MoistAir.FromRelativeHumidity(temperature, RelativeHumidity.FromPercent(humidity), Pressure.FromKilopascals(101.325)).DewPoint()
            : Temperature.FromDegreesCelsius(-3.1);
    Speed wind = options.Number("--wind", "-3.5") is double blows
        ? new Speed(blows, us ? SpeedUnit.MilePerHour : SpeedUnit.MeterPerSecond)
        : Speed.FromMetersPerSecond(0.8);
    DateTime sunset = Time(options, "--sunset", new DateTime(2027, 4, 20, 20, 4, 0));
    DateTime sunrise = Time(options, "--sunrise", sunset.Date.AddDays(1).AddHours(6).AddMinutes(2));
    bool isClear = !options.Has("--cloudy");
    IReadOnlyList<CriticalTemperature> crop = CriticalTemperatures.For(options.Text("--crop", "apple"), options.Text("--stage", "full bloom"));
    FrostEvening evening = new(sunset, sunrise, temperature, dewPoint, wind, isClear);

    // Nothing is published for windy or cloudy nights but the forecast. All is worked out before the first line is printed.
    FrostNight? night = wind.MetersPerSecond < 2 && isClear
        ? new FrostNight(evening, new NightMinimumModel(Fitting(options), options.Read("--nights", "frost-nights.csv", reader => Nights(reader, options.Text("--nights", "frost-nights.csv")))), crop)
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
        return;
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
});

static NightMinimumFitting Fitting(CommandLine options) => options.Text("--fitting", "two-step") switch
{
    "two-step" => NightMinimumFitting.TwoStep,
    "joint" => NightMinimumFitting.Joint,
    "temperature" => NightMinimumFitting.TemperatureOnly,
    string other => throw new ArgumentException($"--fitting: expected two-step, joint or temperature, found {other}"),
};

static DateTime Time(CommandLine options, string option, DateTime usual) => !options.Has(option) ? usual
    : DateTime.TryParseExact(options.Text(option, ""), "yyyy-MM-dd'T'HH:mm", CultureInfo.InvariantCulture, DateTimeStyles.None, out DateTime time) ? time
    : throw new ArgumentException($"{option}: expected a time such as 2027-04-20T20:04, found {options.Text(option, "")}");

// Past nights: the first line that is no comment names the columns.
static List<PastNight> Nights(TextReader reader, string name)
{
    List<PastNight> nights = [];
    string[]? columns = null;
    int number = 0;
    while (reader.ReadLine() is string line)
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
