using HortiCalc.Display;
using HortiCalc.Evidence;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Plants;

/// <summary>The lowest, best and highest soil temperatures for germination of a crop, as one source prints them.</summary>
/// <remarks>
/// Immutable; equal when all members are equal. Held as printed, even where the source contradicts itself: <see cref="Doubt"/> then says how.
/// </remarks>
public sealed record GerminationRange : IFormattable
{
    /// <summary>Holds what a source prints.</summary>
    /// <param name="crop">The crop in plain English, the same for all sources.</param>
    /// <param name="printedCrop">The crop as the source names it.</param>
    /// <param name="source">Where it was published.</param>
    /// <param name="minimum">The lowest temperature, or the lowest workable one; <see langword="null"/> where none is printed.</param>
    /// <param name="optimumLow">The low end of the best range; <see langword="null"/> where none is printed.</param>
    /// <param name="optimumHigh">The high end of the best range; <see langword="null"/> where none is printed.</param>
    /// <param name="optimum">The best temperature; <see langword="null"/> where none is printed.</param>
    /// <param name="maximum">The highest temperature, or the highest workable one; <see langword="null"/> where none is printed.</param>
    /// <param name="doubt">Why the print is not to be trusted; <see langword="null"/> where nothing speaks against it.</param>
    /// <exception cref="ArgumentNullException">The source is missing.</exception>
    /// <exception cref="ArgumentException">A text is empty, or one end of the best range is there without the other.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A temperature is not from -60 to 90 °C, or a high one is below its low one.</exception>
    public GerminationRange(
        string crop,
        string printedCrop,
        Source source,
        Temperature? minimum = null,
        Temperature? optimumLow = null,
        Temperature? optimumHigh = null,
        Temperature? optimum = null,
        Temperature? maximum = null,
        string? doubt = null)
    {
        Crop = Guard.NotBlank(crop);
        PrintedCrop = Guard.NotBlank(printedCrop);
        Source = Guard.NotNull(source);
        Minimum = Kept(minimum, null, nameof(minimum));
        if (optimumLow is null != optimumHigh is null)
            throw new ArgumentException("optimumHigh was given without optimumLow, or the other way round; allowed: both or neither.", nameof(optimumHigh));
        OptimumLow = Kept(optimumLow, null, nameof(optimumLow));
        OptimumHigh = Kept(optimumHigh, OptimumLow, nameof(optimumHigh));
        Optimum = Kept(optimum, Minimum, nameof(optimum));
        Maximum = Kept(maximum, Minimum, nameof(maximum));
        Doubt = doubt is null ? null : Guard.NotBlank(doubt);
    }

    /// <summary>The crop in plain English, the same for all sources.</summary>
    public string Crop { get; }

    /// <summary>The crop as the source names it.</summary>
    public string PrintedCrop { get; }

    /// <summary>Where it was published.</summary>
    public Source Source { get; }

    /// <summary>The lowest temperature, or the lowest workable one; <see langword="null"/> where none is printed.</summary>
    public Temperature? Minimum { get; }

    /// <summary>The low end of the best range; <see langword="null"/> where none is printed.</summary>
    public Temperature? OptimumLow { get; }

    /// <summary>The high end of the best range; <see langword="null"/> where none is printed.</summary>
    public Temperature? OptimumHigh { get; }

    /// <summary>The best temperature; <see langword="null"/> where none is printed.</summary>
    public Temperature? Optimum { get; }

    /// <summary>The highest temperature, or the highest workable one; <see langword="null"/> where none is printed.</summary>
    public Temperature? Maximum { get; }

    /// <summary>Why the print is not to be trusted; <see langword="null"/> where nothing speaks against it.</summary>
    public string? Doubt { get; }

    /// <summary>The range in °C and invariant culture.</summary>
    /// <returns>For instance <c>asparagus: 10 °C to 35 °C, best 15.6 °C to 29.4 °C, optimum 23.9 °C [...]</c>.</returns>
    public override string ToString() => ToString(TextStyle.Default);

    /// <summary>The range as one line of text.</summary>
    /// <param name="format"><c>M</c> or nothing for °C, <c>U</c> for °F.</param>
    /// <param name="formatProvider">The culture, or <see langword="null"/> for the invariant one.</param>
    /// <returns>The crop, the temperatures that are printed, and the source.</returns>
    /// <exception cref="FormatException">The format is another one.</exception>
    public string ToString(string? format, IFormatProvider? formatProvider) => ToString(TextStyle.Parse(format, formatProvider));

    private string ToString(TextStyle style)
    {
        string?[] parts =
        [
            Minimum is Temperature low ? $"minimum {QuantityText.Of(low, style)}" : null,
            OptimumLow is Temperature from ? $"best {QuantityText.Of(from, style)} to {QuantityText.Of(OptimumHigh!, style)}" : null,
            Optimum is Temperature best ? $"optimum {QuantityText.Of(best, style)}" : null,
            Maximum is Temperature high ? $"maximum {QuantityText.Of(high, style)}" : null,
            Doubt is null ? null : $"doubtful: {Doubt}",
        ];
        return $"{Crop}: {string.Join(", ", parts.Where(part => part is not null))} [{Source}]";
    }

    private static Temperature? Kept(Temperature? value, Temperature? lowest, string parameter)
    {
        if (value is not Temperature given)
            return null;
        double celsius = SeedbedTemperature.Celsius(given, parameter);
        if (lowest is Temperature low)
            Guard.AtLeast(celsius, Boundary.Celsius(low), "°C", parameter);
        return HouseUnits.Normalise(given);
    }
}
