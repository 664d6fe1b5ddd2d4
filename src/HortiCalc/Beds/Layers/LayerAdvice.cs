using HortiCalc.Display;
using HortiCalc.Evidence;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Beds;

/// <summary>A published depth for a layer of compost or mulch, and how deep it is worked in.</summary>
/// <remarks>Immutable; equal when all members are equal.</remarks>
public sealed record LayerAdvice
{
    /// <summary>Describes a published depth.</summary>
    /// <param name="use">What the layer is for, in the source's words or near them.</param>
    /// <param name="low">The low end of the depth; zero or more.</param>
    /// <param name="high">The high end; not below <paramref name="low"/>.</param>
    /// <param name="workedInLow">The least depth to work it into; <see langword="null"/> where it stays on top or the source names none.</param>
    /// <param name="workedInHigh">The greatest.</param>
    /// <param name="source">Where it comes from.</param>
    /// <exception cref="ArgumentException">The use is empty.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A depth is negative, or a high end is below its low one.</exception>
    public LayerAdvice(string use, Length low, Length high, Length? workedInLow, Length? workedInHigh, Source source)
    {
        Use = Guard.NotBlank(use);
        Low = Dimension.NotNegativeKept(low, nameof(low));
        High = Dimension.NotNegativeKept(high, nameof(high));
        Guard.AtLeast(Boundary.Metres(High), Boundary.Metres(Low), "m", nameof(high));
        if (workedInLow is Length least)
            WorkedInLow = Dimension.PositiveKept(least, nameof(workedInLow));
        if (workedInHigh is Length most)
        {
            WorkedInHigh = Dimension.PositiveKept(most, nameof(workedInHigh));
            Guard.AtLeast(Boundary.Metres(WorkedInHigh.Value), WorkedInLow is Length from ? Boundary.Metres(from) : 0, "m", nameof(workedInHigh));
        }

        Source = Guard.NotNull(source);
    }

    /// <summary>What the layer is for.</summary>
    public string Use { get; }

    /// <summary>The low end of the depth.</summary>
    public Length Low { get; }

    /// <summary>The high end.</summary>
    public Length High { get; }

    /// <summary>The least depth to work it into; <see langword="null"/> where it stays on top or the source names none.</summary>
    public Length? WorkedInLow { get; }

    /// <summary>The greatest.</summary>
    public Length? WorkedInHigh { get; }

    /// <summary>Where it comes from.</summary>
    public Source Source { get; }

    /// <summary>One line in metric units and invariant culture.</summary>
    /// <returns>For instance <c>new lawns: 2.54 cm to 5.08 cm, worked in to 12.7 cm to 17.8 cm [source]</c>.</returns>
    public override string ToString() =>
        $"{Use}: {PublishedSpan.Text(Low, High, TextStyle.Default)}"
        + (WorkedInLow is Length least ? $", worked in to {PublishedSpan.Text(least, WorkedInHigh ?? least, TextStyle.Default)}" : "")
        + $" [{Source}]";
}
