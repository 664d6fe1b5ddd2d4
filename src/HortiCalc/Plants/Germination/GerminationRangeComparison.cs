using System.Text.Json.Serialization;
using HortiCalc.Display;
using HortiCalc.Evidence;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Plants;

/// <summary>What the sources print of the germination temperatures of one crop, side by side, and how far they are apart.</summary>
/// <remarks>Immutable; equal when the crop and the ranges are. Ranges that are in doubt are shown and kept out of the spans.</remarks>
[TypeFormatterSource(typeof(DisplayFormatters))]
public sealed record GerminationRangeComparison : IFormattable, IDisplayable
{
    private const string Meaning = "lowest and highest of the sources";

    /// <summary>Puts ranges side by side.</summary>
    /// <param name="crop">The crop.</param>
    /// <param name="ranges">What each source prints.</param>
    /// <exception cref="ArgumentNullException">The ranges are missing.</exception>
    /// <exception cref="ArgumentException">The crop is empty.</exception>
    public GerminationRangeComparison(string crop, IReadOnlyList<GerminationRange> ranges)
    {
        Crop = Guard.NotBlank(crop);
        Ranges = ValueList<GerminationRange>.Of(Guard.NotNull(ranges));
    }

    /// <summary>The crop.</summary>
    public string Crop { get; }

    /// <summary>What each source prints.</summary>
    public IReadOnlyList<GerminationRange> Ranges { get; }

    /// <summary>From the lowest minimum to the highest one; <see langword="null"/> where no source prints one.</summary>
    [JsonIgnore]
    public EstimateRange<Temperature>? Minima => Span(range => [range.Minimum]);

    /// <summary>From the lowest optimum, or low end of a best range, to the highest; <see langword="null"/> where no source prints one.</summary>
    [JsonIgnore]
    public EstimateRange<Temperature>? Optima => Span(range => [range.OptimumLow, range.Optimum, range.OptimumHigh]);

    /// <summary>From the lowest maximum to the highest one; <see langword="null"/> where no source prints one.</summary>
    [JsonIgnore]
    public EstimateRange<Temperature>? Maxima => Span(range => [range.Maximum]);

    /// <summary>The spans in °C and invariant culture.</summary>
    /// <returns>One line.</returns>
    public override string ToString() => ToString(TextStyle.Default);

    /// <summary>The spans as one line of text.</summary>
    /// <param name="format"><c>M</c> or nothing for °C, <c>U</c> for °F.</param>
    /// <param name="formatProvider">The culture, or <see langword="null"/> for the invariant one.</param>
    /// <returns>The crop, the number of sources, and the spans of minimum, optimum and maximum.</returns>
    /// <exception cref="FormatException">The format is another one.</exception>
    public string ToString(string? format, IFormatProvider? formatProvider) => ToString(TextStyle.Parse(format, formatProvider));

    DisplayBlock IDisplayable.ToDisplay(TextStyle style) => new(ToString(style))
    {
        Rows = [.. Ranges.Select(range => new DisplayRow(range.Source.Key, range.ToString(style.Format, style.Culture)))],
    };

    private EstimateRange<Temperature>? Span(Func<GerminationRange, Temperature?[]> values)
    {
        double[] celsius = [.. Ranges.Where(range => range.Doubt is null).SelectMany(values).OfType<Temperature>().Select(Boundary.Celsius).Order()];
        return celsius.Length == 0
            ? null
            : new EstimateRange<Temperature>(Temperature.FromDegreesCelsius(celsius[0]), Temperature.FromDegreesCelsius(celsius[^1]), Meaning);
    }

    private string ToString(TextStyle style)
    {
        string?[] parts =
        [
            Minima is null ? null : $"minimum {Minima.ToString(style)}",
            Optima is null ? null : $"optimum {Optima.ToString(style)}",
            Maxima is null ? null : $"maximum {Maxima.ToString(style)}",
        ];
        return $"{Crop}, {QuantityText.Of(Ranges.Count, style)} sources: {string.Join(", ", parts.Where(part => part is not null))}";
    }
}
