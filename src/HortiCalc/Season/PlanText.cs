using HortiCalc.Display;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Season;

/// <summary>The words that lines of a plan share.</summary>
internal static class PlanText
{
    public static string Job(PlanStep step) => step switch
    {
        PlanStep.Sow => "sow",
        PlanStep.TakeCuttings => "take cuttings",
        PlanStep.PotOn => "pot on",
        PlanStep.PlantOut => "plant out",
        PlanStep.SetOutside => "set outside",
        PlanStep.Harvest => "first harvest",
        PlanStep.LastPruning => "last pruning",
        _ => "bring indoors",
    };

    public static string Doing(PlanStep step) => step switch
    {
        PlanStep.Sow => "sowing",
        PlanStep.TakeCuttings => "taking cuttings",
        PlanStep.PotOn => "potting on",
        PlanStep.PlantOut => "planting out",
        PlanStep.SetOutside => "setting outside",
        PlanStep.Harvest => "the first harvest",
        PlanStep.LastPruning => "the last pruning",
        _ => "bringing indoors",
    };

    /// <summary>A chance for a reader: whole percents, because no record of some decades supports more.</summary>
    public static string Chance(Ratio chance, TextStyle style)
    {
        double percent = Boundary.Fraction(chance) * 100;
        double whole = Math.Round(percent, MidpointRounding.AwayFromZero);
        return (percent, whole) switch
        {
            ( > 0, 0) => "under 1 %",
            ( < 100, 100) => "over 99 %",
            _ => QuantityText.Of(Ratio.FromPercent(whole), style),
        };
    }
}
