using HortiCalc.Evidence;
using HortiCalc.Units;

namespace HortiCalc.Containers;

/// <summary>A retention curve of a named medium, with its source.</summary>
/// <remarks>Immutable; equal when all members are equal.</remarks>
public sealed record PublishedRetention
{
    /// <summary>Holds a curve.</summary>
    /// <param name="medium">The medium.</param>
    /// <param name="curve">Its curve.</param>
    /// <param name="source">Where it is printed.</param>
    /// <exception cref="ArgumentException">The medium is empty.</exception>
    /// <exception cref="ArgumentNullException">The curve or the source is <see langword="null"/>.</exception>
    public PublishedRetention(string medium, RetentionCurve curve, Source source)
    {
        Medium = Guard.NotBlank(medium);
        Curve = Guard.NotNull(curve);
        Source = Guard.NotNull(source);
    }

    /// <summary>The medium.</summary>
    public string Medium { get; }

    /// <summary>Its curve.</summary>
    public RetentionCurve Curve { get; }

    /// <summary>Where it is printed.</summary>
    public Source Source { get; }

    /// <summary>The medium, its curve and the source, in invariant culture.</summary>
    /// <returns>One line of text.</returns>
    public override string ToString() => $"{Medium}: {Curve} [{Source}]";
}
