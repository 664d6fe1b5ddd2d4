using HortiCalc.Display;
using HortiCalc.Evidence;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Soil;

/// <summary>The tension in the root zone at which a crop wants water again.</summary>
/// <remarks>Immutable; equal when all members are equal. The harder the weather draws, the wetter the crop wants the soil.</remarks>
public sealed record RefillTension : IFormattable
{
    /// <summary>Holds a printed row.</summary>
    /// <param name="crop">The crop.</param>
    /// <param name="use">What it is grown for, as the table groups it.</param>
    /// <param name="atHighDemand">The tension in weather that draws much water; above zero.</param>
    /// <param name="atLowDemand">The tension in weather that draws little; not below that at high demand.</param>
    /// <param name="source">Where it is printed.</param>
    /// <exception cref="ArgumentNullException">The source is missing.</exception>
    /// <exception cref="ArgumentException">A text is empty.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A tension is outside its range.</exception>
    public RefillTension(string crop, string use, Pressure atHighDemand, Pressure atLowDemand, Source source)
    {
        Crop = Guard.NotBlank(crop);
        Use = Guard.NotBlank(use);
        double wet = Guard.Positive(Boundary.Kilopascals(atHighDemand), "kPa", nameof(atHighDemand));
        Guard.AtLeast(Boundary.Kilopascals(atLowDemand), wet, "kPa", nameof(atLowDemand));
        AtHighDemand = HouseUnits.Normalise(atHighDemand);
        AtLowDemand = HouseUnits.Normalise(atLowDemand);
        Source = Guard.NotNull(source);
    }

    /// <summary>The crop.</summary>
    public string Crop { get; }

    /// <summary>What it is grown for, as the table groups it.</summary>
    public string Use { get; }

    /// <summary>The tension in weather that draws much water.</summary>
    public Pressure AtHighDemand { get; }

    /// <summary>The tension in weather that draws little.</summary>
    public Pressure AtLowDemand { get; }

    /// <summary>Where it is printed.</summary>
    public Source Source { get; }

    /// <summary>The row in invariant culture.</summary>
    /// <returns>For instance <c>Lettuce: 39.2 kPa to 58.8 kPa [...]</c>.</returns>
    public override string ToString() => ToString(null, null);

    /// <summary>The row as one line of text.</summary>
    /// <param name="format"><c>M</c>, <c>U</c> or nothing.</param>
    /// <param name="formatProvider">The culture, or <see langword="null"/> for the invariant one.</param>
    /// <returns>The crop and both tensions.</returns>
    /// <exception cref="FormatException">The format is another one.</exception>
    public string ToString(string? format, IFormatProvider? formatProvider)
    {
        TextStyle style = TextStyle.Parse(format, formatProvider);
        return $"{Crop}: {QuantityText.Of(AtHighDemand, style)} to {QuantityText.Of(AtLowDemand, style)} [{Source}]";
    }
}
