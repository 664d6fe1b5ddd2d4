using HortiCalc.Units;
using UnitsNet.Units;

namespace HortiCalc.Climate;

/// <summary>A unit that days may be counted in as they are, without converting them.</summary>
internal sealed record DegreeDayUnit(string Symbol, double PerCelsius, double AtZeroCelsius)
{
    // What a threshold may be off by after it was converted to Celsius and back.
    private const double Rounding = 1e-11;

    private static readonly DegreeDayUnit Celsius = new("°C", 1, 0);
    private static readonly DegreeDayUnit Fahrenheit = new("°F", Boundary.FahrenheitPerCelsius, Boundary.FahrenheitAtZeroCelsius);
    private static readonly DegreeDayUnit Kelvin = new("K", 1, Boundary.KelvinAtZeroCelsius);

    public double Lowest { get; } = AirTemperature.LowestCelsius * PerCelsius + AtZeroCelsius;

    public double Highest { get; } = AirTemperature.HighestCelsius * PerCelsius + AtZeroCelsius;

    public static DegreeDayUnit Of(TemperatureUnit unit) => unit switch
    {
        TemperatureUnit.DegreeCelsius => Celsius,
        TemperatureUnit.DegreeFahrenheit => Fahrenheit,
        TemperatureUnit.Kelvin => Kelvin,
        _ => throw new ArgumentOutOfRangeException(
            nameof(unit),
            $"unit was {unit}; allowed: {TemperatureUnit.DegreeCelsius}, {TemperatureUnit.DegreeFahrenheit}, {TemperatureUnit.Kelvin}."),
    };

    /// <summary>
    /// A threshold in this unit. One that was printed in it, and became a fraction in Celsius, comes back as printed: a day exactly at a
    /// threshold must not lie on its other side.
    /// </summary>
    public double Threshold(double celsius)
    {
        double converted = celsius * PerCelsius + AtZeroCelsius;
        double printed = Math.Round(converted, 6, MidpointRounding.ToEven);
        return Math.Abs(printed - converted) < Rounding ? printed : converted;
    }

    /// <summary>Says which extreme is out of range or out of order.</summary>
    public ArgumentOutOfRangeException Unsound(ReadOnlySpan<double> minima, ReadOnlySpan<double> maxima, ReadOnlySpan<double> nextMinima)
    {
        for (int day = 0; day < minima.Length; day++)
        {
            string place = $"[{Guard.Number(day)}]";
            if (minima[day] < Lowest || minima[day] > Highest)
                return OutOfRange("minima", place, minima[day]);
            if (maxima[day] < Lowest || maxima[day] > Highest)
                return OutOfRange("maxima", place, maxima[day]);
            if (maxima[day] < minima[day])
                return Guard.Refused($"maxima{place}", maxima[day], Symbol, $"the day's minimum, {Guard.Number(minima[day])} {Symbol}, or more");
            if (nextMinima[day] < Lowest || nextMinima[day] > Highest)
                return OutOfRange("nextMinima", place, nextMinima[day]);
        }

        // The destination was written over what was read.
        return new ArgumentOutOfRangeException(
            nameof(minima), $"minima or maxima were out of order or out of range; allowed: from {Guard.Number(Lowest)} to {Guard.Number(Highest)} {Symbol}.");
    }

    private ArgumentOutOfRangeException OutOfRange(string parameter, string place, double value) =>
        Guard.Refused($"{parameter}{place}", value, Symbol, $"from {Guard.Number(Lowest)} to {Guard.Number(Highest)} {Symbol}");
}
