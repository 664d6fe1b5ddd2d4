using System.Globalization;
using HortiCalc.Climate;
using UnitsNet;
using UnitsNet.Units;

namespace HortiCalc.Reference;

internal static class ChillCalculations
{
    private static readonly DateTime Midnight = new(2001, 1, 1);

    private static readonly Lazy<HourlyTemperatures> SeattleNormals = new(() => HourlyTemperatures.Create(
        new DateTime(2010, 1, 1, 1, 0, 0),
        [
            .. File.ReadLines(Path.Combine(ReferenceLibrary.RepositoryRoot, "shared", "weather", "seattle-hourly-normals.csv"))
                .Where(line => char.IsAsciiDigit(line[0]))
                .Select(line => double.Parse(line.Split(',')[1], CultureInfo.InvariantCulture)),
        ],
        TemperatureUnit.DegreeCelsius));

    public static Dictionary<string, Func<Inputs, Computed>> All { get; } = new(StringComparer.Ordinal)
    {
        ["chill-of-hour"] = inputs => Chill.Accumulate(
            HourlyTemperatures.Create(Midnight, [inputs.Number(inputs.Has("temperature_F") ? "temperature_F" : "temperature_C")], UnitOf(inputs)),
            Model(inputs)).Total,
        ["chill-of-classes"] = inputs => Chill.Accumulate(Classes(inputs), Model(inputs)).Total,
        ["chill-of-series"] = inputs => inputs["model"] == GrowingDegreeHours.Evidence.Key
            ? GrowingDegreeHours.Accumulate(Period(inputs)).Total
            : Chill.Accumulate(Period(inputs), Model(inputs)).Total,
        ["chill-requirement-low"] = inputs => Requirement(inputs).Low,
        ["chill-requirement-high"] = inputs => Requirement(inputs).High!.Value,
        ["chill-requirement-words"] = inputs => Requirement(inputs) switch
        {
            { High: null } => "open above",
            { High: 0 } => "no chill",
            _ => "a range",
        },
        ["declination-rad"] = inputs => Daylight.Declination(Day(inputs), DaylightMethod.Geometric).Value.Radians,
        ["day-length-h"] = inputs => Daylight.Length(
            Angle.FromDegrees(inputs.Number("latitude_deg")), Day(inputs), DaylightMethod.FromKey(inputs["method"])).Value.Hours,
        ["diurnal-temperature"] = DiurnalTemperature,
    };

    private static Computed DiurnalTemperature(Inputs inputs)
    {
        DiurnalCurve curve = DiurnalCurve.FromKey(inputs["curve"]);
        double hours = inputs.Number("hours_after_sunrise");
        if (curve != DiurnalCurve.Sine)
        {
            return DiurnalCourse.AfterSunrise(
                Duration.FromHours(hours),
                Temperature.FromDegreesCelsius(inputs.Number("minimum_C")),
                Temperature.FromDegreesCelsius(inputs.Number("maximum_C")),
                Temperature.FromDegreesCelsius(inputs.Number("next_minimum_C")),
                Duration.FromHours(inputs.Number("day_length_h")),
                curve).Value.DegreesCelsius;
        }

        // The sine of the day has its minimum at 6 whatever the sun, and knows no other day.
        DailyTemperatures day = DailyTemperatures.Create(
            DateOnly.FromDateTime(Midnight), [inputs.Number("minimum_C")], [inputs.Number("maximum_C")], TemperatureUnit.DegreeCelsius);
        return DiurnalCourse.Hourly(day, Angle.Zero, curve).Value[Midnight.AddHours(6 + hours)]!.Value.DegreesCelsius;
    }

    private static HourlyTemperatures Period(Inputs inputs)
    {
        HourlyTemperatures year = SeattleNormals.Value;
        DateTime spring = new(2010, 3, 31, 23, 0, 0);
        DateTime autumn = new(2010, 10, 1);
        return inputs["period"] switch
        {
            "whole_file" => year,
            "jan1_mar31" => year.Between(year.Start, spring),
            "oct1_dec31" => year.Between(autumn, year.End),

            // The normals have no year: their winter goes on behind December.
            "oct1_dec31_then_jan1_mar31" => HourlyTemperatures.Create(
                autumn, [.. Celsius(year.Between(autumn, year.End)), .. Celsius(year.Between(year.Start, spring))], TemperatureUnit.DegreeCelsius),
            string other => throw new FormatException($"The period '{other}' is not known."),
        };
    }

    private static IEnumerable<double> Celsius(HourlyTemperatures hours) =>
        Enumerable.Range(0, hours.Count).Select(hour => hours[hours.Start.AddHours(hour)]!.Value.DegreesCelsius);

    private static HourlyTemperatures Classes(Inputs inputs)
    {
        double[] temperatures = inputs.Numbers("temperatures_F");
        double[] hours = inputs.Numbers("hours");
        return HourlyTemperatures.Create(
            Midnight,
            [.. temperatures.SelectMany((temperature, index) => Enumerable.Repeat(temperature, (int)hours[index]))],
            TemperatureUnit.DegreeFahrenheit);
    }

    private static ChillModel Model(Inputs inputs) => ChillModel.FromKey(inputs["model"]);

    private static TemperatureUnit UnitOf(Inputs inputs) =>
        inputs.Has("temperature_F") ? TemperatureUnit.DegreeFahrenheit : TemperatureUnit.DegreeCelsius;

    private static ChillRequirement Requirement(Inputs inputs) =>
        ChillRequirements.Named(inputs["source"], inputs["crop"], inputs.Has("cultivar") ? inputs["cultivar"] : null);

    private static DateOnly Day(Inputs inputs) =>
        inputs.Has("date") ? inputs.Date("date") : new DateOnly(2001, 1, 1).AddDays((int)inputs.Number("day_of_year") - 1);
}
