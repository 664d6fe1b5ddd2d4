using HortiCalc.Display;
using HortiCalc.Evidence;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Beds;

/// <summary>A published dry bulk density up to which roots grow freely, or from which they are hindered, by texture.</summary>
/// <remarks>Immutable; equal when all members are equal. Soil in a bed that was walked on or driven over can be denser.</remarks>
public sealed record RootDensityLimit
{
    /// <summary>Describes a limit.</summary>
    /// <param name="texture">The texture, as the source names it.</param>
    /// <param name="ideal">Below this roots grow freely; <see langword="null"/> where the source prints none.</param>
    /// <param name="restricts">Above this roots are hindered; greater than zero.</param>
    /// <param name="source">Where it comes from.</param>
    /// <exception cref="ArgumentException">The texture is empty.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A density is not greater than zero, or the restricting one is below the ideal.</exception>
    public RootDensityLimit(string texture, Density? ideal, Density restricts, Source source)
    {
        Texture = Guard.NotBlank(texture);
        double idealKilograms = ideal is Density below ? Guard.Positive(Boundary.KilogramsPerCubicMetre(below), "kg/m³", nameof(ideal)) : 0;
        Guard.Positive(Boundary.KilogramsPerCubicMetre(restricts), "kg/m³", nameof(restricts));
        Guard.AtLeast(Boundary.KilogramsPerCubicMetre(restricts), idealKilograms, "kg/m³", nameof(restricts));
        Ideal = ideal is Density kept ? HouseUnits.Normalise(kept) : null;
        Restricts = HouseUnits.Normalise(restricts);
        Source = Guard.NotNull(source);
    }

    /// <summary>The texture, as the source names it.</summary>
    public string Texture { get; }

    /// <summary>Below this roots grow freely; <see langword="null"/> where the source prints none.</summary>
    public Density? Ideal { get; }

    /// <summary>Above this roots are hindered.</summary>
    public Density Restricts { get; }

    /// <summary>Where it comes from.</summary>
    public Source Source { get; }

    /// <summary>One line in metric units and invariant culture.</summary>
    /// <returns>For instance <c>clay: roots hindered above 1,400 kg/m³ [source]</c>.</returns>
    public override string ToString() => $"{Texture}: roots hindered above {QuantityText.Of(Restricts, TextStyle.Default)} [{Source}]";
}
