using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Climate;

/// <summary>The checks of temperatures that the answers about a night share.</summary>
internal static class NightCelsius
{
    public static double Air(Temperature value, string parameter) =>
        Guard.Within(Boundary.Celsius(value), AirTemperature.LowestCelsius, AirTemperature.HighestCelsius, "°C", parameter);

    /// <summary>A temperature of the air that is at most another one: a dew point, or the minimum of a night.</summary>
    public static double NotAbove(Temperature value, double highestCelsius, string parameter) =>
        Guard.Within(Boundary.Celsius(value), AirTemperature.LowestCelsius, highestCelsius, "°C", parameter);
}
