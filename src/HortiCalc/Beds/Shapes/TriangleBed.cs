using HortiCalc.Display;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Beds;

/// <summary>A bed with three straight sides.</summary>
/// <example><code>
/// Bed bySides = Bed.Triangle(Length.FromMeters(3), Length.FromMeters(4), Length.FromMeters(5));
/// Bed byHeight = Bed.TriangleOverBase(Length.FromFeet(10), height: Length.FromFeet(20));
/// Area ground = byHeight.Area; // 100 sq ft
/// </code></example>
[TypeFormatterSource(typeof(DisplayFormatters))]
public sealed record TriangleBed : Bed
{
    // Flatter ones lose half of the digits of their area between height and sides.
    private const double FlattestShare = 1e-5;

    /// <summary>Makes a bed with three straight sides, by their lengths, in any order.</summary>
    /// <param name="a">One side; greater than zero.</param>
    /// <param name="b">Another side; greater than zero.</param>
    /// <param name="c">The third side; greater than zero.</param>
    /// <exception cref="ArgumentOutOfRangeException">A side is not greater than zero, or not shorter than the other two
    /// together.</exception>
    public TriangleBed(Length a, Length b, Length c)
    {
        A = Dimension.PositiveKept(a, nameof(a));
        B = Dimension.PositiveKept(b, nameof(b));
        C = Dimension.PositiveKept(c, nameof(c));
        double aMetres = Boundary.Metres(A);
        double bMetres = Boundary.Metres(B);
        double cMetres = Boundary.Metres(C);
        Closes(aMetres, bMetres, cMetres, nameof(a));
        Closes(bMetres, cMetres, aMetres, nameof(b));
        Closes(cMetres, aMetres, bMetres, nameof(c));
    }

    /// <summary>One side.</summary>
    public Length A { get; }

    /// <summary>Another side.</summary>
    public Length B { get; }

    /// <summary>The third side.</summary>
    public Length C { get; }

    internal override double SquareMetres
    {
        get
        {
            Span<double> sides = [Boundary.Metres(A), Boundary.Metres(B), Boundary.Metres(C)];
            sides.Sort();
            return AreaSquareMetres(longMetres: sides[2], middleMetres: sides[1], shortMetres: sides[0]);
        }
    }

    internal override double PerimeterMetres => Boundary.Metres(A) + Boundary.Metres(B) + Boundary.Metres(C);

    // The sharp border keeps the shape: half the perimeter over the radius of the inscribed circle.
    internal override BedOutline? Outline => new(PerimeterMetres, PerimeterMetres * PerimeterMetres / 4 / SquareMetres, Math.PI);

    private protected override string Shape(TextStyle style) =>
        $"triangle with sides {QuantityText.Of(A, style)}, {QuantityText.Of(B, style)} and {QuantityText.Of(C, style)}";

    internal static TriangleBed OverBase(Length baseSide, Length height, Length? foot)
    {
        double baseMetres = Dimension.Positive(baseSide, nameof(baseSide));
        double heightMetres = Dimension.Positive(height, nameof(height));
        double footMetres = foot is Length along
            ? Guard.Within(Boundary.Metres(along), -Dimension.LargestMetres, Dimension.LargestMetres, "m", nameof(foot))
            : baseMetres / 2;
        double beyondMetres = baseMetres - footMetres;
        Guard.AtLeast(heightMetres, FlattestShare * Math.Max(baseMetres, Math.Max(Math.Abs(footMetres), Math.Abs(beyondMetres))), "m", nameof(height));
        return new TriangleBed(
            baseSide,
            Length.FromMeters(double.Hypot(footMetres, heightMetres)),
            Length.FromMeters(double.Hypot(beyondMetres, heightMetres)));
    }

    // Heron's formula with the sides ordered and the brackets as W. Kahan set them ("Miscalculating Area and Angles of a
    // Needle-like Triangle", University of California, Berkeley): the usual form loses every digit on a needle.
    private static double AreaSquareMetres(double longMetres, double middleMetres, double shortMetres) =>
        Math.Sqrt(Math.Max(
            0,
            (longMetres + (middleMetres + shortMetres))
            * (shortMetres - (longMetres - middleMetres))
            * (shortMetres + (longMetres - middleMetres))
            * (longMetres + (middleMetres - shortMetres)))) / 4;

    private static void Closes(double sideMetres, double secondMetres, double thirdMetres, string parameter)
    {
        // A side that is shorter by no more than the noise of binary fractions closes flat: 0.1 and 0.2 to 0.3.
        if (sideMetres >= (secondMetres + thirdMetres) * (1 - 1e-12))
        {
            throw Guard.Refused(
                parameter, sideMetres, "m", $"shorter than the other two sides together, {Guard.Number(secondMetres + thirdMetres)} m");
        }
    }
}
