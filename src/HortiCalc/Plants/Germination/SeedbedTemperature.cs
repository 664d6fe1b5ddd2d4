using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Plants;

/// <summary>Reads the temperature of a seedbed, and refuses what no seedbed has.</summary>
internal static class SeedbedTemperature
{
    // Beyond any frozen ground and any bare sand in the sun: a slip of unit is caught, no record is lost.
    public const double LowestCelsius = -60;
    public const double HighestCelsius = 90;

    /// <summary>The temperature in °C, without the hair that a conversion leaves: 59 °F is 15 °C.</summary>
    public static double Celsius(Temperature value, string parameter) =>
        Guard.Within(Boundary.Celsius(HouseUnits.Normalise(value)), LowestCelsius, HighestCelsius, "°C", parameter);
}
