using HortiCalc.Display;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Plants;

/// <summary>The share of seed that grew to normal seedlings at a soil temperature.</summary>
/// <remarks>Immutable; equal when both members are equal.</remarks>
public sealed record NormalSeedlingCell : IFormattable
{
    /// <summary>Holds a cell.</summary>
    /// <param name="soil">The soil temperature, from -60 to 90 °C.</param>
    /// <param name="share">The share, from 0 to 100 %; <see langword="null"/> where the source has none.</param>
    /// <exception cref="ArgumentOutOfRangeException">The temperature or the share is out of range.</exception>
    public NormalSeedlingCell(Temperature soil, Ratio? share)
    {
        SoilCelsius = SeedbedTemperature.Celsius(soil, nameof(soil));
        Soil = HouseUnits.Normalise(soil);
        if (share is Ratio given)
        {
            Percent = Guard.Within(Boundary.Fraction(given) * 100, 0, 100, "%", nameof(share));
            Share = HouseUnits.Normalise(given);
        }
    }

    /// <summary>The soil temperature.</summary>
    public Temperature Soil { get; }

    /// <summary>The share; <see langword="null"/> where the source has none.</summary>
    public Ratio? Share { get; }

    internal double SoilCelsius { get; }

    internal double? Percent { get; }

    /// <summary>The cell in °C and invariant culture.</summary>
    /// <returns>For instance <c>15 °C: 80 %</c>.</returns>
    public override string ToString() => ToString(TextStyle.Default);

    /// <summary>The cell as text.</summary>
    /// <param name="format"><c>M</c> or nothing for °C, <c>U</c> for °F.</param>
    /// <param name="formatProvider">The culture, or <see langword="null"/> for the invariant one.</param>
    /// <returns>The temperature and the share.</returns>
    /// <exception cref="FormatException">The format is another one.</exception>
    public string ToString(string? format, IFormatProvider? formatProvider) => ToString(TextStyle.Parse(format, formatProvider));

    private string ToString(TextStyle style) =>
        $"{QuantityText.Of(Soil, style)}: {(Share is Ratio share ? QuantityText.Of(share, style) : "not known")}";
}
