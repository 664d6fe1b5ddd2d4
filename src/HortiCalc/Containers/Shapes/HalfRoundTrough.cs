using HortiCalc.Display;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Containers;

/// <summary>A trough with a round bottom: half a pipe that lies, or less than half of one.</summary>
[TypeFormatterSource(typeof(DisplayFormatters))]
public sealed record HalfRoundTrough : Container
{
    /// <summary>Makes a trough by its inside dimensions.</summary>
    /// <param name="width">Across the brim; greater than zero.</param>
    /// <param name="length">Along the pipe; greater than zero.</param>
    /// <param name="height">From the lowest line to the brim; greater than zero, up to half the width, which is half a pipe.</param>
    /// <exception cref="ArgumentOutOfRangeException">A dimension is out of its range.</exception>
    public HalfRoundTrough(Length width, Length length, Length height)
        : base(height)
    {
        Width = Dimension.PositiveKept(width, nameof(width));
        Length = Dimension.PositiveKept(length, nameof(length));
        Guard.Within(Boundary.Metres(height), 0, Boundary.Metres(width) / 2 * (1 + 1e-12), "m", nameof(height));
    }

    /// <summary>Across the brim, inside.</summary>
    public Length Width { get; }

    /// <summary>Along the pipe, inside.</summary>
    public Length Length { get; }

    private double PipeMetres
    {
        get
        {
            double halfMetres = Boundary.Metres(Width) / 2;
            double deepMetres = Boundary.Metres(Height);
            return (halfMetres * halfMetres + deepMetres * deepMetres) / (2 * deepMetres);
        }
    }

    // The segment of a circle, R² acos((R - z) / R) - (R - z) √(2 R z - z²), along the pipe.
    internal override double CubicMetresTo(double heightMetres)
    {
        double radius = PipeMetres;
        double toCentre = radius - heightMetres;
        double chord = Math.Sqrt(Math.Max(0, heightMetres * (2 * radius - heightMetres)));
        return Boundary.Metres(Length) * (radius * radius * Math.Atan2(chord, toCentre) - toCentre * chord);
    }

    internal override double SquareMetresAt(double heightMetres) =>
        Boundary.Metres(Length) * 2 * Math.Sqrt(Math.Max(0, heightMetres * (2 * PipeMetres - heightMetres)));

    private protected override Container Inside(double wallMetres, double floorMetres) => new HalfRoundTrough(
        Narrower(Width, 2 * wallMetres), Narrower(Length, 2 * wallMetres), Narrower(Height, floorMetres));

    private protected override string Shape(TextStyle style) => $"half-round trough, {QuantityText.Of(Width, style)} by {QuantityText.Of(Length, style)}";
}
