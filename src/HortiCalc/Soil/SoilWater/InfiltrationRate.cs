using System.Text.Json.Serialization;
using HortiCalc.Evidence;
using HortiCalc.Units;

namespace HortiCalc.Soil;

/// <summary>How fast a soil takes water in, as one list prints it.</summary>
/// <remarks>Immutable; equal when all members are equal.</remarks>
public sealed record InfiltrationRate
{
    /// <summary>Holds a printed row.</summary>
    /// <param name="printed">The soils, as printed.</param>
    /// <param name="textures">The USDA classes that they are; none where the row is of another kind of soil.</param>
    /// <param name="low">The low end.</param>
    /// <param name="high">The high end, not below the low one; none where the list prints a rate and more.</param>
    /// <param name="source">Where it is printed.</param>
    /// <exception cref="ArgumentNullException">The classes or the source are missing.</exception>
    /// <exception cref="ArgumentException">The text is empty.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The high end is below the low one.</exception>
    public InfiltrationRate(string printed, IReadOnlyList<SoilTexture> textures, WaterRate low, WaterRate? high, Source source)
    {
        Printed = Guard.NotBlank(printed);
        Textures = ValueList<SoilTexture>.Of(Guard.NotNull(textures));
        Low = low;
        if (high is { } most)
            Guard.AtLeast(most.MillimetresPerHour, low.MillimetresPerHour, "mm/h", nameof(high));
        High = high;
        Source = Guard.NotNull(source);
    }

    /// <summary>The soils, as printed.</summary>
    public string Printed { get; }

    /// <summary>The USDA classes that they are.</summary>
    public IReadOnlyList<SoilTexture> Textures { get; }

    /// <summary>The low end.</summary>
    public WaterRate Low { get; }

    /// <summary>The high end; none where the list prints a rate and more.</summary>
    public WaterRate? High { get; }

    /// <summary>Where it is printed.</summary>
    public Source Source { get; }

    /// <summary>What to take care of.</summary>
    [JsonIgnore]
    public IReadOnlyList<Caution> Cautions { get; } = ValueList<Caution>.Of([SoilWaterCautions.Crust]);

    /// <summary>The soils and the span.</summary>
    /// <returns>For instance <c>clay loam: 5 mm/h to 10 mm/h [...]</c>.</returns>
    public override string ToString() => $"{Printed}: {Low} {(High is { } high ? $"to {high}" : "or more")} [{Source}]";
}
