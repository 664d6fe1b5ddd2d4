using HortiCalc.Display;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Climate;

/// <summary>The temperatures between which development is counted.</summary>
/// <remarks>Immutable; equal when both temperatures are, whatever unit they were given in.</remarks>
/// <example><code>
/// DegreeDayThresholds maize = new(Temperature.FromDegreesFahrenheit(50), Temperature.FromDegreesFahrenheit(86));
/// </code></example>
public sealed record DegreeDayThresholds : IFormattable
{
    /// <summary>Describes the temperatures between which development is counted.</summary>
    /// <param name="lower">The lower threshold, or base: there is no development at or below it. From -90 to 60 °C.</param>
    /// <param name="upper">The upper threshold, above the lower one, up to 60 °C; or <see langword="null"/> where there is none.</param>
    /// <exception cref="ArgumentOutOfRangeException">A threshold is no temperature of the air, or the upper is not above the lower.</exception>
    public DegreeDayThresholds(Temperature lower, Temperature? upper = null)
    {
        LowerCelsius = Guard.Within(Boundary.Celsius(lower), AirTemperature.LowestCelsius, AirTemperature.HighestCelsius, "°C", nameof(lower));
        UpperCelsius = double.PositiveInfinity;
        Lower = Temperature.FromDegreesCelsius(LowerCelsius);
        if (upper is not Temperature given)
            return;
        UpperCelsius = Boundary.Celsius(given);
        Upper = Temperature.FromDegreesCelsius(UpperCelsius);
        if (!(UpperCelsius > LowerCelsius && UpperCelsius <= AirTemperature.HighestCelsius))
        {
            throw Guard.Refused(
                nameof(upper),
                UpperCelsius,
                "°C",
                $"above lower, {Guard.Number(LowerCelsius)} °C, and up to {Guard.Number(AirTemperature.HighestCelsius)} °C");
        }
    }

    /// <summary>The lower threshold, or base: there is no development at or below it.</summary>
    public Temperature Lower { get; }

    /// <summary>The upper threshold, or <see langword="null"/> where there is none.</summary>
    public Temperature? Upper { get; }

    internal double LowerCelsius { get; }

    /// <summary>Infinite where there is none, so that no kernel asks.</summary>
    internal double UpperCelsius { get; }

    /// <summary>The thresholds in metric units and invariant culture.</summary>
    /// <returns>For instance <c>10 °C to 30 °C</c>, or <c>above 10 °C</c>.</returns>
    public override string ToString() => ToString(TextStyle.Default);

    /// <summary>The thresholds as text.</summary>
    /// <param name="format"><c>M</c> or nothing for metric units, <c>U</c> for US customary ones.</param>
    /// <param name="formatProvider">The culture, or <see langword="null"/> for the invariant one.</param>
    /// <returns>For instance <c>50 °F to 86 °F</c>, or <c>above 50 °F</c>.</returns>
    /// <exception cref="FormatException">The format is another one.</exception>
    public string ToString(string? format, IFormatProvider? formatProvider) => ToString(TextStyle.Parse(format, formatProvider));

    internal string ToString(TextStyle style) => Upper is Temperature upper
        ? $"{QuantityText.Of(Lower, style)} to {QuantityText.Of(upper, style)}"
        : $"above {QuantityText.Of(Lower, style)}";
}
