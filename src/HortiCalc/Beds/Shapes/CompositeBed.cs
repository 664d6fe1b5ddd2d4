using System.Globalization;
using HortiCalc.Display;
using HortiCalc.Evidence;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Beds;

/// <summary>Shapes laid side by side without overlap, as one bed.</summary>
/// <remarks>
/// The ground is the sum of the parts; the outline is what is left of their outlines when each line along which two parts meet is taken
/// away twice. Joins so long that no outline of the rest could enclose the ground are refused: a circle encloses the most.
/// </remarks>
/// <example><code>
/// // A T: a bed 3 m long with another at right angles against its middle.
/// Bed bed = Bed.Composite(
///     [Bed.Rectangle(Length.FromMeters(1), Length.FromMeters(3)), Bed.Rectangle(Length.FromMeters(1), Length.FromMeters(2))],
///     joins: Length.FromMeters(1));
/// Area ground = bed.Area; // 5 m²
/// Length edging = bed.Perimeter; // 12 m
/// </code></example>
[TypeFormatterSource(typeof(DisplayFormatters))]
public sealed record CompositeBed : Bed
{
    /// <summary>Lays shapes side by side.</summary>
    /// <param name="parts">Two shapes or more.</param>
    /// <param name="joins">The length of all the lines along which parts meet, each counted once.</param>
    /// <exception cref="ArgumentOutOfRangeException">There are fewer than two parts, or the joins are negative or too long.</exception>
    public CompositeBed(IReadOnlyList<Bed> parts, Length joins)
    {
        Guard.AtLeast(Guard.NotNull(parts).Count, 2, nameof(parts));
        Parts = ValueList<Bed>.Of(parts);
        Joins = Dimension.NotNegativeKept(joins, nameof(joins));
        double leastMetres = 2 * Math.Sqrt(Math.PI * SquareMetres);
        double mostMetres = (Parts.Sum(part => part.PerimeterMetres) - leastMetres) / 2;
        if (Boundary.Metres(Joins) > mostMetres * (1 + 1e-12))
        {
            throw Guard.Refused(
                nameof(joins), Boundary.Metres(Joins), "m", $"up to {Guard.Number(mostMetres)} m, where the outline left is a circle round the whole area");
        }
    }

    /// <summary>The shapes.</summary>
    public IReadOnlyList<Bed> Parts { get; }

    /// <summary>The length of all the lines along which parts meet, each counted once.</summary>
    public Length Joins { get; }

    internal override double SquareMetres => Parts.Sum(part => part.SquareMetres);

    internal override double PerimeterMetres => Parts.Sum(part => part.PerimeterMetres) - 2 * Boundary.Metres(Joins);

    private protected override string Shape(TextStyle style) => string.Create(
        CultureInfo.InvariantCulture, $"{Parts.Count} shapes side by side: {string.Join(" + ", Parts.Select(part => part.Describe(style)))}");
}
