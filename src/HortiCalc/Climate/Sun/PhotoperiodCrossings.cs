using HortiCalc.Display;
using HortiCalc.Evidence;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Climate;

/// <summary>When, in a span of days, the days become longer and shorter than a given length.</summary>
/// <remarks>
/// Immutable; equal when all members are equal. Without a crossing either every day is long enough
/// (<see cref="DaysReached"/> is the whole span) or none is (it is 0).
/// </remarks>
public sealed record PhotoperiodCrossings : IFormattable
{
    /// <summary>Describes the crossings in a span.</summary>
    /// <param name="dayLength">The length that is passed, from 0 to 24 h.</param>
    /// <param name="span">The days that were looked at.</param>
    /// <param name="crossings">The crossings, in order.</param>
    /// <param name="daysReached">How many days of the span are at least as long.</param>
    /// <exception cref="ArgumentNullException">The crossings are <see langword="null"/>.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The length is no part of a day, or there are more days than the span has.</exception>
    public PhotoperiodCrossings(Duration dayLength, DateSpan span, IReadOnlyList<PhotoperiodCrossing> crossings, int daysReached)
    {
        Guard.Within(Boundary.Days(dayLength) * 24, 0, 24, "h", nameof(dayLength));
        Guard.Within(daysReached, 0, span.Count, "days", nameof(daysReached));
        DayLength = HouseUnits.Normalise(dayLength);
        Span = span;
        Crossings = ValueList<PhotoperiodCrossing>.Of(Guard.NotNull(crossings));
        DaysReached = daysReached;
    }

    /// <summary>The length that is passed.</summary>
    public Duration DayLength { get; }

    /// <summary>The days that were looked at.</summary>
    public DateSpan Span { get; }

    /// <summary>The crossings, in order; empty where there is none.</summary>
    public IReadOnlyList<PhotoperiodCrossing> Crossings { get; }

    /// <summary>How many days of the span are at least as long.</summary>
    public int DaysReached { get; }

    /// <summary>The crossings in invariant culture.</summary>
    /// <returns>One line.</returns>
    public override string ToString() => ToString(TextStyle.Default);

    /// <summary>The crossings as one line of text.</summary>
    /// <param name="format"><c>M</c>, <c>U</c> or nothing: hours are the same in every country.</param>
    /// <param name="formatProvider">The culture, or <see langword="null"/> for the invariant one.</param>
    /// <returns>The length and the dates.</returns>
    /// <exception cref="FormatException">The format is another one.</exception>
    public string ToString(string? format, IFormatProvider? formatProvider) => ToString(TextStyle.Parse(format, formatProvider));

    private string ToString(TextStyle style)
    {
        string dates = Crossings.Count > 0 ? string.Join("; ", Crossings)
            : DaysReached > 0 ? $"every day from {Span} is as long"
            : $"no day from {Span} is as long";
        return $"{QuantityText.Of(DayLength, style)}: {dates}";
    }
}
