using HortiCalc.Units;

namespace HortiCalc.Climate;

/// <summary>One day of a running sum of degree days.</summary>
/// <param name="Date">The day.</param>
/// <param name="Value">What the day adds, or <see langword="null"/> where it is missing and left out.</param>
/// <param name="Sum">The sum from the first day counted to the end of this one.</param>
public readonly record struct DegreeDay(DateOnly Date, ThermalTime? Value, ThermalTime Sum)
{
    /// <summary>The day, what it adds and the sum, in Celsius-days and invariant culture.</summary>
    /// <returns>For instance <c>2024-05-12: 6.5 °C·d, 112.5 °C·d in all</c>.</returns>
    public override string ToString() => $"{AirTemperature.Text(Date)}: {Value?.ToString() ?? "missing"}, {Sum} in all";
}
