using System.Globalization;
using HortiCalc.Display;
using HortiCalc.Evidence;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Beds;

/// <summary>A bed between a straight line and a curved edge, measured by its widths at even intervals along the line.</summary>
/// <remarks>
/// A bed that swells on both sides of the line is measured by its whole widths. The perimeter is the line, both ends, and the edge from
/// offset to offset in straight pieces: a curve is a little longer. Where the interval changes, or a last strip is left over from Simpson's
/// rule, each stretch is a bed of its own and <see cref="Bed.Composite"/> joins them.
/// </remarks>
/// <example><code>
/// Length[] widths = [Length.Zero, Length.FromMeters(1.1), Length.FromMeters(1.6), Length.FromMeters(1.2), Length.FromMeters(0.4)];
/// Bed border = Bed.FromOffsets(widths, interval: Length.FromMeters(1), OffsetRule.Simpson);
/// Area ground = border.Area; // 4.27 m²
///
/// Bed narrowing = Bed.FromOffsets([Length.FromMeters(0.4), Length.FromMeters(0.3)], interval: Length.FromMeters(2.5));
/// Bed whole = Bed.Composite([border, narrowing], joins: Length.FromMeters(0.4)); // the last offset of the one, the first of the other
/// </code></example>
[TypeFormatterSource(typeof(DisplayFormatters))]
public sealed record OffsetBed : Bed
{
    /// <summary>Makes a bed by its offsets.</summary>
    /// <param name="offsets">The widths at right angles to the line, in order; zero or more, two of them at least, not all zero.</param>
    /// <param name="interval">How far apart they were taken; greater than zero.</param>
    /// <param name="rule">How the edge is taken to run between them.</param>
    /// <exception cref="ArgumentOutOfRangeException">There are too few offsets, an even number of them for Simpson's rule, all are zero,
    /// or one is negative.</exception>
    public OffsetBed(IReadOnlyList<Length> offsets, Length interval, OffsetRule rule)
    {
        int count = Guard.NotNull(offsets).Count;
        Rule = Guard.Defined(rule);
        Guard.AtLeast(count, rule == OffsetRule.Simpson ? 3 : 2, nameof(offsets));
        if (rule == OffsetRule.Simpson && count % 2 == 0)
            throw Guard.Refused(nameof(offsets), count, "", "an odd number of offsets for Simpson's rule, which takes them three by three");
        Offsets = ValueList<Length>.Of(offsets.Select(offset => Dimension.NotNegativeKept(offset, nameof(offsets))));
        Interval = Dimension.PositiveKept(interval, nameof(interval));
        if (SquareMetres <= 0)
            throw Guard.Refused(nameof(offsets), 0, "m", "offsets that are not all zero");
    }

    /// <summary>The widths at right angles to the line, in order.</summary>
    public IReadOnlyList<Length> Offsets { get; }

    /// <summary>How far apart they were taken.</summary>
    public Length Interval { get; }

    /// <summary>How the edge is taken to run between them.</summary>
    public OffsetRule Rule { get; }

    internal override double SquareMetres
    {
        get
        {
            double sum = 0;
            int last = Offsets.Count - 1;
            for (int i = 0; i <= last; i++)
            {
                double weight = (Rule, i == 0 || i == last, i % 2) switch
                {
                    (OffsetRule.Simpson, true, _) => 1.0 / 3,
                    (OffsetRule.Simpson, _, 1) => 4.0 / 3,
                    (OffsetRule.Simpson, _, _) => 2.0 / 3,
                    (_, true, _) => 0.5,
                    _ => 1,
                };
                sum += weight * Boundary.Metres(Offsets[i]);
            }

            return sum * Boundary.Metres(Interval);
        }
    }

    internal override double PerimeterMetres
    {
        get
        {
            double intervalMetres = Boundary.Metres(Interval);
            double sum = Boundary.Metres(Offsets[0]) + Boundary.Metres(Offsets[^1]) + intervalMetres * (Offsets.Count - 1);
            for (int i = 1; i < Offsets.Count; i++)
                sum += double.Hypot(intervalMetres, Boundary.Metres(Offsets[i]) - Boundary.Metres(Offsets[i - 1]));
            return sum;
        }
    }

    private protected override string Shape(TextStyle style) => string.Create(
        CultureInfo.InvariantCulture,
        $"outline by {Offsets.Count} offsets, {QuantityText.Of(Interval, style)} apart, {(Rule == OffsetRule.Simpson ? "Simpson's rule" : "trapezoid rule")}");
}
