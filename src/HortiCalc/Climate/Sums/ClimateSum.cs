using HortiCalc.Display;
using HortiCalc.Evidence;
using HortiCalc.Units;

namespace HortiCalc.Climate;

/// <summary>What a run of days adds up to by a published rule: heat units, degree-days, a count of days.</summary>
/// <typeparam name="T">The type of the value: a quantity, a plain number of units, or a count.</typeparam>
/// <remarks>
/// Immutable; equal when all members are equal. Every sum of this room has this shape, so that none is shown without the days it covers,
/// the days it lacks, and the rule it was counted by.
/// </remarks>
/// <example><code>
/// DailyTemperatures days = DailyTemperatures.Create(
///     new DateOnly(2024, 7, 1), [15, 17, 14], [30, 32, 27], TemperatureUnit.DegreeCelsius);
/// ClimateSum&lt;double&gt; heat = CornHeatUnits.Sum(
///     days, new DateSpan(days.Start, days.End), CornHeatUnitMethod.Ontario);
/// Console.WriteLine(heat); // 77.1 corn heat units from 2024-07-01 to 2024-07-03, 0 of 3 days missing; ...
/// </code></example>
[TypeFormatterSource(typeof(DisplayFormatters))]
public sealed record ClimateSum<T> : IFormattable, IDisplayable
    where T : notnull
{
    /// <summary>Describes a sum.</summary>
    /// <param name="value">The sum.</param>
    /// <param name="unit">What the value counts, for instance <c>corn heat units</c>; empty where the value carries its unit.</param>
    /// <param name="from">The first day counted.</param>
    /// <param name="to">The last day counted, not before the first.</param>
    /// <param name="missing">The days of the span that the record lacks, in order, whether they were filled in or left out.</param>
    /// <param name="leftOutCount">How many of the missing days were left out.</param>
    /// <param name="method">The rule that counted, with its source.</param>
    /// <param name="cautions">What to take care of.</param>
    /// <exception cref="ArgumentNullException">The value, the unit, the missing days or the method is missing.</exception>
    /// <exception cref="ArgumentException">A missing day is outside the span, or they are not in order.</exception>
    /// <exception cref="ArgumentOutOfRangeException">
    /// The last day is before the first, or more or fewer days are left out than can be.
    /// </exception>
    public ClimateSum(
        T value,
        string unit,
        DateOnly from,
        DateOnly to,
        IReadOnlyList<DateOnly> missing,
        int leftOutCount,
        Method method,
        IReadOnlyList<Caution>? cautions = null)
    {
        ArgumentNullException.ThrowIfNull(value);
        Value = HouseUnits.Normalise(value);
        Unit = Guard.NotNull(unit);
        DateSpan span = new(from, to);
        From = span.From;
        To = span.To;
        Missing = ValueList<DateOnly>.Of(Guard.NotNull(missing));
        DateOnly? before = null;
        foreach (DateOnly date in Missing)
        {
            if (date < from || date > to || date <= before)
                throw new ArgumentException($"missing held {AirTemperature.Text(date)}; allowed: days from {span}, in order.", nameof(missing));
            before = date;
        }

        LeftOutCount = (int)Guard.Within(leftOutCount, 0, Missing.Count, "", nameof(leftOutCount));
        Method = Guard.NotNull(method);
        Cautions = ValueList<Caution>.Of(cautions);
    }

    /// <summary>The sum.</summary>
    public T Value { get; }

    /// <summary>What the value counts; empty where the value carries its unit.</summary>
    public string Unit { get; }

    /// <summary>The first day counted.</summary>
    public DateOnly From { get; }

    /// <summary>The last day counted.</summary>
    public DateOnly To { get; }

    /// <summary>The days from the first to the last that the record lacks, in order, whether they were filled in or left out.</summary>
    public IReadOnlyList<DateOnly> Missing { get; }

    /// <summary>How many of the missing days were left out and add nothing.</summary>
    public int LeftOutCount { get; }

    /// <summary>The rule that counted, with its source.</summary>
    public Method Method { get; }

    /// <summary>What to take care of.</summary>
    public IReadOnlyList<Caution> Cautions { get; }

    /// <summary>The sum in metric units and invariant culture.</summary>
    /// <returns>One line: value, first and last day, missing days, rule, source, number of cautions.</returns>
    public override string ToString() => ToString(TextStyle.Default);

    /// <summary>The sum as one line of text.</summary>
    /// <param name="format"><c>M</c> or nothing for metric units, <c>U</c> for US customary ones.</param>
    /// <param name="formatProvider">The culture, or <see langword="null"/> for the invariant one.</param>
    /// <returns>One line: value, first and last day, missing days, rule, source, number of cautions.</returns>
    /// <exception cref="FormatException">The format is another one.</exception>
    public string ToString(string? format, IFormatProvider? formatProvider) => ToString(TextStyle.Parse(format, formatProvider));

    DisplayBlock IDisplayable.ToDisplay(TextStyle style) => new(ValueWords(style))
    {
        Rows =
        [
            new DisplayRow("days", SpanWords),
            new DisplayRow("missing", MissingWords(style)),
            new DisplayRow("method", Method.Name),
            .. Cautions.Select(caution => new DisplayRow(caution.LevelWord, caution.Sentence)),
            new DisplayRow("source", Method.Source.ToString()),
        ],
    };

    private string SpanWords => $"{AirTemperature.Text(From)} to {AirTemperature.Text(To)}";

    private string ToString(TextStyle style) =>
        $"{ValueWords(style)} from {SpanWords}, {MissingWords(style)} missing; {Method}"
        + (Cautions.Count == 0 ? "" : Cautions.Count == 1 ? "; 1 caution" : $"; {QuantityText.Of(Cautions.Count, style)} cautions");

    private string ValueWords(TextStyle style) => Unit.Length == 0 ? QuantityText.Of(Value, style) : $"{QuantityText.Of(Value, style)} {Unit}";

    private string MissingWords(TextStyle style)
    {
        string count = $"{QuantityText.Of(Missing.Count, style)} of {QuantityText.Of(To.DayNumber - From.DayNumber + 1, style)} days";
        return Missing.Count == 0 || LeftOutCount == Missing.Count ? count
            : $"{count} ({QuantityText.Of(Missing.Count - LeftOutCount, style)} filled in)";
    }
}
