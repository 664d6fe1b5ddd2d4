using HortiCalc.Display;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Containers;

/// <summary>A square container with straight sides, upright or tapered.</summary>
[TypeFormatterSource(typeof(DisplayFormatters))]
public sealed record SquareContainer : Container
{
    /// <summary>Makes a square container by its inside widths.</summary>
    /// <param name="topSide">One side of the brim; greater than zero.</param>
    /// <param name="baseSide">One side of the base; zero for a point, and may exceed the top.</param>
    /// <param name="height">Straight up from base to brim; greater than zero.</param>
    /// <exception cref="ArgumentOutOfRangeException">A dimension is out of its range.</exception>
    public SquareContainer(Length topSide, Length baseSide, Length height)
        : base(height)
    {
        TopSide = Dimension.PositiveKept(topSide, nameof(topSide));
        BaseSide = Dimension.NotNegativeKept(baseSide, nameof(baseSide));
    }

    /// <summary>One side of the brim, inside.</summary>
    public Length TopSide { get; }

    /// <summary>One side of the base, inside.</summary>
    public Length BaseSide { get; }

    // The frustum of a pyramid, h / 3 (A1 + A2 + √(A1 A2)); for squares the root is the product of the sides.
    internal override double CubicMetresTo(double heightMetres)
    {
        double lowerMetres = Boundary.Metres(BaseSide);
        double upperMetres = AcrossMetres(TopSide, BaseSide, heightMetres);
        return heightMetres / 3 * (lowerMetres * lowerMetres + lowerMetres * upperMetres + upperMetres * upperMetres);
    }

    internal override double SquareMetresAt(double heightMetres)
    {
        double sideMetres = AcrossMetres(TopSide, BaseSide, heightMetres);
        return sideMetres * sideMetres;
    }

    private protected override Container Inside(double wallMetres, double floorMetres) => new SquareContainer(
        Narrower(TopSide, 2 * wallMetres), Narrower(BaseSide, 2 * wallMetres), Narrower(Height, floorMetres));

    private protected override string Shape(TextStyle style) => Same(TopSide, BaseSide)
        ? $"square, {QuantityText.Of(TopSide, style)} wide"
        : $"square, {QuantityText.Of(TopSide, style)} wide at the top, {QuantityText.Of(BaseSide, style)} at the base";
}
