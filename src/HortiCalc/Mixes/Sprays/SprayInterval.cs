using HortiCalc.Evidence;
using HortiCalc.Units;

namespace HortiCalc.Mixes;

/// <summary>Days that two sprays must be apart, in either order, from the laxest to the strictest source.</summary>
public sealed record SprayInterval
{
    /// <summary>Describes an interval.</summary>
    /// <param name="first">One spray.</param>
    /// <param name="second">The other.</param>
    /// <param name="days">The days of the source named; 1 or more.</param>
    /// <param name="strictestDays">The days of the strictest source; not fewer.</param>
    /// <param name="source">The source of <paramref name="days"/>.</param>
    /// <param name="strictestSource">The source of <paramref name="strictestDays"/>; the same where there is one.</param>
    /// <exception cref="ArgumentOutOfRangeException">A number of days is outside what is allowed.</exception>
    public SprayInterval(IngredientClass first, IngredientClass second, int days, int strictestDays, Source source, Source strictestSource)
    {
        First = Guard.Defined(first);
        Second = Guard.Defined(second);
        Days = Guard.AtLeast(days, 1);
        StrictestDays = Guard.AtLeast(strictestDays, days);
        Source = Guard.NotNull(source);
        StrictestSource = Guard.NotNull(strictestSource);
    }

    /// <summary>One spray.</summary>
    public IngredientClass First { get; }

    /// <summary>The other.</summary>
    public IngredientClass Second { get; }

    /// <summary>The days of the source named.</summary>
    public int Days { get; }

    /// <summary>The days of the strictest source.</summary>
    public int StrictestDays { get; }

    /// <summary>The source of <see cref="Days"/>.</summary>
    public Source Source { get; }

    /// <summary>The source of <see cref="StrictestDays"/>.</summary>
    public Source StrictestSource { get; }

    /// <summary>The first day on which the other may be sprayed.</summary>
    /// <param name="last">The day of the last spray of either.</param>
    /// <param name="strictest">Whether to keep to the strictest source.</param>
    /// <returns>The day.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The day is too late for the calendar.</exception>
    public DateOnly EarliestAfter(DateOnly last, bool strictest) => last.AddDays(strictest ? StrictestDays : Days);

    /// <summary>The interval.</summary>
    /// <returns>For instance <c>Oil and Sulfur: 14 days apart, 30 by the strictest source</c>.</returns>
    public override string ToString() =>
        $"{First} and {Second}: {Guard.Number(Days)} days apart, {Guard.Number(StrictestDays)} by the strictest source [{Source}]";
}
