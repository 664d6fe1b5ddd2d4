using HortiCalc.Display;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Containers;

/// <summary>Half a barrel, cut across its belly: the staves bend as a parabola that stands upright at the cut.</summary>
/// <remarks>
/// The radius grows from that of the head as the square of the height that is left to the belly: r(z) = R − (R − r) (1 − z / h)². Half of the barrel that gaugers reckon with,
/// π h (8 D² + 4 D d + 3 d²) / 60 for the half height h.
/// </remarks>
[TypeFormatterSource(typeof(DisplayFormatters))]
public sealed record HalfBarrel : Container
{
    /// <summary>Makes half a barrel by its inside dimensions.</summary>
    /// <param name="bellyDiameter">Across the cut, which is the brim; greater than zero.</param>
    /// <param name="headDiameter">Across the base; zero or more, not more than the belly.</param>
    /// <param name="height">From base to brim; greater than zero.</param>
    /// <exception cref="ArgumentOutOfRangeException">A dimension is out of its range.</exception>
    public HalfBarrel(Length bellyDiameter, Length headDiameter, Length height)
        : base(height)
    {
        BellyDiameter = Dimension.PositiveKept(bellyDiameter, nameof(bellyDiameter));
        HeadDiameter = Dimension.NotNegativeKept(headDiameter, nameof(headDiameter));
        Guard.Within(Boundary.Metres(headDiameter), 0, Boundary.Metres(bellyDiameter), "m", nameof(headDiameter));
    }

    /// <summary>Across the cut, inside.</summary>
    public Length BellyDiameter { get; }

    /// <summary>Across the base, inside.</summary>
    public Length HeadDiameter { get; }

    internal override double CubicMetresTo(double heightMetres)
    {
        // The integral of the squared radius, with s the share of the height left to the belly: R² s - 2 R b s³ / 3 + b² s⁵ / 5.
        double belly = Boundary.Metres(BellyDiameter) / 2;
        double bend = belly - Boundary.Metres(HeadDiameter) / 2;
        double high = Boundary.Metres(Height);
        double Antiderivative(double left) =>
            belly * belly * left - 2 * belly * bend * Math.Pow(left, 3) / 3 + bend * bend * Math.Pow(left, 5) / 5;
        return Math.PI * high * (Antiderivative(1) - Antiderivative(1 - heightMetres / high));
    }

    internal override double SquareMetresAt(double heightMetres)
    {
        double belly = Boundary.Metres(BellyDiameter) / 2;
        double left = 1 - heightMetres / Boundary.Metres(Height);
        double radius = belly - (belly - Boundary.Metres(HeadDiameter) / 2) * left * left;
        return Math.PI * radius * radius;
    }

    private protected override Container Inside(double wallMetres, double floorMetres) => new HalfBarrel(
        Narrower(BellyDiameter, 2 * wallMetres), Narrower(HeadDiameter, 2 * wallMetres), Narrower(Height, floorMetres));

    private protected override string Shape(TextStyle style) =>
        $"half barrel, {QuantityText.Of(BellyDiameter, style)} across the top, {QuantityText.Of(HeadDiameter, style)} at the base";
}
