using HortiCalc.Evidence;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Soil;

/// <summary>See <see cref="LimingMethod.GardenCalcium"/>.</summary>
internal sealed record GardenCalciumLiming : LimingMethod
{
    private const double OptimumPartsPerMillionPerMilliequivalent = 130;

    private static readonly LimingFacts Known = new(
        new Method(
            "lime-garden-calcium",
            "garden rule by exchange capacity",
            LimeMethodSources.GardenCalcium,
            new Domain(
                "gardens; the exchange capacity rounded up to a whole milliequivalent",
                new DomainLimit(nameof(SoilReport.CationExchangeCapacity), 0, 30, "meq/100 g"))),
        Depth: null,
        LimingMaterial.GroundLimestone,
        "lime; no fineness stated");

    public override bool AimsAtPh => false;

    internal override LimingFacts Facts => Known;

    internal static double OptimumPartsPerMillion(double milliequivalentsPer100Grams) =>
        OptimumPartsPerMillionPerMilliequivalent * Math.Ceiling(milliequivalentsPer100Grams);

    internal override IEnumerable<string> Absent(SoilReport soil)
    {
        if (soil.CationExchangeCapacity is null)
            yield return nameof(SoilReport.CationExchangeCapacity);
        if (soil.ExtractableCalcium is null)
            yield return nameof(SoilReport.ExtractableCalcium);
    }

    internal override bool IsAtTarget(SoilReport soil, Ph target) => !Absent(soil).Any() && LackingPartsPerMillion(soil) <= 0;

    internal override ArgumentException? Outside(SoilReport soil, Ph target) => OutsideLimit(
        soil.CationExchangeCapacity!.Value.MilliequivalentsPer100Grams, "meq/100 g", nameof(SoilReport.CationExchangeCapacity));

    // Pounds per 1000 square feet: four pounds per acre for each part per million, an acre being 43 thousand square feet in round numbers.
    internal override Estimate<AreaDensity> Rate(SoilReport soil, Ph target) =>
        Answer(LackingPartsPerMillion(soil) * 4 / 43 * LimeUnits.GramsPerSquareMetrePerPoundPer1000SquareFeet, cautions: LimeCautions.Unreviewed);

    private static double LackingPartsPerMillion(SoilReport soil) =>
        OptimumPartsPerMillion(soil.CationExchangeCapacity!.Value.MilliequivalentsPer100Grams)
        - Boundary.MassFraction(soil.ExtractableCalcium!.Value) * 1e6;
}
