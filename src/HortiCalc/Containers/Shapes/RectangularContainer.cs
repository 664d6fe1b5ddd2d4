using HortiCalc.Display;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Containers;

/// <summary>A box or trough with straight sides, upright or tapered.</summary>
[TypeFormatterSource(typeof(DisplayFormatters))]
public sealed record RectangularContainer : Container
{
    /// <summary>Makes a rectangular container by its inside dimensions at brim and base.</summary>
    /// <param name="topLength">One side of the brim; greater than zero.</param>
    /// <param name="topWidth">The other side of the brim; greater than zero.</param>
    /// <param name="baseLength">The side of the base below <paramref name="topLength"/>; zero or more.</param>
    /// <param name="baseWidth">The side of the base below <paramref name="topWidth"/>; zero or more.</param>
    /// <param name="height">Straight up from base to brim; greater than zero.</param>
    /// <exception cref="ArgumentOutOfRangeException">A dimension is out of its range.</exception>
    public RectangularContainer(Length topLength, Length topWidth, Length baseLength, Length baseWidth, Length height)
        : base(height)
    {
        TopLength = Dimension.PositiveKept(topLength, nameof(topLength));
        TopWidth = Dimension.PositiveKept(topWidth, nameof(topWidth));
        BaseLength = Dimension.NotNegativeKept(baseLength, nameof(baseLength));
        BaseWidth = Dimension.NotNegativeKept(baseWidth, nameof(baseWidth));
    }

    /// <summary>One side of the brim, inside.</summary>
    public Length TopLength { get; }

    /// <summary>The other side of the brim, inside.</summary>
    public Length TopWidth { get; }

    /// <summary>The side of the base below <see cref="TopLength"/>, inside.</summary>
    public Length BaseLength { get; }

    /// <summary>The side of the base below <see cref="TopWidth"/>, inside.</summary>
    public Length BaseWidth { get; }

    // The prismoid: both sides change evenly with height, so that h / 6 (A1 + 4 Am + A2) is exact. Base and brim need not
    // be of the same proportions, where the pyramid's formula would fail.
    internal override double CubicMetresTo(double heightMetres) => heightMetres / 6
        * (SquareMetresAt(0) + 4 * SquareMetresAt(heightMetres / 2) + SquareMetresAt(heightMetres));

    internal override double SquareMetresAt(double heightMetres) =>
        AcrossMetres(TopLength, BaseLength, heightMetres) * AcrossMetres(TopWidth, BaseWidth, heightMetres);

    private protected override Container Inside(double wallMetres, double floorMetres) => new RectangularContainer(
        Narrower(TopLength, 2 * wallMetres),
        Narrower(TopWidth, 2 * wallMetres),
        Narrower(BaseLength, 2 * wallMetres),
        Narrower(BaseWidth, 2 * wallMetres),
        Narrower(Height, floorMetres));

    private protected override string Shape(TextStyle style)
    {
        string top = $"{QuantityText.Of(TopLength, style)} by {QuantityText.Of(TopWidth, style)}";
        return Same(TopLength, BaseLength) && Same(TopWidth, BaseWidth)
            ? $"rectangular, {top}"
            : $"rectangular, {top} at the top, {QuantityText.Of(BaseLength, style)} by {QuantityText.Of(BaseWidth, style)} at the base";
    }
}
