using HortiCalc.Evidence;
using HortiCalc.Units;

namespace HortiCalc.Containers;

/// <summary>The ratio of carbon to nitrogen by mass that a source gives for a material.</summary>
/// <remarks>Immutable; equal when all members are equal.</remarks>
public sealed record CarbonRatio
{
    /// <summary>Holds a printed ratio.</summary>
    /// <param name="material">The material.</param>
    /// <param name="low">Carbon to one of nitrogen; greater than zero. The low end of a printed range.</param>
    /// <param name="high">The high end of a printed range, not below the low one; else <see langword="null"/>.</param>
    /// <param name="source">Where it is printed.</param>
    /// <exception cref="ArgumentException">The material is empty.</exception>
    /// <exception cref="ArgumentNullException">The source is <see langword="null"/>.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A ratio lies outside what is said above.</exception>
    public CarbonRatio(string material, double low, double? high, Source source)
    {
        Material = Guard.NotBlank(material);
        Low = Guard.Positive(low, "");
        High = high is { } most ? Guard.AtLeast(most, Low, "", nameof(high)) : null;
        Source = Guard.NotNull(source);
    }

    /// <summary>The material.</summary>
    public string Material { get; }

    /// <summary>Carbon to one of nitrogen; the low end of a printed range.</summary>
    public double Low { get; }

    /// <summary>The high end of a printed range.</summary>
    public double? High { get; }

    /// <summary>Where it is printed.</summary>
    public Source Source { get; }

    /// <summary>The ratio in invariant culture.</summary>
    /// <returns>For instance <c>mature compost: C:N 15 to 20 [source]</c>.</returns>
    public override string ToString() => $"{Material}: C:N {Guard.Number(Low)}{(High is { } high ? $" to {Guard.Number(high)}" : "")} [{Source}]";
}
