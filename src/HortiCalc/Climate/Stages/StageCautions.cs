using HortiCalc.Evidence;

namespace HortiCalc.Climate;

internal static class StageCautions
{
    private static readonly Source Custom =
        Source.CommonPractice("stages-monitoring", "degree days tell when to look; what is found decides");

    internal static readonly Caution Scout = new(
        "stages.scout",
        CautionLevel.Care,
        "Degree days say when to look: what traps and plants show decides, and any spray follows its label and the local rules.",
        Custom);

    private static readonly Caution NotStated = new(
        "stages.biofix-not-stated",
        CautionLevel.Care,
        "The source does not say from when it counts: a sum from another day is another sum.",
        Custom);

    private static readonly Caution Shifted = new(
        "stages.biofix-shifted",
        CautionLevel.Care,
        "The start was printed for the northern hemisphere and is moved by six months here, which no source has tested.",
        Custom);

    private static readonly Caution OtherStart = new(
        "stages.other-start",
        CautionLevel.Care,
        "Counting began on another day than the table was published with: the stages will come on other dates.",
        Custom);

    private static readonly Caution Observed = new(
        "stages.biofix-observed",
        CautionLevel.Note,
        "The dates hold only if counting began on the day on which the printed event was seen.",
        Custom);

    /// <summary>What is to be said about the day that counting began on.</summary>
    public static IReadOnlyList<Caution> OfStart(Biofix biofix, DateOnly start)
    {
        if (biofix.Date is not MonthDay date)
            return [biofix.Observed is null ? NotStated : Observed];
        return start == date.InYear(start.Year) ? []
            : start == Biofix.HalfAYearOn(date).InYear(start.Year) ? [Shifted]
            : [OtherStart];
    }
}
