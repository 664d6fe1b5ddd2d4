using System.Text.Json.Serialization;
using HortiCalc.Display;

namespace HortiCalc.Season;

/// <summary>What the date of a job rests on. The kinds are a closed set.</summary>
[JsonPolymorphic(TypeDiscriminatorPropertyName = "kind")]
[JsonDerivedType(typeof(ColdNightChance), "cold-night-chance")]
[JsonDerivedType(typeof(ColdNightOnRecord), "cold-night-on-record")]
[JsonDerivedType(typeof(ColdNightsRare), "cold-nights-rare")]
[JsonDerivedType(typeof(WarmthReached), "warmth-reached")]
[JsonDerivedType(typeof(WarmthNotReached), "warmth-not-reached")]
[JsonDerivedType(typeof(HeatReached), "heat-reached")]
[JsonDerivedType(typeof(CountedFromStep), "counted-from-step")]
[JsonDerivedType(typeof(DateNotKnown), "not-known")]
public abstract record DateReason
{
    private protected DateReason()
    {
    }

    internal abstract string Text(PlanStep step, TextStyle style);

    /// <summary>Whether a job is one of spring: cold nights are then those still to come, else those that have come.</summary>
    private protected static bool IsSpring(PlanStep step) => step is PlanStep.Sow or PlanStep.PlantOut or PlanStep.SetOutside;

    /// <summary>The reason in metric units and invariant culture.</summary>
    /// <returns>For instance <c>10 % chance of -1 °C or colder</c>.</returns>
    public sealed override string ToString() => Text(TextStyle.Default);

    /// <summary>The reason where it is not said which step it is for.</summary>
    internal virtual string Text(TextStyle style) => Text(PlanStep.Harvest, style);
}
