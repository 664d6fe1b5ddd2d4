using HortiCalc.Display;
using HortiCalc.Evidence;
using HortiCalc.Units;

namespace HortiCalc.Climate;

/// <summary>The degree-days from one leaf to the next, as a source prints them for a crop and a condition.</summary>
/// <remarks>
/// Immutable; equal when all members are equal. Not a constant of the crop: it lengthens with temperature, and with what a plant lacks.
/// </remarks>
public sealed record Phyllochron : IFormattable
{
    /// <summary>Describes what a source prints.</summary>
    /// <param name="crop">The crop.</param>
    /// <param name="condition">The condition it was found in.</param>
    /// <param name="low">The smallest printed value, greater than 0.</param>
    /// <param name="high">The largest printed value; the same where one is printed.</param>
    /// <param name="thresholds">The temperatures between which the degree-days are counted.</param>
    /// <param name="source">Where it is printed.</param>
    /// <exception cref="ArgumentNullException">A text, the thresholds or the source is missing.</exception>
    /// <exception cref="ArgumentException">A text is empty.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A value is not greater than 0, or the smallest is above the largest.</exception>
    public Phyllochron(string crop, string condition, ThermalTime low, ThermalTime high, DegreeDayThresholds thresholds, Source source)
    {
        Crop = Guard.NotBlank(crop);
        Condition = Guard.NotBlank(condition);
        Guard.Positive(low.CelsiusDays, "°C·d", nameof(low));
        Guard.AtLeast(high.CelsiusDays, low.CelsiusDays, "°C·d", nameof(high));
        Low = low;
        High = high;
        Thresholds = Guard.NotNull(thresholds);
        Source = Guard.NotNull(source);
    }

    /// <summary>The crop.</summary>
    public string Crop { get; }

    /// <summary>The condition it was found in.</summary>
    public string Condition { get; }

    /// <summary>The smallest printed value.</summary>
    public ThermalTime Low { get; }

    /// <summary>The largest printed value.</summary>
    public ThermalTime High { get; }

    /// <summary>The temperatures between which the degree-days are counted.</summary>
    public DegreeDayThresholds Thresholds { get; }

    /// <summary>Where it is printed.</summary>
    public Source Source { get; }

    /// <summary>The phyllochron in metric units and invariant culture.</summary>
    /// <returns>Crop, value and condition.</returns>
    public override string ToString() => ToString(TextStyle.Default);

    /// <summary>The phyllochron as one line of text.</summary>
    /// <param name="format"><c>M</c> or nothing for metric units, <c>U</c> for US customary ones.</param>
    /// <param name="formatProvider">The culture, or <see langword="null"/> for the invariant one.</param>
    /// <returns>Crop, value and condition.</returns>
    /// <exception cref="FormatException">The format is another one.</exception>
    public string ToString(string? format, IFormatProvider? formatProvider) => ToString(TextStyle.Parse(format, formatProvider));

    private string ToString(TextStyle style)
    {
        string value = Low == High ? QuantityText.Of(Low, style) : $"{QuantityText.Of(Low, style)} to {QuantityText.Of(High, style)}";
        return $"{Crop}: {value} a leaf, {Condition} [{Source}]";
    }
}
