using HortiCalc.Display;
using HortiCalc.Evidence;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Containers;

/// <summary>How much room one source gives a crop: a depth, a volume, a diameter, or plants to a container.</summary>
/// <remarks>Immutable; equal when all members are equal. A member is <see langword="null"/> where the source prints none.</remarks>
public sealed record CropRoom : IFormattable
{
    /// <summary>Holds a printed row.</summary>
    /// <param name="crop">The crop or the group, as printed.</param>
    /// <param name="source">Where it is printed.</param>
    /// <param name="depth">The least depth of medium; greater than zero.</param>
    /// <param name="depthHigh">The high end of a printed range; not below the low one.</param>
    /// <param name="diameter">The least diameter of a pot; greater than zero.</param>
    /// <param name="volume">The volume of the container; greater than zero.</param>
    /// <param name="plants">The plants that it holds; 1 or more.</param>
    /// <param name="plantsHigh">The high end of a printed range; not below the low one.</param>
    /// <param name="volumeHigh">The high end of a printed range; not below the low one.</param>
    /// <exception cref="ArgumentException">The crop is empty, or nothing is printed of it.</exception>
    /// <exception cref="ArgumentNullException">The source is <see langword="null"/>.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A value lies outside what is said above.</exception>
    public CropRoom(
        string crop,
        Source source,
        Length? depth = null,
        Length? depthHigh = null,
        Length? diameter = null,
        Volume? volume = null,
        int? plants = null,
        int? plantsHigh = null,
        Volume? volumeHigh = null)
    {
        Crop = Guard.NotBlank(crop);
        Source = Guard.NotNull(source);
        if (depth is null && diameter is null && volume is null && plants is null)
            throw new ArgumentException($"Of '{crop}' nothing is given; allowed: a depth, a diameter, a volume or plants.", nameof(crop));
        Depth = Kept(depth, nameof(depth));
        DepthHigh = Kept(depthHigh, nameof(depthHigh));
        if (DepthHigh is { } deepest)
            Guard.AtLeast(Boundary.Metres(deepest), Depth is { } shallowest ? Boundary.Metres(shallowest) : 0, "m", nameof(depthHigh));
        Diameter = Kept(diameter, nameof(diameter));
        if (volume is { } held)
        {
            Guard.Positive(Boundary.Litres(held), "L", nameof(volume));
            Volume = HouseUnits.Normalise(held);
        }

        if (volumeHigh is { } largest)
        {
            Guard.AtLeast(Boundary.Litres(largest), Volume is { } least ? Boundary.Litres(least) : 0, "L", nameof(volumeHigh));
            VolumeHigh = HouseUnits.Normalise(largest);
        }

        Plants = plants is { } count ? Guard.AtLeast(count, 1, nameof(plants)) : null;
        PlantsHigh = plantsHigh is { } most ? Guard.AtLeast(most, Plants ?? 1, nameof(plantsHigh)) : null;
    }

    /// <summary>The crop or the group, as printed.</summary>
    public string Crop { get; }

    /// <summary>Where it is printed.</summary>
    public Source Source { get; }

    /// <summary>The least depth of medium.</summary>
    public Length? Depth { get; }

    /// <summary>The high end of a printed range of depths.</summary>
    public Length? DepthHigh { get; }

    /// <summary>The least diameter of a pot.</summary>
    public Length? Diameter { get; }

    /// <summary>The volume of the container.</summary>
    public Volume? Volume { get; }

    /// <summary>The high end of a printed range of volumes.</summary>
    public Volume? VolumeHigh { get; }

    /// <summary>The plants that it holds.</summary>
    public int? Plants { get; }

    /// <summary>The high end of a printed range of plants.</summary>
    public int? PlantsHigh { get; }

    /// <summary>The row in metric units and invariant culture.</summary>
    /// <returns>For instance <c>carrots: 22.9 cm to 45.7 cm deep [...]</c>.</returns>
    public override string ToString() => ToString(null, null);

    /// <summary>The row as one line of text.</summary>
    /// <param name="format"><c>M</c> or nothing for metric units, <c>U</c> for US customary ones.</param>
    /// <param name="formatProvider">The culture, or <see langword="null"/> for the invariant one.</param>
    /// <returns>The crop, what is printed of it, and the source.</returns>
    /// <exception cref="FormatException">The format is another one.</exception>
    public string ToString(string? format, IFormatProvider? formatProvider) =>
        $"{Crop}: {string.Join(", ", Parts(TextStyle.Parse(format, formatProvider)))} [{Source}]";

    private static Length? Kept(Length? length, string parameter)
    {
        if (length is not { } given)
            return null;
        Guard.Positive(Boundary.Metres(given), "m", parameter);
        return HouseUnits.Normalise(given);
    }

    private static string Range(object low, object? high, TextStyle style) =>
        high is null ? QuantityText.Of(low, style) : $"{QuantityText.Of(low, style)} to {QuantityText.Of(high, style)}";

    private IEnumerable<string> Parts(TextStyle style)
    {
        if (Depth is { } depth)
            yield return $"{Range(depth, DepthHigh, style)} deep";
        if (Diameter is { } across)
            yield return $"{QuantityText.Of(across, style)} across";
        if (Volume is { } volume)
            yield return Range(volume, VolumeHigh, style);
        if (Plants is { } plants)
            yield return $"{Range(plants, PlantsHigh, style)} {((PlantsHigh ?? plants) == 1 ? "plant" : "plants")}";
    }
}
