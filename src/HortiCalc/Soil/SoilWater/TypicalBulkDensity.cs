using HortiCalc.Display;
using HortiCalc.Evidence;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Soil;

/// <summary>The bulk density that a source gives for a class of texture.</summary>
/// <remarks>Immutable; equal when all members are equal.</remarks>
public sealed record TypicalBulkDensity
{
    /// <summary>Holds a printed value.</summary>
    /// <param name="texture">The USDA class.</param>
    /// <param name="density">The mass of dry soil per volume; above zero.</param>
    /// <param name="source">Where it is printed.</param>
    /// <exception cref="ArgumentNullException">The source is missing.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The class is unknown, or the density not above zero.</exception>
    public TypicalBulkDensity(SoilTexture texture, Density density, Source source)
    {
        Texture = Guard.Defined(texture);
        Guard.Positive(Boundary.KilogramsPerCubicMetre(density), "kg/m³", nameof(density));
        Density = HouseUnits.Normalise(density);
        Source = Guard.NotNull(source);
    }

    /// <summary>The USDA class.</summary>
    public SoilTexture Texture { get; }

    /// <summary>The mass of dry soil per volume.</summary>
    public Density Density { get; }

    /// <summary>Where it is printed.</summary>
    public Source Source { get; }

    /// <summary>The class and the density.</summary>
    /// <returns>One line of text.</returns>
    public override string ToString() => $"{Texture}: {QuantityText.Of(Density, TextStyle.Default)} [{Source}]";
}
