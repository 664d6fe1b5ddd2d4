using HortiCalc.Display;
using HortiCalc.Evidence;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Climate;

/// <summary>What one service or author means by a word for frost: the minima that it covers.</summary>
/// <remarks>
/// Immutable; equal when all members are equal. Classes printed in whole degrees Fahrenheit take a minimum to its nearest whole degree first,
/// a half to the warmer one; between their printed ends nothing would be defined otherwise.
/// </remarks>
public sealed record FrostDefinition : IFormattable
{
    /// <summary>Describes a definition.</summary>
    /// <param name="term">The word.</param>
    /// <param name="sensor">Where the minimum is read.</param>
    /// <param name="warmest">The warmest minimum that it covers.</param>
    /// <param name="isWarmestIncluded">Whether that minimum itself is covered.</param>
    /// <param name="coldest">The coldest minimum that it covers, itself included; <see langword="null"/> where it covers all colder ones.</param>
    /// <param name="isInWholeFahrenheit">Whether it is printed in whole degrees Fahrenheit.</param>
    /// <param name="source">Where it is printed.</param>
    /// <exception cref="ArgumentNullException">The word or the source is missing.</exception>
    /// <exception cref="ArgumentException">The word is empty.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The coldest minimum is above the warmest, or the sensor is not one of the defined ones.</exception>
    public FrostDefinition(
        string term, FrostSensor sensor, Temperature warmest, bool isWarmestIncluded, Temperature? coldest, bool isInWholeFahrenheit, Source source)
    {
        Term = Guard.NotBlank(term);
        Sensor = Guard.Defined(sensor);
        double warmestCelsius = NightCelsius.Air(warmest, nameof(warmest));
        if (coldest is Temperature low)
            NightCelsius.NotAbove(low, warmestCelsius, nameof(coldest));
        Warmest = HouseUnits.Normalise(warmest);
        IsWarmestIncluded = isWarmestIncluded;
        Coldest = coldest is Temperature given ? HouseUnits.Normalise(given) : null;
        IsInWholeFahrenheit = isInWholeFahrenheit;
        Source = Guard.NotNull(source);
    }

    /// <summary>The word.</summary>
    public string Term { get; }

    /// <summary>Where the minimum is read.</summary>
    public FrostSensor Sensor { get; }

    /// <summary>The warmest minimum that it covers.</summary>
    public Temperature Warmest { get; }

    /// <summary>Whether the warmest minimum itself is covered.</summary>
    public bool IsWarmestIncluded { get; }

    /// <summary>The coldest minimum that it covers, itself included; <see langword="null"/> where it covers all colder ones.</summary>
    public Temperature? Coldest { get; }

    /// <summary>Whether it is printed in whole degrees Fahrenheit.</summary>
    public bool IsInWholeFahrenheit { get; }

    /// <summary>Where it is printed.</summary>
    public Source Source { get; }

    /// <summary>Whether the word covers a minimum.</summary>
    /// <param name="minimum">The minimum, read where <see cref="Sensor"/> says.</param>
    /// <returns><see langword="true"/> where it does.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The minimum is outside -90 to 60 °C.</exception>
    public bool Covers(Temperature minimum)
    {
        NightCelsius.Air(minimum, nameof(minimum));
        double read = Degrees(minimum);
        double warmest = Degrees(Warmest);
        return (IsWarmestIncluded ? read <= warmest : read < warmest) && (Coldest is not Temperature coldest || read >= Degrees(coldest));
    }

    /// <summary>The definition in metric units and invariant culture.</summary>
    /// <returns>The word, its minima and its source.</returns>
    public override string ToString() => ToString(TextStyle.Default);

    /// <summary>The definition as one line of text.</summary>
    /// <param name="format"><c>M</c> or nothing for metric units, <c>U</c> for US customary ones.</param>
    /// <param name="formatProvider">The culture, or <see langword="null"/> for the invariant one.</param>
    /// <returns>The word, its minima and its source.</returns>
    /// <exception cref="FormatException">The format is another one.</exception>
    public string ToString(string? format, IFormatProvider? formatProvider) => ToString(TextStyle.Parse(format, formatProvider));

    /// <summary>°C, or whole °F; a quantity and its normalised twin must give the same.</summary>
    private double Degrees(Temperature temperature)
    {
        double celsius = Boundary.Celsius(HouseUnits.Normalise(temperature));
        return IsInWholeFahrenheit ? Math.Floor(Boundary.FahrenheitFromCelsius(celsius) + 0.5 + 1e-9) : celsius;
    }

    private string ToString(TextStyle style)
    {
        string warmest = QuantityText.Of(Warmest, style);
        string span = Coldest is Temperature coldest
            ? $"{QuantityText.Of(coldest, style)} to {warmest}"
            : IsWarmestIncluded ? $"{warmest} or colder" : $"colder than {warmest}";
        return $"{Term}: {(Sensor == FrostSensor.Grass ? "grass" : "air")} minimum {span} [{Source}]";
    }
}
