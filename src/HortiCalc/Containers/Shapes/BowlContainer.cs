using HortiCalc.Display;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Containers;

/// <summary>A bowl or hanging basket: a cap of a sphere, up to the half of one.</summary>
[TypeFormatterSource(typeof(DisplayFormatters))]
public sealed record BowlContainer : Container
{
    /// <summary>Makes a bowl by its inside diameter and depth.</summary>
    /// <param name="diameter">Across the brim; greater than zero.</param>
    /// <param name="height">From the lowest point to the brim; greater than zero, up to half the diameter, which is a half sphere.</param>
    /// <exception cref="ArgumentOutOfRangeException">A dimension is out of its range.</exception>
    public BowlContainer(Length diameter, Length height)
        : base(height)
    {
        Diameter = Dimension.PositiveKept(diameter, nameof(diameter));
        double halfMetres = Boundary.Metres(diameter) / 2;
        Guard.Within(Boundary.Metres(height), 0, halfMetres * (1 + 1e-12), "m", nameof(height));
    }

    /// <summary>Across the brim, inside.</summary>
    public Length Diameter { get; }

    /// <summary>The radius of the sphere, (a² + h²) / 2 h with half the diameter a.</summary>
    private double SphereMetres
    {
        get
        {
            double halfMetres = Boundary.Metres(Diameter) / 2;
            double deepMetres = Boundary.Metres(Height);
            return (halfMetres * halfMetres + deepMetres * deepMetres) / (2 * deepMetres);
        }
    }

    // The cap of a sphere, pi z² (R - z / 3).
    internal override double CubicMetresTo(double heightMetres) => Math.PI * heightMetres * heightMetres * (SphereMetres - heightMetres / 3);

    internal override double SquareMetresAt(double heightMetres) => Math.PI * heightMetres * (2 * SphereMetres - heightMetres);

    private protected override Container Inside(double wallMetres, double floorMetres) => new BowlContainer(
        Narrower(Diameter, 2 * wallMetres), Narrower(Height, floorMetres));

    private protected override string Shape(TextStyle style) => $"bowl, {QuantityText.Of(Diameter, style)} across";
}
