using System.Text.Json.Serialization;
using HortiCalc.Display;
using HortiCalc.Evidence;
using HortiCalc.Units;

namespace HortiCalc.Soil;

/// <summary>What the sources print of the pH of one crop, side by side, and how far they are apart.</summary>
/// <remarks>
/// Immutable; equal when the crop and the rows are. Rows in doubt are shown and kept out of the spans; so are rows read in calcium chloride, because a
/// span of two kinds of reading means nothing.
/// </remarks>
[TypeFormatterSource(typeof(DisplayFormatters))]
public sealed record CropPhComparison : IFormattable, IDisplayable
{
    /// <summary>Puts rows side by side.</summary>
    /// <param name="crop">The crop asked for.</param>
    /// <param name="rows">What each source prints.</param>
    /// <exception cref="ArgumentNullException">The rows are <see langword="null"/>.</exception>
    /// <exception cref="ArgumentException">The crop is empty.</exception>
    public CropPhComparison(string crop, IReadOnlyList<CropPh> rows)
    {
        Crop = Guard.NotBlank(crop);
        Rows = ValueList<CropPh>.Of(Guard.NotNull(rows));
    }

    /// <summary>The crop asked for.</summary>
    public string Crop { get; }

    /// <summary>What each source prints.</summary>
    public IReadOnlyList<CropPh> Rows { get; }

    /// <summary>From the lowest minimum to the highest one; <see langword="null"/> where no source prints one.</summary>
    [JsonIgnore]
    public EstimateRange<Ph>? Minima => Span(row => [row.Minimum, row.MinimumHigh]);

    /// <summary>From the lowest low end of a best range to the highest high end; <see langword="null"/> where no source prints one.</summary>
    [JsonIgnore]
    public EstimateRange<Ph>? Optima => Span(row => [row.OptimumLow, row.OptimumHigh]);

    /// <summary>From the lowest target to the highest one; <see langword="null"/> where no source prints one.</summary>
    [JsonIgnore]
    public EstimateRange<Ph>? Targets => Span(row => [row.Target]);

    /// <summary>What lies in every best range; <see langword="null"/> where no source prints one, or the sources have nothing in common.</summary>
    [JsonIgnore]
    public EstimateRange<Ph>? Agreed
    {
        get
        {
            CropPh[] ranged = [.. Comparable.Where(row => row.OptimumLow is not null)];
            if (ranged.Length == 0)
                return null;
            Ph low = ranged.Max(row => row.OptimumLow!.Value);
            Ph high = ranged.Min(row => row.OptimumHigh!.Value);
            return low <= high ? new EstimateRange<Ph>(low, high, "in the best range of every source") : null;
        }
    }

    /// <summary>The spans in invariant culture.</summary>
    /// <returns>One line.</returns>
    public override string ToString() => ToString(TextStyle.Default);

    /// <summary>The spans as one line of text.</summary>
    /// <param name="format"><c>M</c>, <c>U</c> or nothing; a pH is the same in all units.</param>
    /// <param name="formatProvider">The culture, or <see langword="null"/> for the invariant one.</param>
    /// <returns>The crop, the number of rows, and the spans.</returns>
    /// <exception cref="FormatException">The format is another one.</exception>
    public string ToString(string? format, IFormatProvider? formatProvider) => ToString(TextStyle.Parse(format, formatProvider));

    DisplayBlock IDisplayable.ToDisplay(TextStyle style) => new(ToString(style))
    {
        Rows = [.. Rows.Select(row => new DisplayRow(row.Source.Key, row.ToString(style)))],
    };

    private IEnumerable<CropPh> Comparable => Rows.Where(row => row.Doubt is null && row.Solution is null or PhSolution.Water);

    private EstimateRange<Ph>? Span(Func<CropPh, Ph?[]> values)
    {
        Ph[] all = [.. Comparable.SelectMany(values).OfType<Ph>().Order()];
        return all.Length == 0 ? null : new EstimateRange<Ph>(all[0], all[^1], "lowest and highest of the sources");
    }

    private string ToString(TextStyle style)
    {
        string?[] parts =
        [
            Minima is null ? null : $"lowest {Minima.ToString(style)}",
            Optima is null ? null : $"best {Optima.ToString(style)}",
            Targets is null ? null : $"target {Targets.ToString(style)}",
        ];
        return $"{Crop}, {QuantityText.Of(Rows.Count, style)} printed: {string.Join(", ", parts.Where(part => part is not null))}";
    }
}
