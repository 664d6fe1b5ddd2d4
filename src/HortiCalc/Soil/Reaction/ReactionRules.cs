using HortiCalc.Evidence;

namespace HortiCalc.Soil;

/// <summary>Rules of reading that are applied to a pH after its method.</summary>
internal static class ReactionRules
{
    public static Method Backwards { get; } = new(
        "ph-read-backwards",
        "read backwards",
        Source.CommonPractice("ph-read-backwards", "a relation of two readings solved for the other one"),
        new Domain("a little too steep: the regression of the other direction is another line"));
}
