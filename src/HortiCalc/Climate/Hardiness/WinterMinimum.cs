using HortiCalc.Display;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Climate;

/// <summary>The lowest temperature of one winter.</summary>
/// <remarks>Immutable; equal when all members are equal.</remarks>
public sealed record WinterMinimum : IFormattable
{
    /// <summary>Describes the coldest night of a winter.</summary>
    /// <param name="date">The first day on which it was reached.</param>
    /// <param name="lowest">The lowest temperature.</param>
    public WinterMinimum(DateOnly date, Temperature lowest)
    {
        Date = date;
        Guard.Within(Boundary.Celsius(lowest), AirTemperature.LowestCelsius, AirTemperature.HighestCelsius, "°C", nameof(lowest));
        Lowest = HouseUnits.Normalise(lowest);
    }

    /// <summary>The first day on which it was reached.</summary>
    public DateOnly Date { get; }

    /// <summary>The lowest temperature.</summary>
    public Temperature Lowest { get; }

    /// <summary>Date and temperature in metric units and invariant culture.</summary>
    /// <returns>For instance <c>2021-02-13: -11.2 °C</c>.</returns>
    public override string ToString() => ToString(TextStyle.Default);

    /// <summary>Date and temperature as one line of text.</summary>
    /// <param name="format"><c>M</c> or nothing for metric units, <c>U</c> for US customary ones.</param>
    /// <param name="formatProvider">The culture, or <see langword="null"/> for the invariant one.</param>
    /// <returns>Date and temperature.</returns>
    /// <exception cref="FormatException">The format is another one.</exception>
    public string ToString(string? format, IFormatProvider? formatProvider) => ToString(TextStyle.Parse(format, formatProvider));

    private string ToString(TextStyle style) => $"{AirTemperature.Text(Date)}: {QuantityText.Of(Lowest, style)}";
}
