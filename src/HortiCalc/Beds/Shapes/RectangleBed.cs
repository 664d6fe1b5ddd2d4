using HortiCalc.Display;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Beds;

/// <summary>A bed with four right angles.</summary>
[TypeFormatterSource(typeof(DisplayFormatters))]
public sealed record RectangleBed : Bed
{
    /// <summary>Makes a bed with four right angles.</summary>
    /// <param name="width">One side; greater than zero.</param>
    /// <param name="length">The other side; greater than zero.</param>
    /// <exception cref="ArgumentOutOfRangeException">A side is not greater than zero.</exception>
    public RectangleBed(Length width, Length length)
    {
        Width = Dimension.PositiveKept(width, nameof(width));
        Length = Dimension.PositiveKept(length, nameof(length));
    }

    /// <summary>One side.</summary>
    public Length Width { get; }

    /// <summary>The other side.</summary>
    public Length Length { get; }

    internal override double SquareMetres => Boundary.Metres(Width) * Boundary.Metres(Length);

    internal override double PerimeterMetres => 2 * (Boundary.Metres(Width) + Boundary.Metres(Length));

    internal override BedOutline? Outline => new(PerimeterMetres, 4, Math.PI);

    private protected override string Shape(TextStyle style) =>
        $"rectangle {QuantityText.Of(Width, style)} by {QuantityText.Of(Length, style)}";
}
