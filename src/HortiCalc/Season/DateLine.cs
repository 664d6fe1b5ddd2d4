using HortiCalc.Display;
using HortiCalc.Evidence;
using HortiCalc.Units;

namespace HortiCalc.Season;

/// <summary>When a job is due, and what that date rests on.</summary>
public sealed record DateLine : PlanLine
{
    /// <summary>Says when a job is due.</summary>
    /// <param name="place">The bed or the pots.</param>
    /// <param name="crop">The crop.</param>
    /// <param name="step">The job.</param>
    /// <param name="reason">What the date rests on.</param>
    /// <param name="evidence">The methods it rests on; at least one.</param>
    /// <param name="date">The day, or the first of several; <see langword="null"/> where there is none.</param>
    /// <param name="until">The last day, where there are several.</param>
    public DateLine(
        string place, string crop, PlanStep step, DateReason reason, IReadOnlyList<Method> evidence, DateOnly? date = null, DateOnly? until = null)
        : base(place, evidence)
    {
        Crop = Guard.NotBlank(crop);
        Step = Guard.Defined(step);
        Reason = Guard.NotNull(reason);
        Date = date;
        Until = until;
    }

    /// <summary>The crop.</summary>
    public string Crop { get; }

    /// <summary>The job.</summary>
    public PlanStep Step { get; }

    /// <summary>What the date rests on.</summary>
    public DateReason Reason { get; }

    /// <summary>The day, or the first of several; <see langword="null"/> where there is none.</summary>
    public DateOnly? Date { get; }

    /// <summary>The last day, where there are several.</summary>
    public DateOnly? Until { get; }

    internal override IReadOnlyList<string> Cells(TextStyle style) => [When(style), PlanText.Job(Step), $"{Crop}, {Place}", Why(style)];

    private string When(TextStyle style) => (Date, Reason) switch
    {
        (DateOnly day, _) => QuantityText.Of(day, style),
        (null, ColdNightsRare) => "any time",
        (null, CountedFromStep) => "open",
        _ => "no date",
    };

    private string Why(TextStyle style) =>
        (Until is DateOnly last ? $"to {QuantityText.Of(last, style)}: " : "") + Reason.Text(Step, style);
}
