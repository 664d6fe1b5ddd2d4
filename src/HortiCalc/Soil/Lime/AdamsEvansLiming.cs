using HortiCalc.Evidence;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Soil;

/// <summary>See <see cref="LimingMethod.AdamsEvans"/>.</summary>
internal sealed record AdamsEvansLiming : LimingMethod
{
    // pH = 7.79 - 5.55 H + 2.27 H², H the share of the exchange capacity that acid holds: from memory. Below its lowest value it has no root.
    private const double Constant = 7.79;
    private const double Linear = 5.55;
    private const double Square = 2.27;
    private const double LowestPh = 4.4;

    private const double ReagentPh = 8.0;

    private static readonly LimingFacts Known = new(
        new Method(
            "lime-adams-evans",
            "Adams-Evans formula, not confirmed in print",
            LimeMethodSources.AdamsEvans,
            new Domain(
                "sandy soils of the south-eastern United States with an exchange capacity below 13 cmol/kg and a need below 5 US tons per acre",
                new DomainLimit(nameof(SoilReport.PhInWater), LowestPh, Constant, "pH"),
                new DomainLimit(nameof(SoilReport.AdamsEvansBufferPh), 7.0, ReagentPh, "pH"),
                new DomainLimit("target", LowestPh, 7.0, "pH"))),
        Depth: null,
        LimingMaterial.GroundLimestone,
        "ground limestone taken as two thirds effective: the factor 1.5");

    internal override LimingFacts Facts => Known;

    internal override IEnumerable<string> Absent(SoilReport soil)
    {
        if (soil.PhInWater is null)
            yield return nameof(SoilReport.PhInWater);
        if (soil.AdamsEvansBufferPh is null)
            yield return nameof(SoilReport.AdamsEvansBufferPh);
    }

    internal override ArgumentException? Outside(SoilReport soil, Ph target) =>
        OutsideLimit(soil.PhInWater!.Value.Value, "pH", nameof(SoilReport.PhInWater))
        ?? OutsideLimit(target.Value, "pH", nameof(target))
        ?? OutsideLimit(soil.AdamsEvansBufferPh!.Value.Value, "pH", nameof(SoilReport.AdamsEvansBufferPh));

    // Huluka 2007, equation 2. Printed as tonnes per hectare times 2.24, which holds once the 8000, in pounds per acre, is divided by 2000.
    internal override Estimate<AreaDensity> Rate(SoilReport soil, Ph target)
    {
        double now = AcidShare(soil.PhInWater!.Value.Value);
        double then = AcidShare(target.Value);
        double poundsPerAcre = 8000 * (ReagentPh - soil.AdamsEvansBufferPh!.Value.Value) / now * (now - then) * 1.5;
        Caution[] cautions = poundsPerAcre == 0 ? [LimeCautions.NoAcidity, LimeCautions.Unconfirmed] : [LimeCautions.Unconfirmed];
        return Answer(poundsPerAcre * LimeUnits.GramsPerSquareMetrePerPoundPerAcre, cautions: cautions);
    }

    /// <summary>The lower root of the equation above, from 0 at pH 7.79.</summary>
    private static double AcidShare(double ph) => (Linear - Math.Sqrt(Linear * Linear - 4 * Square * (Constant - ph))) / (2 * Square);
}
