using System.Globalization;
using HortiCalc.Display;
using HortiCalc.Evidence;
using HortiCalc.Units;

namespace HortiCalc.Beds;

/// <summary>A bed of any outline with straight sides.</summary>
/// <remarks>
/// Equal when the corners are the same in the same order; the same outline begun at another corner is another record with
/// the same area and perimeter.
/// </remarks>
/// <example><code>
/// static BedCorner At(double x, double y) =&gt; new(Length.FromMeters(x), Length.FromMeters(y));
/// Bed bed = Bed.Polygon(At(0, 0), At(4, 0), At(4, 1), At(1, 3));
/// Area ground = bed.Area; // 7.5 m²
/// </code></example>
[TypeFormatterSource(typeof(DisplayFormatters))]
public sealed record PolygonBed : Bed
{
    private readonly double squareMetres;
    private readonly double perimeterMetres;

    /// <summary>Makes a bed by its corners, in the order in which one walks round it.</summary>
    /// <remarks>
    /// Every side is compared with every other, so that the time grows with the square of the number of corners.
    /// </remarks>
    /// <param name="corners">Three corners or more, either way round, the first not repeated at the end.</param>
    /// <exception cref="ArgumentOutOfRangeException">There are fewer than three corners.</exception>
    /// <exception cref="ArgumentException">Two corners coincide, or the outline crosses or touches itself.</exception>
    public PolygonBed(IReadOnlyList<BedCorner> corners)
    {
        Guard.AtLeast(Guard.NotNull(corners).Count, 3, nameof(corners));
        Corners = ValueList<BedCorner>.Of(corners);
        double[] xMetres = XMetres();
        double[] yMetres = YMetres();
        if (PolygonKernels.FirstCoincidence(xMetres, yMetres) is (int first, int second))
        {
            throw Refused($"corners {first + 1} and {second + 1} are the same point, {Corners[first]}; allowed: corners that all differ", nameof(corners));
        }

        if (PolygonKernels.FirstContact(xMetres, yMetres) is (int side, int other))
        {
            throw Refused(
                $"the side from {Side(side)} crosses or touches the side from {Side(other)}; allowed: an outline that meets itself nowhere",
                nameof(corners));
        }

        squareMetres = Math.Abs(PolygonKernels.SignedSquareMetres(xMetres, yMetres));
        perimeterMetres = PolygonKernels.PerimeterMetres(xMetres, yMetres);

        string Side(int from) => $"{Corners[from]} to {Corners[(from + 1) % Corners.Count]}";
    }

    /// <summary>The corners, in the order given.</summary>
    public IReadOnlyList<BedCorner> Corners { get; }

    internal override double SquareMetres => squareMetres;

    internal override double PerimeterMetres => perimeterMetres;

    internal override BedOutline? Outline => PolygonKernels.Outline(XMetres(), YMetres());

    internal override bool BorderMeetsItself(double widthMetres) => PolygonKernels.BorderMeetsItself(XMetres(), YMetres(), widthMetres);

    private protected override string Shape(TextStyle style) =>
        string.Create(CultureInfo.InvariantCulture, $"polygon with {Corners.Count} corners");

    private double[] XMetres() => [.. Corners.Select(corner => Boundary.Metres(corner.X))];

    private double[] YMetres() => [.. Corners.Select(corner => Boundary.Metres(corner.Y))];

    private static ArgumentException Refused(string what, string parameter) => new(what + ".", parameter);
}
