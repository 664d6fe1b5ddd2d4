using HortiCalc.Display;
using HortiCalc.Evidence;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Beds;

/// <summary>A published depth of soil for a crop.</summary>
/// <remarks>Immutable; equal when all members are equal.</remarks>
public sealed record CropSoilDepth
{
    /// <summary>Describes a published depth.</summary>
    /// <param name="crop">The crop or group of crops, as the source names it.</param>
    /// <param name="kind">What the depth is.</param>
    /// <param name="low">The least depth; greater than zero.</param>
    /// <param name="high">The greatest; <see langword="null"/> where the source prints a least depth only.</param>
    /// <param name="source">Where it comes from.</param>
    /// <exception cref="ArgumentException">The crop is empty.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A depth is not greater than zero, or the greatest is below the least.</exception>
    public CropSoilDepth(string crop, SoilDepthKind kind, Length low, Length? high, Source source)
    {
        Crop = Guard.NotBlank(crop);
        Kind = Guard.Defined(kind);
        Low = Dimension.PositiveKept(low, nameof(low));
        if (high is Length most)
        {
            High = Dimension.PositiveKept(most, nameof(high));
            Guard.AtLeast(Boundary.Metres(High.Value), Boundary.Metres(Low), "m", nameof(high));
        }

        Source = Guard.NotNull(source);
    }

    /// <summary>The crop or group of crops, as the source names it.</summary>
    public string Crop { get; }

    /// <summary>What the depth is.</summary>
    public SoilDepthKind Kind { get; }

    /// <summary>The least depth.</summary>
    public Length Low { get; }

    /// <summary>The greatest; <see langword="null"/> where the source prints a least depth only.</summary>
    public Length? High { get; }

    /// <summary>Where it comes from.</summary>
    public Source Source { get; }

    /// <summary>One line in metric units and invariant culture.</summary>
    /// <returns>For instance <c>lettuce: 15.2 cm or more [source]</c>.</returns>
    public override string ToString() => $"{Crop}: {QuantityText.Of(Low, TextStyle.Default)}{(High is Length high ? $" to {QuantityText.Of(high, TextStyle.Default)}" : " or more")} [{Source}]";
}
