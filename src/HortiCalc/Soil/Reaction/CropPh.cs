using HortiCalc.Display;
using HortiCalc.Evidence;
using HortiCalc.Units;

namespace HortiCalc.Soil;

/// <summary>What one source prints of the pH that a crop wants. Lowest, best range, target and highest are different things and kept apart.</summary>
/// <remarks>
/// Immutable; equal when all members are equal. Held as printed, even where the source contradicts itself: <see cref="Doubt"/> then says how, and the
/// values are kept out of comparisons.
/// </remarks>
public sealed record CropPh : IFormattable
{
    /// <summary>Holds what a source prints.</summary>
    /// <param name="crop">The crop or group as the source names it; for FAO the scientific name.</param>
    /// <param name="source">Where it was published.</param>
    /// <param name="otherName">Another name to find it by, or <see langword="null"/>.</param>
    /// <param name="conditions">The soil or use it is for, or <see langword="null"/> where none is said.</param>
    /// <param name="solution">What the pH is read in, or <see langword="null"/> where the source does not say.</param>
    /// <param name="minimum">The lowest pH.</param>
    /// <param name="minimumHigh">The high end where the lowest pH is printed as a range.</param>
    /// <param name="optimumLow">The low end of the best range.</param>
    /// <param name="optimumHigh">The high end of the best range.</param>
    /// <param name="target">The pH to bring the soil to.</param>
    /// <param name="maximum">The highest pH.</param>
    /// <param name="doubt">Why the print is not to be trusted; <see langword="null"/> where nothing speaks against it.</param>
    /// <exception cref="ArgumentNullException">The source is <see langword="null"/>.</exception>
    /// <exception cref="ArgumentException">A text is empty, or one end of the best range is there without the other.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The solution is unknown, or without a doubt a high value is below its low one.</exception>
    public CropPh(
        string crop,
        Source source,
        string? otherName = null,
        string? conditions = null,
        PhSolution? solution = null,
        Ph? minimum = null,
        Ph? minimumHigh = null,
        Ph? optimumLow = null,
        Ph? optimumHigh = null,
        Ph? target = null,
        Ph? maximum = null,
        string? doubt = null)
    {
        Crop = Guard.NotBlank(crop);
        Source = Guard.NotNull(source);
        OtherName = otherName is null ? null : Guard.NotBlank(otherName);
        Conditions = conditions is null ? null : Guard.NotBlank(conditions);
        Solution = solution is { } known ? Guard.Defined(known, nameof(solution)) : null;
        if (optimumLow is null != optimumHigh is null)
            throw new ArgumentException("optimumHigh was given without optimumLow, or the other way round; allowed: both or neither.", nameof(optimumHigh));
        Doubt = doubt is null ? null : Guard.NotBlank(doubt);
        Minimum = minimum;
        MinimumHigh = NotBelow(minimumHigh, minimum, nameof(minimumHigh));
        OptimumLow = NotBelow(optimumLow, minimum, nameof(optimumLow));
        OptimumHigh = NotBelow(optimumHigh, optimumLow, nameof(optimumHigh));
        Target = NotBelow(target, minimum, nameof(target));
        Maximum = NotBelow(maximum, optimumHigh ?? minimum, nameof(maximum));
    }

    /// <summary>The crop or group as the source names it; for FAO the scientific name.</summary>
    public string Crop { get; }

    /// <summary>Where it was published.</summary>
    public Source Source { get; }

    /// <summary>Another name to find it by, or <see langword="null"/>.</summary>
    public string? OtherName { get; }

    /// <summary>The soil or use it is for, or <see langword="null"/> where none is said.</summary>
    public string? Conditions { get; }

    /// <summary>What the pH is read in, or <see langword="null"/> where the source does not say.</summary>
    public PhSolution? Solution { get; }

    /// <summary>The lowest pH, or <see langword="null"/> where none is printed.</summary>
    public Ph? Minimum { get; }

    /// <summary>The high end where the lowest pH is printed as a range, else <see langword="null"/>.</summary>
    public Ph? MinimumHigh { get; }

    /// <summary>The low end of the best range, or <see langword="null"/> where none is printed.</summary>
    public Ph? OptimumLow { get; }

    /// <summary>The high end of the best range, or <see langword="null"/> where none is printed.</summary>
    public Ph? OptimumHigh { get; }

    /// <summary>The pH to bring the soil to, or <see langword="null"/> where none is printed.</summary>
    public Ph? Target { get; }

    /// <summary>The highest pH, or <see langword="null"/> where none is printed.</summary>
    public Ph? Maximum { get; }

    /// <summary>Why the print is not to be trusted; <see langword="null"/> where nothing speaks against it.</summary>
    public string? Doubt { get; }

    /// <summary>What is printed, in invariant culture.</summary>
    /// <returns>For instance <c>Garlic: best pH 5.5 to pH 8 [...]</c>.</returns>
    public override string ToString() => ToString(TextStyle.Default);

    /// <summary>What is printed, as one line of text.</summary>
    /// <param name="format"><c>M</c>, <c>U</c> or nothing; a pH is the same in all units.</param>
    /// <param name="formatProvider">The culture, or <see langword="null"/> for the invariant one.</param>
    /// <returns>The crop, what is printed of its pH, and the source.</returns>
    /// <exception cref="FormatException">The format is another one.</exception>
    public string ToString(string? format, IFormatProvider? formatProvider) => ToString(TextStyle.Parse(format, formatProvider));

    internal string ToString(TextStyle style)
    {
        string?[] parts =
        [
            Minimum is { } low ? $"lowest {QuantityText.Of(low, style)}{(MinimumHigh is { } upTo ? $" to {QuantityText.Of(upTo, style)}" : "")}" : null,
            OptimumLow is { } from ? $"best {QuantityText.Of(from, style)} to {QuantityText.Of(OptimumHigh!.Value, style)}" : null,
            Target is { } goal ? $"target {QuantityText.Of(goal, style)}" : null,
            Maximum is { } high ? $"highest {QuantityText.Of(high, style)}" : null,
            Solution == PhSolution.CalciumChloride ? "in calcium chloride" : null,
            Doubt is null ? null : $"doubtful: {Doubt}",
        ];
        string name = Conditions is null ? Crop : $"{Crop} ({Conditions})";
        return $"{name}: {string.Join(", ", parts.Where(part => part is not null))} [{Source}]";
    }

    private Ph? NotBelow(Ph? value, Ph? low, string parameter)
    {
        if (value is { } given && low is { } least && Doubt is null)
            Guard.AtLeast(given.Value, least.Value, "pH", parameter);
        return value;
    }
}
