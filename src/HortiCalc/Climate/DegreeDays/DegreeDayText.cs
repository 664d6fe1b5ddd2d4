namespace HortiCalc.Climate;

/// <summary>The words for how degree days are counted.</summary>
internal static class DegreeDayText
{
    public static string Of(UpperCutoff cutoff) => cutoff switch
    {
        UpperCutoff.Horizontal => "horizontal",
        UpperCutoff.Intermediate => "intermediate",
        UpperCutoff.IntermediateBelowZero => "intermediate, below zero too",
        UpperCutoff.Vertical => "vertical",
        _ => "none",
    };
}
