using HortiCalc.Display;
using HortiCalc.Evidence;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Beds;

/// <summary>A published share of the nitrogen in manure or compost that became available in a time.</summary>
/// <remarks>Immutable; equal when all members are equal.</remarks>
public sealed record NitrogenShare
{
    /// <summary>Describes a share.</summary>
    /// <param name="material">The manure or compost.</param>
    /// <param name="isOfOrganic">Whether it is of the organic nitrogen alone; else of the total.</param>
    /// <param name="shortestTime">How long it took, at least; greater than zero.</param>
    /// <param name="longestTime">How long it took, at most; not less than <paramref name="shortestTime"/>.</param>
    /// <param name="low">The low end of the share; from 0 to 100 %.</param>
    /// <param name="high">The high end; not below <paramref name="low"/>.</param>
    /// <param name="way">How it was found.</param>
    /// <param name="source">Where it comes from.</param>
    /// <exception cref="ArgumentException">A text is empty.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A value is out of range.</exception>
    public NitrogenShare(string material, bool isOfOrganic, Duration shortestTime, Duration longestTime, Ratio low, Ratio high, string way, Source source)
    {
        Material = Guard.NotBlank(material);
        IsOfOrganic = isOfOrganic;
        double from = Guard.Positive(Boundary.Days(shortestTime), "days", nameof(shortestTime));
        Guard.AtLeast(Boundary.Days(longestTime), from, "days", nameof(longestTime));
        double lowPercent = Guard.Within(Boundary.Fraction(low) * 100, 0, 100, "%", nameof(low));
        Guard.Within(Boundary.Fraction(high) * 100, lowPercent, 100, "%", nameof(high));
        ShortestTime = HouseUnits.Normalise(shortestTime);
        LongestTime = HouseUnits.Normalise(longestTime);
        Low = HouseUnits.Normalise(low);
        High = HouseUnits.Normalise(high);
        Way = Guard.NotBlank(way);
        Source = Guard.NotNull(source);
    }

    /// <summary>The manure or compost.</summary>
    public string Material { get; }

    /// <summary>Whether it is of the organic nitrogen alone; else of the total.</summary>
    public bool IsOfOrganic { get; }

    /// <summary>How long it took, at least.</summary>
    public Duration ShortestTime { get; }

    /// <summary>How long it took, at most.</summary>
    public Duration LongestTime { get; }

    /// <summary>The low end of the share.</summary>
    public Ratio Low { get; }

    /// <summary>The high end.</summary>
    public Ratio High { get; }

    /// <summary>How it was found.</summary>
    public string Way { get; }

    /// <summary>Where it comes from.</summary>
    public Source Source { get; }

    /// <summary>One line in metric units and invariant culture.</summary>
    /// <returns>For instance <c>manure: 16 % of the organic nitrogen in 84 days [source]</c>.</returns>
    public override string ToString() =>
        $"{Material}: {PublishedSpan.Text(Low, High, TextStyle.Default)} of the {(IsOfOrganic ? "organic" : "total")} nitrogen"
        + $" in {PublishedSpan.Text(ShortestTime, LongestTime, TextStyle.Default)} [{Source}]";
}
