using HortiCalc.Display;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Beds;

/// <summary>An L: a rectangle with a smaller rectangle missing at one corner.</summary>
[TypeFormatterSource(typeof(DisplayFormatters))]
public sealed record LShapeBed : Bed
{
    /// <summary>Makes an L.</summary>
    /// <param name="width">One side of the whole rectangle; greater than zero.</param>
    /// <param name="length">The other side of the whole rectangle; greater than zero.</param>
    /// <param name="cutoutWidth">The missing corner along <paramref name="width"/>; greater than zero and shorter than it.</param>
    /// <param name="cutoutLength">The missing corner along <paramref name="length"/>; greater than zero and shorter than
    /// it.</param>
    /// <exception cref="ArgumentOutOfRangeException">A side is not greater than zero, or the missing corner reaches
    /// across.</exception>
    public LShapeBed(Length width, Length length, Length cutoutWidth, Length cutoutLength)
    {
        Width = Dimension.PositiveKept(width, nameof(width));
        Length = Dimension.PositiveKept(length, nameof(length));
        CutoutWidth = Cutout(cutoutWidth, Width, nameof(cutoutWidth));
        CutoutLength = Cutout(cutoutLength, Length, nameof(cutoutLength));
    }

    /// <summary>One side of the whole rectangle.</summary>
    public Length Width { get; }

    /// <summary>The other side of the whole rectangle.</summary>
    public Length Length { get; }

    /// <summary>The missing corner along <see cref="Width"/>.</summary>
    public Length CutoutWidth { get; }

    /// <summary>The missing corner along <see cref="Length"/>.</summary>
    public Length CutoutLength { get; }

    internal override double SquareMetres =>
        Boundary.Metres(Width) * Boundary.Metres(Length) - Boundary.Metres(CutoutWidth) * Boundary.Metres(CutoutLength);

    // Walking into the missing corner is as far as walking round it.
    internal override double PerimeterMetres => 2 * (Boundary.Metres(Width) + Boundary.Metres(Length));

    // Five corners outward and one inward.
    internal override BedOutline? Outline => new(PerimeterMetres, 4, 5 * Math.PI / 4 - 1);

    private protected override string Shape(TextStyle style) =>
        $"L {QuantityText.Of(Width, style)} by {QuantityText.Of(Length, style)}"
        + $" without {QuantityText.Of(CutoutWidth, style)} by {QuantityText.Of(CutoutLength, style)}";

    private static Length Cutout(Length cutout, Length side, string parameter)
    {
        Length kept = Dimension.PositiveKept(cutout, parameter);
        double metres = Boundary.Metres(kept);
        double sideMetres = Boundary.Metres(side);
        return metres < sideMetres
            ? kept
            : throw Guard.Refused(parameter, metres, "m", $"greater than 0 m, less than the side it is cut from, {Guard.Number(sideMetres)} m");
    }
}
