using HortiCalc.Evidence;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Soil;

/// <summary>See <see cref="LimingMethod.PennStateTurf"/>.</summary>
internal sealed record PennStateTurfLiming : AcidityLiming
{
    private static readonly LimingFacts Known = new(
        new Method(
            "lime-penn-state-turf",
            "Penn State turf table by exchangeable acidity",
            LimeSources.PennStateTurf,
            new Domain(
                "turf; acidity by the Mehlich buffer; goals of pH 6.0, 6.5 and 7.0 only",
                new DomainLimit(nameof(SoilReport.ExchangeableAcidity), 2.0, 25.7, "meq/100 g"),
                new DomainLimit("target", 6.0, 7.0, "pH"))),
        Depth: null,
        LimingMaterial.GroundLimestone,
        "agricultural ground limestone; no fineness stated in the table");

    // Table 1: exchangeable acidity in meq/100 g, then lb of calcium carbonate equivalent per 1000 square feet for each goal.
    private static readonly double[] Acidity =
    [
        2.0, 2.6, 3.3, 3.9, 4.6, 5.2, 5.8, 6.5, 7.1, 7.8, 8.4, 9.0, 9.7, 10.3, 11.0, 11.6, 12.3, 12.9, 13.5, 14.2, 14.8, 15.5, 16.1, 16.8, 17.4, 18.0,
        18.7, 19.3, 20.0, 20.6, 21.2, 21.9, 22.5, 23.2, 23.8, 24.5, 25.1, 25.7,
    ];

    private static readonly double[] ToPh7 =
    [
        50, 70, 70, 90, 110, 110, 140, 160, 160, 180, 180, 210, 230, 230, 250, 280, 280, 300, 320, 320, 340, 370, 370, 390, 390, 410,
        440, 440, 460, 480, 480, 510, 530, 530, 550, 570, 570, 600,
    ];

    private static readonly double[] ToPh65 =
    [
        50, 50, 50, 70, 70, 90, 90, 110, 110, 140, 140, 160, 180, 180, 210, 210, 230, 250, 250, 280, 280, 300, 320, 320, 340, 340,
        370, 390, 390, 410, 410, 460, 460, 460, 480, 480, 510, 530,
    ];

    private static readonly double[] ToPh6 =
    [
        50, 50, 50, 50, 50, 50, 50, 70, 90, 90, 110, 110, 140, 140, 160, 160, 180, 180, 210, 210, 230, 230, 250, 250, 280, 280,
        300, 300, 320, 320, 340, 340, 370, 370, 390, 390, 410, 410,
    ];

    internal override LimingFacts Facts => Known;

    private protected override ReadOnlySpan<double> Goals => [6.0, 6.5, 7.0];

    internal override Estimate<AreaDensity> Rate(SoilReport soil, Ph target)
    {
        double[] rates = target.Value switch
        {
            7.0 => ToPh7,
            6.5 => ToPh65,
            _ => ToPh6,
        };
        (double poundsPer1000SquareFeet, bool isBetweenRows) =
            LimeInterpolation.Linear(Acidity, rates, soil.ExchangeableAcidity!.Value.MilliequivalentsPer100Grams);
        return Answer(
            poundsPer1000SquareFeet * LimeUnits.GramsPerSquareMetrePerPoundPer1000SquareFeet,
            isBetweenRows ? [LimeRules.BetweenRows] : null);
    }
}
