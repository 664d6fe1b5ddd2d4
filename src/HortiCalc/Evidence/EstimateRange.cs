using HortiCalc.Display;
using HortiCalc.Units;

namespace HortiCalc.Evidence;

/// <summary>The span that a source gives for a value, and what that span means.</summary>
/// <typeparam name="T">The type of the value.</typeparam>
/// <remarks>Immutable; equal when all members are equal. Quantities are brought to one unit, as in <see cref="Estimate{T}"/>.</remarks>
public sealed record EstimateRange<T> : IFormattable
    where T : notnull
{
    /// <summary>Describes the span that a source gives.</summary>
    /// <param name="low">The low end.</param>
    /// <param name="high">The high end.</param>
    /// <param name="meaning">What the span means, for instance <c>range printed by the source</c>.</param>
    /// <exception cref="ArgumentNullException">An end is missing.</exception>
    /// <exception cref="ArgumentException">The low end is above the high one, or the meaning is empty.</exception>
    public EstimateRange(T low, T high, string meaning)
    {
        ArgumentNullException.ThrowIfNull(low);
        ArgumentNullException.ThrowIfNull(high);
        Low = HouseUnits.Normalise(low);
        High = HouseUnits.Normalise(high);
        Meaning = Guard.NotBlank(meaning);
        if (Comparer<T>.Default.Compare(Low, High) > 0)
            throw new ArgumentException(
                $"low was {QuantityText.Of(Low, TextStyle.Default)}; allowed: not above high, {QuantityText.Of(High, TextStyle.Default)}.",
                nameof(low));
    }

    /// <summary>The low end.</summary>
    public T Low { get; }

    /// <summary>The high end.</summary>
    public T High { get; }

    /// <summary>What the span means.</summary>
    public string Meaning { get; }

    /// <summary>The span in metric units and invariant culture.</summary>
    /// <returns>For instance <c>1.5 kg to 2.3 kg</c>.</returns>
    public override string ToString() => ToString(TextStyle.Default);

    /// <summary>The span as text.</summary>
    /// <param name="format"><c>M</c> or nothing for metric units, <c>U</c> for US customary ones.</param>
    /// <param name="formatProvider">The culture, or <see langword="null"/> for the invariant one.</param>
    /// <returns>For instance <c>1.5 kg to 2.3 kg</c>.</returns>
    /// <exception cref="FormatException">The format is another one.</exception>
    public string ToString(string? format, IFormatProvider? formatProvider) => ToString(TextStyle.Parse(format, formatProvider));

    internal string ToString(TextStyle style) => $"{QuantityText.Of(Low, style)} to {QuantityText.Of(High, style)}";
}
