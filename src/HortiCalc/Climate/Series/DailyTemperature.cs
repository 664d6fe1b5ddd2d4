using HortiCalc.Display;
using HortiCalc.Units;
using UnitsNet;
using UnitsNet.Units;

namespace HortiCalc.Climate;

/// <summary>The lowest and highest air temperature of one day.</summary>
/// <remarks>Immutable; equal when the date and the temperatures are, whatever unit they were given in.</remarks>
public sealed record DailyTemperature : IFormattable
{
    /// <summary>Describes a day.</summary>
    /// <param name="date">The day.</param>
    /// <param name="minimum">Its lowest temperature.</param>
    /// <param name="maximum">Its highest temperature; not below the lowest.</param>
    /// <exception cref="ArgumentOutOfRangeException">
    /// A temperature is below -90 °C or above 60 °C, or the maximum is below the minimum.
    /// </exception>
    public DailyTemperature(DateOnly date, Temperature minimum, Temperature maximum)
    {
        double minimumCelsius = AirTemperature.Celsius(Boundary.Celsius(minimum), TemperatureUnit.DegreeCelsius, date, 0, nameof(minimum));
        double maximumCelsius = AirTemperature.Celsius(Boundary.Celsius(maximum), TemperatureUnit.DegreeCelsius, date, 0, nameof(maximum));
        if (maximumCelsius < minimumCelsius)
            throw AirTemperature.BelowMinimum(minimumCelsius, maximumCelsius, TemperatureUnit.DegreeCelsius, date, nameof(maximum));

        Date = date;
        Minimum = Temperature.FromDegreesCelsius(minimumCelsius);
        Maximum = Temperature.FromDegreesCelsius(maximumCelsius);
    }

    /// <summary>The day.</summary>
    public DateOnly Date { get; }

    /// <summary>The lowest temperature of the day.</summary>
    public Temperature Minimum { get; }

    /// <summary>The highest temperature of the day.</summary>
    public Temperature Maximum { get; }

    /// <summary>The day in metric units and invariant culture.</summary>
    /// <returns>For instance <c>2024-02-29: 3.5 °C to 11 °C</c>.</returns>
    public override string ToString() => ToString(TextStyle.Default);

    /// <summary>The day as one line of text.</summary>
    /// <param name="format"><c>M</c> or nothing for metric units, <c>U</c> for US customary ones.</param>
    /// <param name="formatProvider">The culture, or <see langword="null"/> for the invariant one.</param>
    /// <returns>The date and both temperatures.</returns>
    /// <exception cref="FormatException">The format is another one.</exception>
    public string ToString(string? format, IFormatProvider? formatProvider) => ToString(TextStyle.Parse(format, formatProvider));

    private string ToString(TextStyle style) =>
        $"{AirTemperature.Text(Date)}: {QuantityText.Of(Minimum, style)} to {QuantityText.Of(Maximum, style)}";
}
