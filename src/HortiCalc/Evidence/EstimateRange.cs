using HortiCalc.Display;
using HortiCalc.Units;

namespace HortiCalc.Evidence;

/// <summary>The span that a source gives for a value, and what that span means.</summary>
/// <typeparam name="T">The type of the value.</typeparam>
public sealed record EstimateRange<T>
    where T : notnull
{
    /// <summary>Describes the span that a source gives.</summary>
    /// <param name="low">The low end.</param>
    /// <param name="high">The high end.</param>
    /// <param name="meaning">What the span means, for instance <c>range printed by the source</c>.</param>
    /// <exception cref="ArgumentException">The low end is above the high one.</exception>
    public EstimateRange(T low, T high, string meaning)
    {
        Low = HouseUnits.Normalise(low);
        High = HouseUnits.Normalise(high);
        Meaning = Guard.NotBlank(meaning);
        if (Comparer<T>.Default.Compare(Low, High) > 0)
            throw new ArgumentException($"low was {low}; allowed: not above high, {high}.", nameof(low));
    }

    /// <summary>The low end.</summary>
    public T Low { get; }

    /// <summary>The high end.</summary>
    public T High { get; }

    /// <summary>What the span means.</summary>
    public string Meaning { get; }

    /// <summary>The span in metric units.</summary>
    /// <returns>For instance <c>1.5 to 2.3 kg</c>.</returns>
    public override string ToString() => ToString(TextStyle.Default);

    internal string ToString(TextStyle style) => $"{QuantityText.Of(Low, style)} to {QuantityText.Of(High, style)}";
}
