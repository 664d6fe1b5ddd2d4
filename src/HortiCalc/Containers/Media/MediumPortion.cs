using HortiCalc.Display;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Containers;

/// <summary>How much of one component goes into a batch.</summary>
public sealed record MediumPortion
{
    /// <summary>Describes a portion.</summary>
    /// <param name="material">What it is.</param>
    /// <param name="volume">The loose volume; zero or more.</param>
    /// <exception cref="ArgumentException">The material is empty.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The volume is negative.</exception>
    public MediumPortion(string material, Volume volume)
    {
        Material = Guard.NotBlank(material);
        Guard.NotNegative(Boundary.Litres(volume), "L", nameof(volume));
        Volume = HouseUnits.Normalise(volume);
    }

    /// <summary>What it is.</summary>
    public string Material { get; }

    /// <summary>The loose volume.</summary>
    public Volume Volume { get; }

    /// <summary>The volume in metric units and the material, in invariant culture.</summary>
    /// <returns>For instance <c>70 L loam</c>.</returns>
    public override string ToString() => ToString(TextStyle.Default);

    internal string ToString(TextStyle style) => $"{QuantityText.Of(Volume, style)} {Material}";
}
