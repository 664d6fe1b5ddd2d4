using HortiCalc.Units;
using UnitsNet.Units;

namespace HortiCalc.Climate;

/// <summary>Says which member of a series was out of its limits, where the destination was not written over it.</summary>
internal static class HumidityFaults
{
    public static ArgumentOutOfRangeException Temperature(
        SaturationCurve curve, TemperatureUnit unit, ReadOnlySpan<double> temperatures, HumidityScale scale, string parameter)
    {
        for (int place = 0; place < temperatures.Length; place++)
        {
            if (IsOut(curve, temperatures[place], scale))
                return Guard.Refused($"{parameter}[{Guard.Number(place)}]", temperatures[place], Symbol(unit), Range(curve, unit, scale));
        }

        return Lost(parameter, Range(curve, unit, scale));
    }

    public static ArgumentOutOfRangeException Pair(
        SaturationCurve curve,
        TemperatureUnit unit,
        ReadOnlySpan<double> temperatures,
        ReadOnlySpan<double> relativeHumidities,
        HumidityScale scale,
        bool mayBeZero)
    {
        string share = mayBeZero ? "from 0 to 100 %" : "above 0, up to 100 %";
        for (int place = 0; place < temperatures.Length; place++)
        {
            double percent = relativeHumidities[place];
            if (IsOut(curve, temperatures[place], scale))
                return Guard.Refused($"temperatures[{Guard.Number(place)}]", temperatures[place], Symbol(unit), Range(curve, unit, scale));
            if (percent < 0 || percent > 100 || (percent < 1e-9 && !mayBeZero))
                return Guard.Refused($"relativeHumidities[{Guard.Number(place)}]", percent, "%", share);
            if (mayBeZero || double.IsNaN(percent) || double.IsNaN(temperatures[place]))
                continue;
            double celsius = (temperatures[place] - scale.AtZeroCelsius) / scale.PerCelsius;
            double dewPoint = curve.Celsius(curve.Kilopascals(celsius) * percent / 100);
            if (!curve.Holds(dewPoint))
            {
                return Guard.Refused(
                    $"relativeHumidities[{Guard.Number(place)}]", percent, "%", $"such that the dew point lies {Range(curve, unit, scale)}");
            }
        }

        return Lost("temperatures or relativeHumidities", $"{Range(curve, unit, scale)}, {share}");
    }

    public static ArgumentOutOfRangeException DewPoint(
        SaturationCurve curve, TemperatureUnit unit, ReadOnlySpan<double> temperatures, ReadOnlySpan<double> dewPoints, HumidityScale scale)
    {
        for (int place = 0; place < temperatures.Length; place++)
        {
            if (IsOut(curve, temperatures[place], scale))
                return Guard.Refused($"temperatures[{Guard.Number(place)}]", temperatures[place], Symbol(unit), Range(curve, unit, scale));
            if (IsOut(curve, dewPoints[place], scale))
                return Guard.Refused($"dewPoints[{Guard.Number(place)}]", dewPoints[place], Symbol(unit), Range(curve, unit, scale));
            if (dewPoints[place] > temperatures[place])
            {
                return Guard.Refused(
                    $"dewPoints[{Guard.Number(place)}]",
                    dewPoints[place],
                    Symbol(unit),
                    $"not above the air's {Guard.Number(temperatures[place])} {Symbol(unit)}");
            }
        }

        return Lost("temperatures or dewPoints", $"{Range(curve, unit, scale)}, no dew point above its temperature");
    }

    private static bool IsOut(SaturationCurve curve, double degrees, HumidityScale scale)
    {
        double celsius = (degrees - scale.AtZeroCelsius) / scale.PerCelsius;
        return !double.IsNaN(celsius) && !curve.Holds(celsius);
    }

    private static string Range(SaturationCurve curve, TemperatureUnit unit, HumidityScale scale)
    {
        string low = Guard.Number(curve.LowestCelsius * scale.PerCelsius + scale.AtZeroCelsius);
        string high = Guard.Number(curve.HighestCelsius * scale.PerCelsius + scale.AtZeroCelsius);
        return $"from {low} to {high} {Symbol(unit)}, which is what '{curve.Evidence.Name}' was published for";
    }

    private static string Symbol(TemperatureUnit unit) => DegreeDayUnit.Of(unit).Symbol;

    /// <summary>The destination was written over what was read.</summary>
    private static ArgumentOutOfRangeException Lost(string parameters, string allowed) =>
        new(parameters, $"{parameters} held a value out of range; allowed: {allowed}.");
}
