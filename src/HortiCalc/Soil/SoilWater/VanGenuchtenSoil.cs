using System.Text.Json.Serialization;
using HortiCalc.Evidence;
using HortiCalc.Units;

namespace HortiCalc.Soil;

/// <summary>A published van Genuchten curve: the soil it was fitted to, and where it is printed.</summary>
/// <remarks>Immutable; equal when all members are equal.</remarks>
public sealed record VanGenuchtenSoil
{
    /// <summary>Holds a published curve.</summary>
    /// <param name="name">The name or code of the soil.</param>
    /// <param name="curve">The curve.</param>
    /// <param name="source">Where it is printed.</param>
    /// <param name="texture">The USDA class, where it is of one.</param>
    /// <param name="description">The soil in the words of the source.</param>
    /// <param name="doubt">What in the print cannot be right, where something is.</param>
    /// <exception cref="ArgumentNullException">The curve or the source is missing.</exception>
    /// <exception cref="ArgumentException">The name is empty.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The class is not one of the defined ones.</exception>
    public VanGenuchtenSoil(
        string name, VanGenuchtenCurve curve, Source source, SoilTexture? texture = null, string? description = null, string? doubt = null)
    {
        Name = Guard.NotBlank(name);
        Curve = Guard.NotNull(curve);
        Source = Guard.NotNull(source);
        Texture = texture is { } given ? Guard.Defined(given, nameof(texture)) : null;
        Description = description;
        Doubt = doubt;
    }

    /// <summary>The name or code of the soil.</summary>
    public string Name { get; }

    /// <summary>The curve.</summary>
    public VanGenuchtenCurve Curve { get; }

    /// <summary>Where it is printed.</summary>
    public Source Source { get; }

    /// <summary>The USDA class, where it is of one.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public SoilTexture? Texture { get; }

    /// <summary>The soil in the words of the source.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public string? Description { get; }

    /// <summary>What in the print cannot be right, where something is.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public string? Doubt { get; }

    /// <summary>The name, the curve and the source.</summary>
    /// <returns>One line of text.</returns>
    public override string ToString() => $"{Name}: {Curve} [{Source}]";
}
