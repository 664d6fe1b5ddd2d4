using HortiCalc.Display;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Containers;

/// <summary>A round container with straight sides, upright or tapered.</summary>
[TypeFormatterSource(typeof(DisplayFormatters))]
public sealed record RoundContainer : Container
{
    /// <summary>Makes a round container by its inside diameters.</summary>
    /// <param name="topDiameter">Across the brim; greater than zero.</param>
    /// <param name="baseDiameter">Across the base; zero for a point, and may exceed the top.</param>
    /// <param name="height">Straight up from base to brim; greater than zero.</param>
    /// <exception cref="ArgumentOutOfRangeException">A dimension is out of its range.</exception>
    public RoundContainer(Length topDiameter, Length baseDiameter, Length height)
        : base(height)
    {
        TopDiameter = Dimension.PositiveKept(topDiameter, nameof(topDiameter));
        BaseDiameter = Dimension.NotNegativeKept(baseDiameter, nameof(baseDiameter));
    }

    /// <summary>Across the brim, inside.</summary>
    public Length TopDiameter { get; }

    /// <summary>Across the base, inside.</summary>
    public Length BaseDiameter { get; }

    // The frustum of a cone, pi h / 3 (R² + R r + r²), in diameters.
    internal override double CubicMetresTo(double heightMetres)
    {
        double lowerMetres = Boundary.Metres(BaseDiameter);
        double upperMetres = AcrossMetres(TopDiameter, BaseDiameter, heightMetres);
        return Math.PI / 12 * heightMetres * (lowerMetres * lowerMetres + lowerMetres * upperMetres + upperMetres * upperMetres);
    }

    internal override double SquareMetresAt(double heightMetres)
    {
        double acrossMetres = AcrossMetres(TopDiameter, BaseDiameter, heightMetres);
        return Math.PI / 4 * acrossMetres * acrossMetres;
    }

    private protected override Container Inside(double wallMetres, double floorMetres) => new RoundContainer(
        Narrower(TopDiameter, 2 * wallMetres), Narrower(BaseDiameter, 2 * wallMetres), Narrower(Height, floorMetres));

    private protected override string Shape(TextStyle style) => Same(TopDiameter, BaseDiameter)
        ? $"round, {QuantityText.Of(TopDiameter, style)} across"
        : $"round, {QuantityText.Of(TopDiameter, style)} across the top, {QuantityText.Of(BaseDiameter, style)} at the base";
}
