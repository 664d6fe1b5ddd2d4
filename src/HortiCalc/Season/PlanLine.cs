using HortiCalc.Display;
using HortiCalc.Evidence;
using HortiCalc.Units;

namespace HortiCalc.Season;

/// <summary>One line of a season plan: where it belongs, what it says, and what it rests on.</summary>
/// <remarks>Immutable; equal when all members are equal.</remarks>
public abstract record PlanLine : IFormattable
{
    private protected PlanLine(string place, IReadOnlyList<Method> evidence)
    {
        Place = Guard.NotBlank(place);
        Evidence = ValueList<Method>.Of(Guard.NotNull(evidence));
        if (Evidence.Count == 0)
            throw new ArgumentException("evidence was empty; allowed: at least one method.", nameof(evidence));
    }

    /// <summary>The bed, the pots or the mix that the line is about, by name.</summary>
    public string Place { get; }

    /// <summary>The methods, each with its source, that the line rests on; at least one.</summary>
    public IReadOnlyList<Method> Evidence { get; }

    /// <summary>The line in metric units and invariant culture.</summary>
    /// <returns>One line of text.</returns>
    public sealed override string ToString() => ToString(TextStyle.Default);

    /// <summary>The line as text.</summary>
    /// <param name="format"><c>M</c> or nothing for metric units, <c>U</c> for US customary ones.</param>
    /// <param name="formatProvider">The culture, or <see langword="null"/> for the invariant one.</param>
    /// <returns>One line of text, with the first source.</returns>
    /// <exception cref="FormatException">The format is another one.</exception>
    public string ToString(string? format, IFormatProvider? formatProvider) => ToString(TextStyle.Parse(format, formatProvider));

    /// <summary>The short texts of the line, from left to right; the last may be long.</summary>
    internal abstract IReadOnlyList<string> Cells(TextStyle style);

    private string ToString(TextStyle style) =>
        $"{Place}: {string.Join("; ", Cells(style).Where(cell => cell.Length > 0))} [{Evidence[0].Source}]";
}
