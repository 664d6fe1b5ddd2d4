using HortiCalc.Display;
using HortiCalc.Evidence;
using HortiCalc.Units;

namespace HortiCalc.Climate;

/// <summary>How much light a day plants are said to want, or a place is said to have. Guidance: warmth and carbon dioxide change it.</summary>
/// <remarks>Immutable; equal when all members are equal.</remarks>
public sealed record LightRequirement : IFormattable
{
    /// <summary>Describes what a source prints.</summary>
    /// <param name="subject">The crop, the group of plants or the place.</param>
    /// <param name="low">The low end; <see langword="null"/> where none is printed.</param>
    /// <param name="high">The high end, not below the low one.</param>
    /// <param name="source">Where it is printed.</param>
    /// <exception cref="ArgumentException">The subject is empty, or the source is missing.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The high end is below the low one.</exception>
    public LightRequirement(string subject, DailyLightIntegral? low, DailyLightIntegral high, Source source)
    {
        Subject = Guard.NotBlank(subject);
        Guard.AtLeast(high.MolesPerSquareMetreDay, low?.MolesPerSquareMetreDay ?? 0, "mol/(m²·d)", nameof(high));
        Low = low;
        High = high;
        Source = Guard.NotNull(source);
    }

    /// <summary>The crop, the group of plants or the place.</summary>
    public string Subject { get; }

    /// <summary>The low end; <see langword="null"/> where none is printed.</summary>
    public DailyLightIntegral? Low { get; }

    /// <summary>The high end.</summary>
    public DailyLightIntegral High { get; }

    /// <summary>Where it is printed.</summary>
    public Source Source { get; }

    /// <summary>The requirement in invariant culture.</summary>
    /// <returns>One line.</returns>
    public override string ToString() => ToString(TextStyle.Default);

    /// <summary>The requirement as one line of text.</summary>
    /// <param name="format"><c>M</c>, <c>U</c> or nothing: the unit is the same in every country.</param>
    /// <param name="formatProvider">The culture, or <see langword="null"/> for the invariant one.</param>
    /// <returns>One line.</returns>
    /// <exception cref="FormatException">The format is another one.</exception>
    public string ToString(string? format, IFormatProvider? formatProvider) => ToString(TextStyle.Parse(format, formatProvider));

    private string ToString(TextStyle style) => Low is DailyLightIntegral low
        ? $"{Subject}: {QuantityText.Number(low.MolesPerSquareMetreDay, style)} to {QuantityText.Of(High, style)} [{Source}]"
        : $"{Subject}: up to {QuantityText.Of(High, style)} [{Source}]";
}
