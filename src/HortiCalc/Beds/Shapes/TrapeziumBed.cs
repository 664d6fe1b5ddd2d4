using HortiCalc.Display;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Beds;

/// <summary>A bed with two parallel sides.</summary>
/// <example><code>
/// Bed bed = Bed.Trapezium(Length.FromMeters(3), Length.FromMeters(2), distance: Length.FromMeters(1.2));
/// Area ground = bed.Area; // 3 m²
/// </code></example>
[TypeFormatterSource(typeof(DisplayFormatters))]
public sealed record TrapeziumBed : Bed
{
    /// <summary>Makes a bed with two parallel sides.</summary>
    /// <param name="firstSide">One of the parallel sides; greater than zero.</param>
    /// <param name="secondSide">The other; greater than zero.</param>
    /// <param name="distance">How far apart they are, at right angles; greater than zero.</param>
    /// <param name="shift">How far the start of the second side lies along from the start of the first; negative the other way;
    /// <see langword="null"/> where the bed is the same on both ends.</param>
    /// <exception cref="ArgumentOutOfRangeException">A side or the distance is not greater than zero, or the shift is beyond a million
    /// metres.</exception>
    public TrapeziumBed(Length firstSide, Length secondSide, Length distance, Length? shift = null)
    {
        FirstSide = Dimension.PositiveKept(firstSide, nameof(firstSide));
        SecondSide = Dimension.PositiveKept(secondSide, nameof(secondSide));
        Distance = Dimension.PositiveKept(distance, nameof(distance));
        if (shift is Length along)
        {
            Guard.Within(Boundary.Metres(along), -Dimension.LargestMetres, Dimension.LargestMetres, "m", nameof(shift));
            Shift = HouseUnits.Normalise(along);
        }
    }

    /// <summary>One of the parallel sides.</summary>
    public Length FirstSide { get; }

    /// <summary>The other.</summary>
    public Length SecondSide { get; }

    /// <summary>How far apart they are, at right angles.</summary>
    public Length Distance { get; }

    /// <summary>How far the start of the second side lies along from the start of the first; <see langword="null"/> where the bed is the
    /// same on both ends.</summary>
    public Length? Shift { get; }

    internal override double SquareMetres => (Boundary.Metres(FirstSide) + Boundary.Metres(SecondSide)) / 2 * Boundary.Metres(Distance);

    internal override double PerimeterMetres
    {
        get
        {
            double shiftMetres = ShiftMetres;
            double overhangMetres = shiftMetres + Boundary.Metres(SecondSide) - Boundary.Metres(FirstSide);
            return Boundary.Metres(FirstSide)
                + Boundary.Metres(SecondSide)
                + double.Hypot(shiftMetres, Boundary.Metres(Distance))
                + double.Hypot(overhangMetres, Boundary.Metres(Distance));
        }
    }

    internal override BedOutline? Outline => PolygonKernels.Outline(
        [0, Boundary.Metres(FirstSide), ShiftMetres + Boundary.Metres(SecondSide), ShiftMetres],
        [0, 0, Boundary.Metres(Distance), Boundary.Metres(Distance)]);

    private double ShiftMetres => Shift is Length along
        ? Boundary.Metres(along)
        : (Boundary.Metres(FirstSide) - Boundary.Metres(SecondSide)) / 2;

    private protected override string Shape(TextStyle style) =>
        $"trapezium with sides {QuantityText.Of(FirstSide, style)} and {QuantityText.Of(SecondSide, style)}, {QuantityText.Of(Distance, style)} apart";
}
