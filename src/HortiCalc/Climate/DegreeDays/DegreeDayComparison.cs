using HortiCalc.Display;
using HortiCalc.Evidence;
using HortiCalc.Units;

namespace HortiCalc.Climate;

/// <summary>The same days counted by every method and cutoff: how much the choice of the method matters at a site.</summary>
/// <remarks>Immutable; equal when the days, the thresholds and every total are.</remarks>
[TypeFormatterSource(typeof(DisplayFormatters))]
public sealed record DegreeDayComparison : IFormattable, IDisplayable
{
    /// <summary>Holds the totals.</summary>
    /// <param name="start">The first day counted.</param>
    /// <param name="end">The last day counted.</param>
    /// <param name="thresholds">The temperatures between which development was counted.</param>
    /// <param name="totals">One total for each method and cutoff; one or more.</param>
    /// <exception cref="ArgumentNullException">The thresholds or the totals are <see langword="null"/>.</exception>
    /// <exception cref="ArgumentException">There is no total.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The end is before the start.</exception>
    public DegreeDayComparison(DateOnly start, DateOnly end, DegreeDayThresholds thresholds, IReadOnlyList<DegreeDayTotal> totals)
    {
        if (end < start)
            throw new ArgumentOutOfRangeException(nameof(end), $"end was {AirTemperature.Text(end)}; allowed: not before {AirTemperature.Text(start)}.");
        Start = start;
        End = end;
        Thresholds = Guard.NotNull(thresholds);
        Totals = ValueList<DegreeDayTotal>.Of(Guard.NotNull(totals));
        if (Totals.Count == 0)
            throw new ArgumentException("totals held none; allowed: 1 or more.", nameof(totals));
    }

    /// <summary>The first day counted.</summary>
    public DateOnly Start { get; }

    /// <summary>The last day counted.</summary>
    public DateOnly End { get; }

    /// <summary>The temperatures between which development was counted.</summary>
    public DegreeDayThresholds Thresholds { get; }

    /// <summary>One total for each method and cutoff.</summary>
    public IReadOnlyList<DegreeDayTotal> Totals { get; }

    /// <summary>The smallest of the totals.</summary>
    /// <returns>The first of them, where several are the same.</returns>
    public DegreeDayTotal Least() => Totals.MinBy(total => total.Sum.CelsiusDays)!;

    /// <summary>The largest of the totals.</summary>
    /// <returns>The first of them, where several are the same.</returns>
    public DegreeDayTotal Greatest() => Totals.MaxBy(total => total.Sum.CelsiusDays)!;

    /// <summary>The total of a method with a cutoff.</summary>
    /// <param name="method">The method.</param>
    /// <param name="cutoff">The cutoff.</param>
    /// <returns>The sum, or <see langword="null"/> where the method is not defined for the cutoff, or the cutoff was left out for want of an upper threshold.</returns>
    /// <exception cref="ArgumentNullException">The method is <see langword="null"/>.</exception>
    public ThermalTime? TotalBy(DegreeDayMethod method, UpperCutoff cutoff)
    {
        Guard.NotNull(method);
        return Totals.FirstOrDefault(total => total.Method == method && total.Cutoff == cutoff)?.Sum;
    }

    /// <summary>The comparison in metric units and invariant culture.</summary>
    /// <returns>One line: the days, the thresholds, the smallest and the largest total.</returns>
    public override string ToString() => ToString(TextStyle.Default);

    /// <summary>The comparison as one line of text.</summary>
    /// <param name="format"><c>M</c> or nothing for metric units, <c>U</c> for US customary ones.</param>
    /// <param name="formatProvider">The culture, or <see langword="null"/> for the invariant one.</param>
    /// <returns>One line: the days, the thresholds, the smallest and the largest total.</returns>
    /// <exception cref="FormatException">The format is another one.</exception>
    public string ToString(string? format, IFormatProvider? formatProvider) => ToString(TextStyle.Parse(format, formatProvider));

    DisplayBlock IDisplayable.ToDisplay(TextStyle style) => new(Heading(style))
    {
        Rows = [.. Totals.Select(total => new DisplayRow(total.Label, QuantityText.Of(total.Sum, style)))],
    };

    private string Heading(TextStyle style) =>
        $"Degree days from {AirTemperature.Text(Start)} to {AirTemperature.Text(End)}, {Thresholds.ToString(style)}";

    private string ToString(TextStyle style)
    {
        DegreeDayTotal least = Least();
        DegreeDayTotal greatest = Greatest();
        return $"{Heading(style)}: from {QuantityText.Of(least.Sum, style)} ({least.Label}) to {QuantityText.Of(greatest.Sum, style)} ({greatest.Label})";
    }
}
