using HortiCalc.Units;

namespace HortiCalc.Climate;

/// <summary>One day of a running sum of degree days.</summary>
/// <param name="Date">The day.</param>
/// <param name="Value">What the day adds, or <see langword="null"/> where it is missing and left out.</param>
/// <param name="Sum">The sum from the first day counted to the end of this one.</param>
public readonly record struct DegreeDay(DateOnly Date, ThermalTime? Value, ThermalTime Sum)
{
    /// <summary>The day in metric units and invariant culture.</summary>
    /// <returns>For instance <c>2024-05-17: 8.5 °C·d, 120 °C·d so far</c>.</returns>
    public override string ToString() => $"{AirTemperature.Text(Date)}: {Value?.ToString() ?? "missing"}, {Sum} so far";
}
