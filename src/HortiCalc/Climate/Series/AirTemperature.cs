using System.Globalization;
using HortiCalc.Units;
using UnitsNet;
using UnitsNet.Units;

namespace HortiCalc.Climate;

/// <summary>Reads one number of a weather record, and refuses what no thermometer in the open ever showed.</summary>
internal static class AirTemperature
{
    // A little beyond the records kept by the World Meteorological Organization, World Weather and Climate Extremes Archive,
    // https://wmo.asu.edu/: -89.2 °C at Vostok, 21 July 1983; 56.7 °C at Furnace Creek, 10 July 1913.
    public const double LowestCelsius = -90;
    public const double HighestCelsius = 60;

    /// <summary>The temperature, or NaN where it is missing.</summary>
    public static double Celsius(double value, TemperatureUnit unit, DateOnly start, int day, string parameter)
    {
        if (double.IsNaN(value))
            return double.NaN;
        double celsius = double.IsInfinity(value) ? value : Boundary.Celsius(new Temperature(value, unit));
        return celsius is >= LowestCelsius and <= HighestCelsius
            ? celsius
            : throw Refused(
                value,
                unit,
                start.AddDays(day),
                $"from {Limit(LowestCelsius, unit)} to {Limit(HighestCelsius, unit)} {Abbreviation(unit)}",
                parameter);
    }

    public static ArgumentOutOfRangeException BelowMinimum(
        double minimum, double maximum, TemperatureUnit unit, DateOnly date, string parameter) =>
        Refused(maximum, unit, date, $"the day's minimum, {Guard.Number(minimum)} {Abbreviation(unit)}, or more", parameter);

    public static string Text(DateOnly date) => date.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);

    private static string Abbreviation(TemperatureUnit unit) => unit switch
    {
        TemperatureUnit.DegreeCelsius => "°C",
        TemperatureUnit.DegreeFahrenheit => "°F",
        TemperatureUnit.Kelvin => "K",
        _ => Temperature.GetAbbreviation(unit, CultureInfo.InvariantCulture),
    };

    private static string Limit(double celsius, TemperatureUnit unit) => Guard.Number(Temperature.FromDegreesCelsius(celsius).As(unit));

    private static ArgumentOutOfRangeException Refused(double value, TemperatureUnit unit, DateOnly date, string allowed, string parameter) =>
        new(parameter, $"{parameter} on {Text(date)} was {Guard.Number(value)} {Abbreviation(unit)}; allowed: {allowed}.");
}
