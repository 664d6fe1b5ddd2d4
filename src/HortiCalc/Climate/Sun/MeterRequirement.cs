using HortiCalc.Display;
using HortiCalc.Evidence;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Climate;

/// <summary>What a light meter should read where plants of a group grow, as a source prints it.</summary>
/// <remarks>Immutable; equal when all members are equal.</remarks>
public sealed record MeterRequirement : IFormattable
{
    /// <summary>Describes what a source prints.</summary>
    /// <param name="plants">The group of plants.</param>
    /// <param name="low">The low end, 0 or more.</param>
    /// <param name="high">The high end, not below the low one; the same where one value is printed.</param>
    /// <param name="source">Where it is printed.</param>
    /// <exception cref="ArgumentException">The group is empty, or the source is missing.</exception>
    /// <exception cref="ArgumentOutOfRangeException">An end is negative or not finite, or the high one is below the low one.</exception>
    public MeterRequirement(string plants, Illuminance low, Illuminance high, Source source)
    {
        Plants = Guard.NotBlank(plants);
        double lowLux = Guard.NotNegative(Boundary.Lux(low), "lx", nameof(low));
        Guard.AtLeast(Boundary.Lux(high), lowLux, "lx", nameof(high));
        Low = HouseUnits.Normalise(low);
        High = HouseUnits.Normalise(high);
        Source = Guard.NotNull(source);
    }

    /// <summary>The group of plants.</summary>
    public string Plants { get; }

    /// <summary>The low end.</summary>
    public Illuminance Low { get; }

    /// <summary>The high end.</summary>
    public Illuminance High { get; }

    /// <summary>Where it is printed.</summary>
    public Source Source { get; }

    /// <summary>Average readings in foot-candles by group of plants, of a column for growers; other sources differ by half.</summary>
    public static IReadOnlyList<MeterRequirement> All { get; } = MeterRequirementTable.All;

    /// <summary>The requirement in lux and invariant culture.</summary>
    /// <returns>One line.</returns>
    public override string ToString() => ToString(TextStyle.Default);

    /// <summary>The requirement as one line of text.</summary>
    /// <param name="format"><c>M</c> or nothing for lux, <c>U</c> for foot-candles.</param>
    /// <param name="formatProvider">The culture, or <see langword="null"/> for the invariant one.</param>
    /// <returns>One line.</returns>
    /// <exception cref="FormatException">The format is another one.</exception>
    public string ToString(string? format, IFormatProvider? formatProvider) => ToString(TextStyle.Parse(format, formatProvider));

    private string ToString(TextStyle style) => Boundary.Lux(Low) == Boundary.Lux(High)
        ? $"{Plants}: {QuantityText.Of(Low, style)} [{Source}]"
        : $"{Plants}: {QuantityText.Of(Low, style)} to {QuantityText.Of(High, style)} [{Source}]";
}
