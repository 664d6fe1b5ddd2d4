using HortiCalc.Display;
using HortiCalc.Evidence;
using HortiCalc.Units;

namespace HortiCalc.Climate;

/// <summary>The stages of a crop or an insect by degree days, as one source prints them, with its way of counting.</summary>
/// <remarks>
/// Immutable; equal when all members are equal. Sources differ for the same subject by place, cultivar and way of counting: they stand side
/// by side in <see cref="StageTables"/>, not averaged.
/// </remarks>
/// <example><code>
/// StageTable borer = StageTables.FromKey("california-insect-models/peach-twig-borer");
/// DateOnly firstMothInTrap = new(2027, 4, 12);
/// DailyTemperatures days = DailyTemperatures.Create(
///     firstMothInTrap, [8, 9, 11], [21, 24, 26], UnitsNet.Units.TemperatureUnit.DegreeCelsius);
/// StageProgress now = borer.Follow(days, firstMothInTrap);
/// Console.WriteLine(now);
/// </code></example>
public sealed record StageTable : IFormattable
{
    /// <summary>Describes a printed table.</summary>
    /// <param name="key">A short stable name.</param>
    /// <param name="kind">What it follows.</param>
    /// <param name="subject">The crop or insect by its English name, with what sets the table apart (a maturity group).</param>
    /// <param name="scientificName">The scientific name, or <see langword="null"/> where the source prints none.</param>
    /// <param name="biofix">What counting starts from.</param>
    /// <param name="thresholds">The temperatures between which degree days are counted.</param>
    /// <param name="method">The method; <see langword="null"/> where the source does not say.</param>
    /// <param name="cutoff">What is done above the upper threshold.</param>
    /// <param name="source">Where it was published.</param>
    /// <param name="stages">The stages, of different names; kept in the order of their sums.</param>
    /// <exception cref="ArgumentException">
    /// A text is empty, something is missing, there is no stage or two of one name, or the method is not defined for the cutoff.
    /// </exception>
    /// <exception cref="ArgumentOutOfRangeException">The kind or the cutoff is none of the defined ones.</exception>
    public StageTable(
        string key,
        StageSubject kind,
        string subject,
        string? scientificName,
        Biofix biofix,
        DegreeDayThresholds thresholds,
        DegreeDayMethod? method,
        UpperCutoff cutoff,
        Source source,
        IReadOnlyList<HeatStage> stages)
    {
        Key = Guard.NotBlank(key);
        Kind = Guard.Defined(kind);
        Subject = Guard.NotBlank(subject);
        ScientificName = scientificName is null ? null : Guard.NotBlank(scientificName);
        Biofix = Guard.NotNull(biofix);
        Thresholds = Guard.NotNull(thresholds);
        Method = method;
        Cutoff = Guard.Defined(cutoff);
        Source = Guard.NotNull(source);
        Guard.NotNull(stages);
        if (stages.Count == 0)
            throw new ArgumentException("stages held none; allowed: 1 or more.", nameof(stages));
        if (stages.GroupBy(stage => stage.Name, StringComparer.OrdinalIgnoreCase).FirstOrDefault(same => same.Count() > 1) is { } twice)
            throw new ArgumentException($"stages held '{twice.Key}' twice; allowed: different names.", nameof(stages));
        Stages = ValueList<HeatStage>.Of(stages.OrderBy(stage => stage.Low.CelsiusDays));
        RequirementOf(Stages[0].Low); // Refuses a method that is not defined for the cutoff.
    }

    /// <summary>A short stable name.</summary>
    public string Key { get; }

    /// <summary>What it follows.</summary>
    public StageSubject Kind { get; }

    /// <summary>The crop or insect by its English name, with what sets the table apart.</summary>
    public string Subject { get; }

    /// <summary>The scientific name, or <see langword="null"/> where the source prints none.</summary>
    public string? ScientificName { get; }

    /// <summary>What counting starts from.</summary>
    public Biofix Biofix { get; }

    /// <summary>The temperatures between which degree days are counted.</summary>
    public DegreeDayThresholds Thresholds { get; }

    /// <summary>The method; <see langword="null"/> where the source does not say.</summary>
    public DegreeDayMethod? Method { get; }

    /// <summary>What is done above the upper threshold.</summary>
    public UpperCutoff Cutoff { get; }

    /// <summary>Where it was published.</summary>
    public Source Source { get; }

    /// <summary>The stages in the order of their sums.</summary>
    public IReadOnlyList<HeatStage> Stages { get; }

    /// <summary>A stage by its name.</summary>
    /// <param name="name">The name, capitals or not.</param>
    /// <returns>The stage.</returns>
    /// <exception cref="ArgumentException">The name is empty, or the table has no such stage.</exception>
    public HeatStage Stage(string name)
    {
        Guard.NotBlank(name);
        return Stages.FirstOrDefault(stage => stage.Name.Equals(name, StringComparison.OrdinalIgnoreCase))
            ?? throw new ArgumentException(
                $"name was '{name}'; allowed: {string.Join(", ", Stages.Select(stage => stage.Name))}.", nameof(name));
    }

    /// <summary>What a stage needs, to its printed sum or the low end of its range.</summary>
    /// <param name="stage">The name of a stage, capitals or not.</param>
    /// <returns>The requirement, with the table's way of counting.</returns>
    /// <exception cref="ArgumentException">The name is empty, or the table has no such stage.</exception>
    public HeatRequirement Requirement(string stage) => RequirementOf(Stage(stage).Low);

    /// <summary>What a stage needs, to the high end of its range.</summary>
    /// <param name="stage">The name of a stage, capitals or not.</param>
    /// <returns>The requirement; <see langword="null"/> where the end is open.</returns>
    /// <exception cref="ArgumentException">The name is empty, or the table has no such stage.</exception>
    public HeatRequirement? RequirementOfEnd(string stage) => Stage(stage).High is ThermalTime high ? RequirementOf(high) : null;

    /// <summary>How far development has come by a record of temperatures, counted as the table was published.</summary>
    /// <param name="days">The daily temperatures.</param>
    /// <param name="start">The first day to count: the day of the calendar, or the day on which the start was seen.</param>
    /// <returns>The stages reached and the next, to the last day of the record.</returns>
    /// <exception cref="ArgumentNullException">The days are <see langword="null"/>.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The start is not in the record.</exception>
    /// <exception cref="ArgumentException">More than 5 % of the days are missing.</exception>
    public StageProgress Follow(DailyTemperatures days, DateOnly start) => Follow(RequirementOf(ThermalTime.Zero).Count(days, start));

    /// <summary>How far development has come by degree days that are counted already, from the start on.</summary>
    /// <param name="series">The degree days; each thing that they were counted otherwise by is a caution.</param>
    /// <returns>The stages reached and the next, to the last day of the series.</returns>
    /// <exception cref="ArgumentNullException">The series is <see langword="null"/>.</exception>
    public StageProgress Follow(DegreeDaySeries series)
    {
        Guard.NotNull(series);
        List<Caution> cautions =
        [
            .. series.Cautions,
            .. RequirementOf(ThermalTime.Zero).CautionsFor(series),
            .. StageCautions.OfStart(Biofix, series.Start),
            .. Kind == StageSubject.Insect ? [StageCautions.Scout] : Array.Empty<Caution>(),
        ];
        return new StageProgress(
            this,
            series.Start,
            series.End,
            series.Total,
            [.. Stages.Select(stage => new StageTime(
                stage, series.WhenReached(stage.Low), stage.High is ThermalTime high ? series.WhenReached(high) : null))],
            cautions);
    }

    /// <summary>The table in metric units and invariant culture.</summary>
    /// <returns>Subject, start, way of counting, number of stages, source.</returns>
    public override string ToString() => ToString(TextStyle.Default);

    /// <summary>The table as one line of text.</summary>
    /// <param name="format"><c>M</c> or nothing for metric units, <c>U</c> for US customary ones.</param>
    /// <param name="formatProvider">The culture, or <see langword="null"/> for the invariant one.</param>
    /// <returns>Subject, start, way of counting, number of stages, source.</returns>
    /// <exception cref="FormatException">The format is another one.</exception>
    public string ToString(string? format, IFormatProvider? formatProvider) => ToString(TextStyle.Parse(format, formatProvider));

    private string ToString(TextStyle style) =>
        $"{Subject}: {QuantityText.Of(Stages.Count, style)} stages from {Biofix}, {Thresholds.ToString(style)}, "
        + $"{Method?.ToString() ?? "method not stated"}, cutoff {DegreeDayText.Of(Cutoff)} [{Source}]";

    private HeatRequirement RequirementOf(ThermalTime sum) => new(sum, Thresholds, Method, Cutoff, Source);
}
