using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Climate;

/// <summary>Checks and converts the two temperatures of a single day.</summary>
internal static class DayTemperatures
{
    public static (double MinimumCelsius, double MaximumCelsius) Celsius(Temperature minimum, Temperature maximum)
    {
        double minimumCelsius = Guard.Within(
            Boundary.Celsius(minimum), AirTemperature.LowestCelsius, AirTemperature.HighestCelsius, "°C", nameof(minimum));
        double maximumCelsius = Guard.Within(Boundary.Celsius(maximum), minimumCelsius, AirTemperature.HighestCelsius, "°C", nameof(maximum));
        return (minimumCelsius, maximumCelsius);
    }
}
