using HortiCalc.Display;
using HortiCalc.Units;

namespace HortiCalc.Evidence;

/// <summary>A number that rests on a rule, a table or a regression, together with what stands behind it.</summary>
/// <typeparam name="T">The type of the value: a quantity, a date, a count.</typeparam>
/// <remarks>
/// Immutable; equal when all members are equal. Quantities are brought to one unit when the estimate is made, so that
/// one inch equals 25.4 millimetres. Exact arithmetic does not return estimates but the quantity itself.
/// </remarks>
/// <example><code>
/// Source source = Source.CommonPractice("layer", "a 4-inch layer of organic matter");
/// Method method = new("layer", "customary layer", source, new Domain("garden beds"));
/// Estimate&lt;Length&gt; depth = new(Length.FromInches(4), method);
/// Estimate&lt;Volume&gt; compost = depth.Select(layer =&gt; layer * Area.FromSquareMeters(4.8));
/// Console.WriteLine(compost);   // 488 L; customary layer [common practice: a 4-inch layer of organic matter]
/// </code></example>
[TypeFormatterSource(typeof(DisplayFormatters))]
public sealed record Estimate<T> : IFormattable, IDisplayable
    where T : notnull
{
    /// <summary>Makes an estimate.</summary>
    /// <param name="value">The value.</param>
    /// <param name="method">The method that gave it.</param>
    /// <param name="range">The span that the source supports, or <see langword="null"/> where it supports none.</param>
    /// <param name="adjustments">Rules applied after the method, in order.</param>
    /// <param name="cautions">What to take care of.</param>
    /// <exception cref="ArgumentNullException">The value or the method is missing.</exception>
    public Estimate(
        T value,
        Method method,
        EstimateRange<T>? range = null,
        IReadOnlyList<Method>? adjustments = null,
        IReadOnlyList<Caution>? cautions = null)
    {
        ArgumentNullException.ThrowIfNull(value);
        Value = HouseUnits.Normalise(value);
        Method = Guard.NotNull(method);
        Range = range;
        Adjustments = ValueList<Method>.Of(adjustments);
        Cautions = ValueList<Caution>.Of(cautions);
    }

    /// <summary>The value.</summary>
    public T Value { get; }

    /// <summary>The method that gave it.</summary>
    public Method Method { get; }

    /// <summary>The span that the source supports, or <see langword="null"/> where it supports none.</summary>
    public EstimateRange<T>? Range { get; }

    /// <summary>Rules applied after the method, in order: scaling to another depth, correcting for a material.</summary>
    public IReadOnlyList<Method> Adjustments { get; }

    /// <summary>What to take care of.</summary>
    public IReadOnlyList<Caution> Cautions { get; }

    /// <summary>Carries the estimate to another quantity by exact arithmetic: a rate to the mass for an area, a length to a count.</summary>
    /// <typeparam name="TResult">The type of the new value.</typeparam>
    /// <param name="convert">The arithmetic. It must rise, or fall, over the whole range.</param>
    /// <returns>The new value and range with the same method, adjustments and cautions.</returns>
    /// <exception cref="ArgumentNullException">There is no arithmetic.</exception>
    /// <exception cref="ArgumentException">There is a range, and the new type has no order.</exception>
    public Estimate<TResult> Select<TResult>(Func<T, TResult> convert)
        where TResult : notnull
    {
        Guard.NotNull(convert);
        EstimateRange<TResult>? range = null;
        if (Range is not null)
        {
            TResult low = convert(Range.Low);
            TResult high = convert(Range.High);
            range = Comparer<TResult>.Default.Compare(low, high) <= 0
                ? new EstimateRange<TResult>(low, high, Range.Meaning)
                : new EstimateRange<TResult>(high, low, Range.Meaning);
        }

        return new Estimate<TResult>(convert(Value), Method, range, Adjustments, Cautions);
    }

    /// <summary>Carries the estimate to another quantity by a rule, and records the rule.</summary>
    /// <typeparam name="TResult">The type of the new value.</typeparam>
    /// <param name="rule">The rule, with its source.</param>
    /// <param name="convert">What the rule does. It must rise, or fall, over the whole range.</param>
    /// <returns>The new value and range, with the rule added to the adjustments.</returns>
    /// <exception cref="ArgumentNullException">The rule or its arithmetic is missing.</exception>
    /// <exception cref="ArgumentException">There is a range, and the new type has no order.</exception>
    public Estimate<TResult> AdjustedBy<TResult>(Method rule, Func<T, TResult> convert)
        where TResult : notnull
    {
        Estimate<TResult> result = Select(convert);
        return new Estimate<TResult>(result.Value, Method, result.Range, [.. Adjustments, Guard.NotNull(rule)], Cautions);
    }

    /// <summary>Adds cautions; one that is there already is not repeated.</summary>
    /// <param name="cautions">The cautions to add.</param>
    /// <returns>The same estimate with the cautions added.</returns>
    /// <exception cref="ArgumentNullException">The cautions are missing.</exception>
    public Estimate<T> WithCautions(params IEnumerable<Caution> cautions) =>
        new(Value, Method, Range, Adjustments, [.. Cautions.Concat(Guard.NotNull(cautions)).Distinct()]);

    /// <summary>The estimate in metric units and invariant culture.</summary>
    /// <returns>One line: value, range, method, source, number of cautions.</returns>
    public override string ToString() => ToString(TextStyle.Default);

    /// <summary>The estimate as one line of text.</summary>
    /// <param name="format"><c>M</c> or nothing for metric units, <c>U</c> for US customary ones.</param>
    /// <param name="formatProvider">The culture, or <see langword="null"/> for the invariant one.</param>
    /// <returns>One line: value, range, method, source, number of cautions.</returns>
    /// <exception cref="FormatException">The format is another one.</exception>
    public string ToString(string? format, IFormatProvider? formatProvider) => ToString(TextStyle.Parse(format, formatProvider));

    DisplayBlock IDisplayable.ToDisplay(TextStyle style) => new(QuantityText.Of(Value, style))
    {
        Rows =
        [
            .. Range is null ? (DisplayRow[])[] : [new DisplayRow("range", $"{Range.ToString(style)} ({Range.Meaning})")],
            new DisplayRow("method", Method.Name),
            .. Adjustments.Select(rule => new DisplayRow("then", rule.Name)),
            .. Cautions.Select(caution => new DisplayRow(caution.LevelWord, caution.Sentence)),
            new DisplayRow("source", Method.Source.ToString()),
        ],
    };

    private string ToString(TextStyle style)
    {
        string range = Range is null ? "" : $" ({Range.ToString(style)}, {Range.Meaning})";
        string rules = string.Concat(Adjustments.Select(rule => $", {rule.Name}"));
        string cautions = Cautions.Count switch
        {
            0 => "",
            1 => "; 1 caution",
            int count => $"; {count} cautions",
        };
        return $"{QuantityText.Of(Value, style)}{range}; {Method.Name}{rules} [{Method.Source}]{cautions}";
    }
}
