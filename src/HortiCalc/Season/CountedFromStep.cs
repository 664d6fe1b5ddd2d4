using HortiCalc.Display;
using HortiCalc.Units;

namespace HortiCalc.Season;

/// <summary>The date is counted from that of another job.</summary>
public sealed record CountedFromStep : DateReason
{
    /// <summary>Names the other job and the distance.</summary>
    /// <param name="from">The other job.</param>
    /// <param name="days">The days from that job to this; negative where this one comes before it.</param>
    public CountedFromStep(PlanStep from, int days)
    {
        From = Guard.Defined(from);
        Days = days;
    }

    /// <summary>The other job.</summary>
    public PlanStep From { get; }

    /// <summary>The days from that job to this; negative where this one comes before it.</summary>
    public int Days { get; }

    internal override string Text(PlanStep step, TextStyle style)
    {
        int distance = Math.Abs(Days);
        (int count, string unit) = distance % 7 == 0 && step != PlanStep.Harvest ? (distance / 7, "week") : (distance, "day");
        return $"{QuantityText.Of(count, style)} {unit}{(count == 1 ? "" : "s")} {(Days < 0 ? "before" : "after")} {PlanText.Doing(From)}";
    }
}
