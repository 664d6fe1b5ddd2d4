using HortiCalc.Display;
using HortiCalc.Evidence;
using HortiCalc.Units;

namespace HortiCalc.Climate;

/// <summary>How far a crop or an insect has come through the stages of a table.</summary>
/// <remarks>Immutable; equal when all members are equal.</remarks>
[TypeFormatterSource(typeof(DisplayFormatters))]
public sealed record StageProgress : IFormattable, IDisplayable
{
    /// <summary>Describes how far development has come.</summary>
    /// <param name="table">The table.</param>
    /// <param name="start">The first day counted.</param>
    /// <param name="end">The last day counted.</param>
    /// <param name="sum">The degree days to the end of the last day.</param>
    /// <param name="times">The stages in the table's order, each with when it was reached.</param>
    /// <param name="cautions">What to take care of.</param>
    /// <exception cref="ArgumentNullException">Something is missing.</exception>
    /// <exception cref="ArgumentException">The stages are not the table's, or the last day is before the first.</exception>
    public StageProgress(
        StageTable table, DateOnly start, DateOnly end, ThermalTime sum, IReadOnlyList<StageTime> times, IReadOnlyList<Caution> cautions)
    {
        Table = Guard.NotNull(table);
        if (end < start)
            throw new ArgumentException($"end was {AirTemperature.Text(end)}; allowed: not before start, {AirTemperature.Text(start)}.", nameof(end));
        Start = start;
        End = end;
        Sum = sum;
        Times = ValueList<StageTime>.Of(Guard.NotNull(times));
        if (!Times.Select(time => time.Stage).SequenceEqual(table.Stages))
            throw new ArgumentException("times held other stages than the table; allowed: its stages, in order.", nameof(times));
        Cautions = ValueList<Caution>.Of(Guard.NotNull(cautions));
    }

    /// <summary>The table.</summary>
    public StageTable Table { get; }

    /// <summary>The first day counted.</summary>
    public DateOnly Start { get; }

    /// <summary>The last day counted.</summary>
    public DateOnly End { get; }

    /// <summary>The degree days to the end of the last day.</summary>
    public ThermalTime Sum { get; }

    /// <summary>The stages in the table's order, each with when it was reached.</summary>
    public IReadOnlyList<StageTime> Times { get; }

    /// <summary>What to take care of.</summary>
    public IReadOnlyList<Caution> Cautions { get; }

    /// <summary>The last stage that was reached; <see langword="null"/> where there is none yet.</summary>
    public HeatStage? Latest => Times.LastOrDefault(time => time.Reached is not null)?.Stage;

    /// <summary>The next stage to come; <see langword="null"/> where all were reached.</summary>
    public HeatStage? Next => Times.FirstOrDefault(time => time.Reached is null)?.Stage;

    /// <summary>The degree days that the next stage still needs; <see langword="null"/> where all were reached.</summary>
    public ThermalTime? ToNext => Next is HeatStage next ? ThermalTime.FromCelsiusDays(Math.Max(0, next.Low.CelsiusDays - Sum.CelsiusDays)) : null;

    /// <summary>The stages whose printed range the sum is in: several may be seen at once.</summary>
    public IReadOnlyList<HeatStage> Now => ValueList<HeatStage>.Of(Times
        .Where(time => time is { Reached: not null, Passed: null })
        .Select(time => time.Stage));

    /// <summary>How far it has come in metric units and invariant culture.</summary>
    /// <returns>One line: subject, sum, latest and next stage, source, number of cautions.</returns>
    public override string ToString() => ToString(TextStyle.Default);

    /// <summary>How far it has come as one line of text.</summary>
    /// <param name="format"><c>M</c> or nothing for metric units, <c>U</c> for US customary ones.</param>
    /// <param name="formatProvider">The culture, or <see langword="null"/> for the invariant one.</param>
    /// <returns>One line: subject, sum, latest and next stage, source, number of cautions.</returns>
    /// <exception cref="FormatException">The format is another one.</exception>
    public string ToString(string? format, IFormatProvider? formatProvider) => ToString(TextStyle.Parse(format, formatProvider));

    DisplayBlock IDisplayable.ToDisplay(TextStyle style) => new($"{Table.Subject}: {SumWords(style)}")
    {
        Rows =
        [
            .. Times.Select(time => new DisplayRow(time.Stage.ToString(style), time.Reached?.ToString() ?? "to come")),
            .. Cautions.Select(caution => new DisplayRow(caution.LevelWord, caution.Sentence)),
            new DisplayRow("source", Table.Source.ToString()),
        ],
    };

    private string ToString(TextStyle style) =>
        $"{Table.Subject}: {SumWords(style)}, {Latest?.Name ?? "no stage yet"}; "
        + (Next is HeatStage next ? $"next {next.Name} in {QuantityText.Of(ToNext!.Value, style)}" : "all stages reached")
        + $" [{Table.Source}]; " + (Cautions.Count == 1 ? "1 caution" : $"{QuantityText.Of(Cautions.Count, style)} cautions");

    private string SumWords(TextStyle style) =>
        $"{QuantityText.Of(Sum, style)} from {AirTemperature.Text(Start)} to {AirTemperature.Text(End)}";
}
