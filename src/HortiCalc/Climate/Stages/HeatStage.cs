using HortiCalc.Display;
using HortiCalc.Units;

namespace HortiCalc.Climate;

/// <summary>A stage of development and the degree days at which it comes, as a source prints them.</summary>
/// <remarks>Immutable; equal when all members are equal. A printed range is either when the stage is seen, or how far its coming is spread.</remarks>
public sealed record HeatStage : IFormattable
{
    /// <summary>Describes a stage.</summary>
    /// <param name="name">The stage by its trade term or in plain words.</param>
    /// <param name="low">The printed sum, or the low end of the printed range; zero or more.</param>
    /// <param name="high">
    /// The high end of the range; <paramref name="low"/> where one sum is printed, <see langword="null"/> where the end is open.
    /// </param>
    /// <exception cref="ArgumentNullException">The name is <see langword="null"/>.</exception>
    /// <exception cref="ArgumentException">The name is empty.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The low end is negative, or the high end is below it.</exception>
    public HeatStage(string name, ThermalTime low, ThermalTime? high)
    {
        Name = Guard.NotBlank(name);
        Guard.NotNegative(low.CelsiusDays, "°C·d", nameof(low));
        if (high is ThermalTime end)
            Guard.AtLeast(end.CelsiusDays, low.CelsiusDays, "°C·d", nameof(high));
        Low = low;
        High = high;
    }

    /// <summary>The stage by its trade term or in plain words.</summary>
    public string Name { get; }

    /// <summary>The printed sum, or the low end of the printed range.</summary>
    public ThermalTime Low { get; }

    /// <summary>The high end of the range; <see cref="Low"/> where one sum is printed, <see langword="null"/> where the end is open.</summary>
    public ThermalTime? High { get; }

    /// <summary>The stage in metric units and invariant culture.</summary>
    /// <returns>For instance <c>crawlers: 150 °C·d to 225 °C·d</c>.</returns>
    public override string ToString() => ToString(TextStyle.Default);

    /// <summary>The stage as one line of text.</summary>
    /// <param name="format"><c>M</c> or nothing for metric units, <c>U</c> for US customary ones.</param>
    /// <param name="formatProvider">The culture, or <see langword="null"/> for the invariant one.</param>
    /// <returns>The name and the sum or range.</returns>
    /// <exception cref="FormatException">The format is another one.</exception>
    public string ToString(string? format, IFormatProvider? formatProvider) => ToString(TextStyle.Parse(format, formatProvider));

    internal string ToString(TextStyle style)
    {
        string low = QuantityText.Of(Low, style);
        return High is not ThermalTime high ? $"{Name}: {low} or more"
            : high == Low ? $"{Name}: {low}"
            : $"{Name}: {low} to {QuantityText.Of(high, style)}";
    }
}
