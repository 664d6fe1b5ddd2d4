using HortiCalc.Display;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Beds;

/// <summary>A round bed with a round hole in its middle, and a straight way in to it where it is a keyhole bed.</summary>
/// <remarks>The perimeter is all of the edge: outside, round the hole, and both sides of the way in.</remarks>
[TypeFormatterSource(typeof(DisplayFormatters))]
public sealed record RingBed : Bed
{
    /// <summary>Makes a ring.</summary>
    /// <param name="outerDiameter">Across the whole; greater than the inner diameter.</param>
    /// <param name="innerDiameter">Across the hole; greater than zero.</param>
    /// <param name="entrance">The width of a straight way from outside into the hole; zero where there is none, at most the inner
    /// diameter.</param>
    /// <exception cref="ArgumentOutOfRangeException">A diameter is not greater than zero, the hole is not smaller than the whole, or
    /// the entrance is wider than the hole.</exception>
    public RingBed(Length outerDiameter, Length innerDiameter, Length entrance)
    {
        OuterDiameter = Dimension.PositiveKept(outerDiameter, nameof(outerDiameter));
        InnerDiameter = Dimension.PositiveKept(innerDiameter, nameof(innerDiameter));
        Entrance = Dimension.NotNegativeKept(entrance, nameof(entrance));
        double outerMetres = Boundary.Metres(OuterDiameter);
        double innerMetres = Boundary.Metres(InnerDiameter);
        if (innerMetres >= outerMetres)
        {
            throw Guard.Refused(
                nameof(innerDiameter), innerMetres, "m", $"greater than 0 m, less than the outer diameter, {Guard.Number(outerMetres)} m");
        }

        Guard.Within(Boundary.Metres(Entrance), 0, innerMetres, "m", nameof(entrance));
    }

    /// <summary>Across the whole.</summary>
    public Length OuterDiameter { get; }

    /// <summary>Across the hole.</summary>
    public Length InnerDiameter { get; }

    /// <summary>The width of the straight way in; zero where there is none.</summary>
    public Length Entrance { get; }

    internal override double SquareMetres
    {
        get
        {
            double entranceMetres = Boundary.Metres(Entrance);
            double wayInSquareMetres = entranceMetres > 0
                ? CurveKernels.HalfStripSquareMetres(OuterMetres, entranceMetres) - CurveKernels.HalfStripSquareMetres(InnerMetres, entranceMetres)
                : 0;
            return Math.PI * (OuterMetres - InnerMetres) * (OuterMetres + InnerMetres) - wayInSquareMetres;
        }
    }

    internal override double PerimeterMetres
    {
        get
        {
            double half = Boundary.Metres(Entrance) / 2;
            double circles = 2 * (OuterMetres * (Math.PI - Math.Asin(half / OuterMetres)) + InnerMetres * (Math.PI - Math.Asin(half / InnerMetres)));
            double sides = half > 0
                ? 2 * (Math.Sqrt((OuterMetres - half) * (OuterMetres + half)) - Math.Sqrt((InnerMetres - half) * (InnerMetres + half)))
                : 0;
            return circles + sides;
        }
    }

    internal override BedOutline? Outline => Boundary.Metres(Entrance) == 0 ? new BedOutline(2 * Math.PI * OuterMetres, Math.PI, Math.PI) : null;

    private double OuterMetres => Boundary.Metres(OuterDiameter) / 2;

    private double InnerMetres => Boundary.Metres(InnerDiameter) / 2;

    private protected override string Shape(TextStyle style)
    {
        string entrance = Boundary.Metres(Entrance) > 0 ? $" and an entrance {QuantityText.Of(Entrance, style)} wide" : "";
        return $"ring {QuantityText.Of(OuterDiameter, style)} across with a hole of {QuantityText.Of(InnerDiameter, style)}{entrance}";
    }
}
