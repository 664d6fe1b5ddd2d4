using HortiCalc.Display;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Beds;

/// <summary>A round bed.</summary>
[TypeFormatterSource(typeof(DisplayFormatters))]
public sealed record CircleBed : Bed
{
    /// <summary>Makes a round bed.</summary>
    /// <param name="diameter">Straight across through the middle; greater than zero.</param>
    /// <exception cref="ArgumentOutOfRangeException">The diameter is not greater than zero.</exception>
    public CircleBed(Length diameter) => Diameter = Dimension.PositiveKept(diameter, nameof(diameter));

    /// <summary>Straight across through the middle.</summary>
    public Length Diameter { get; }

    internal override double SquareMetres
    {
        get
        {
            double diameterMetres = Boundary.Metres(Diameter);
            return Math.PI / 4 * diameterMetres * diameterMetres;
        }
    }

    internal override double PerimeterMetres => Math.PI * Boundary.Metres(Diameter);

    internal override BedOutline? Outline => new(PerimeterMetres, Math.PI, Math.PI);

    private protected override string Shape(TextStyle style) => $"circle {QuantityText.Of(Diameter, style)} across";
}
