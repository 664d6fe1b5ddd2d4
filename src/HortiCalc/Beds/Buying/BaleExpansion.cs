using HortiCalc.Display;
using HortiCalc.Evidence;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Beds;

/// <summary>What a compressed bale becomes when it is loosened, as a source has it.</summary>
/// <remarks>Immutable; equal when all members are equal. 150 % is one and a half times the volume on the label.</remarks>
public sealed record BaleExpansion
{
    /// <summary>Describes an expansion.</summary>
    /// <param name="low">The least loose volume, as a share of the labelled one; greater than zero.</param>
    /// <param name="high">The greatest; not below <paramref name="low"/>.</param>
    /// <param name="source">Where it comes from.</param>
    /// <exception cref="ArgumentOutOfRangeException">The low end is not greater than zero, or the high end is below it.</exception>
    public BaleExpansion(Ratio low, Ratio high, Source source)
    {
        double lowPercent = Guard.Positive(Boundary.Fraction(low) * 100, "%", nameof(low));
        Guard.AtLeast(Boundary.Fraction(high) * 100, lowPercent, "%", nameof(high));
        Low = HouseUnits.Normalise(low);
        High = HouseUnits.Normalise(high);
        Source = Guard.NotNull(source);
    }

    /// <summary>The least loose volume, as a share of the labelled one.</summary>
    public Ratio Low { get; }

    /// <summary>The greatest.</summary>
    public Ratio High { get; }

    /// <summary>Where it comes from.</summary>
    public Source Source { get; }

    /// <summary>One line in metric units and invariant culture.</summary>
    /// <returns>For instance <c>150 % to 200 % of the label [source]</c>.</returns>
    public override string ToString() => $"{PublishedSpan.Text(Low, High, TextStyle.Default)} of the label [{Source}]";

    /// <summary>The expansion that a statement of coverage implies: area times depth over the volume on the label.</summary>
    /// <param name="label">The volume on the label; greater than zero.</param>
    /// <param name="area">The area that the bale is said to cover; greater than zero.</param>
    /// <param name="depth">The depth to which; greater than zero.</param>
    /// <returns>The loose volume as a share of the labelled one.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is not greater than zero.</exception>
    public static Ratio Implied(Volume label, Area area, Length depth) => Ratio.FromPercent(
        100 * Boundary.Litres(Amendment.VolumeFor(area, Length.FromMeters(Dimension.Positive(depth, nameof(depth)))))
        / Guard.Positive(Boundary.Litres(label), "L", nameof(label)));
}
