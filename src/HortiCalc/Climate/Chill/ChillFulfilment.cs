using HortiCalc.Display;
using HortiCalc.Evidence;
using HortiCalc.Units;

namespace HortiCalc.Climate;

/// <summary>Whether, and when, a count of chill meets a requirement.</summary>
/// <remarks>Immutable; equal when all members are equal.</remarks>
[TypeFormatterSource(typeof(DisplayFormatters))]
public sealed record ChillFulfilment : IFormattable, IDisplayable
{
    /// <summary>Describes whether a count meets a requirement.</summary>
    /// <param name="requirement">The requirement.</param>
    /// <param name="total">The whole count.</param>
    /// <param name="reached">
    /// The hour at which the low end of the requirement is reached, or <see langword="null"/> where it is not.
    /// </param>
    /// <param name="highReached">
    /// The hour at which the high end is reached, or <see langword="null"/> where it is not or there is none.
    /// </param>
    /// <param name="cautions">What to take care of.</param>
    /// <exception cref="ArgumentNullException">The requirement is <see langword="null"/>.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The total is not finite.</exception>
    public ChillFulfilment(
        ChillRequirement requirement, double total, DateTime? reached, DateTime? highReached, IReadOnlyList<Caution> cautions)
    {
        Requirement = Guard.NotNull(requirement);
        Total = Guard.Finite(total, HourlyAccumulation.Words(requirement.Model.Unit));
        Reached = reached;
        HighReached = highReached;
        Cautions = ValueList<Caution>.Of(cautions);
    }

    /// <summary>The requirement.</summary>
    public ChillRequirement Requirement { get; }

    /// <summary>The whole count.</summary>
    public double Total { get; }

    /// <summary>The hour at which the low end of the requirement is reached, or <see langword="null"/> where it is not.</summary>
    public DateTime? Reached { get; }

    /// <summary>The hour at which the high end is reached, or <see langword="null"/> where it is not or there is none.</summary>
    public DateTime? HighReached { get; }

    /// <summary>What to take care of.</summary>
    public IReadOnlyList<Caution> Cautions { get; }

    /// <summary>The answer in invariant culture.</summary>
    /// <returns>One line.</returns>
    public override string ToString() => ToString(TextStyle.Default);

    /// <summary>The answer as one line of text.</summary>
    /// <param name="format"><c>M</c>, <c>U</c> or nothing: there is no unit to choose.</param>
    /// <param name="formatProvider">The culture, or <see langword="null"/> for the invariant one.</param>
    /// <returns>The requirement, when it is met, and the whole count.</returns>
    /// <exception cref="FormatException">The format is another one.</exception>
    public string ToString(string? format, IFormatProvider? formatProvider) => ToString(TextStyle.Parse(format, formatProvider));

    DisplayBlock IDisplayable.ToDisplay(TextStyle style) => new(Requirement.ToString())
    {
        Rows =
        [
            new DisplayRow("met", Time(Reached)),
            .. Requirement.High is double high && high > Requirement.Low ? [new DisplayRow("high end met", Time(HighReached))] : (DisplayRow[])[],
            new DisplayRow("counted", QuantityText.Number(Total, style)),
            .. Cautions.Select(caution => new DisplayRow(caution.LevelWord, caution.Sentence)),
            new DisplayRow("source", Requirement.Source.ToString()),
        ],
    };

    private static string Time(DateTime? hour) => hour is DateTime known ? HourRange.Text(known) : "not in the record";

    private string ToString(TextStyle style) =>
        $"{Requirement}, met: {Time(Reached)}; {QuantityText.Number(Total, style)} counted; {QuantityText.Of(Cautions.Count, style)} cautions";
}
