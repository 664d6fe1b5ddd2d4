using HortiCalc.Evidence;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Soil;

/// <summary>See <see cref="LimingMethod.Teagasc"/>.</summary>
internal sealed record TeagascLiming : LimingMethod
{
    private const double TargetBufferPh = 6.7;
    private const double TonnesPerHectarePerBufferUnit = 12.5;

    private static readonly LimingFacts Known = new(
        new Method(
            "lime-teagasc-smp",
            "Irish formula by SMP buffer",
            LimeMethodSources.Teagasc,
            new Domain(
                "grass on mineral soil in Ireland, to pH 6.3; the SMP buffer starts at pH 7.5",
                new DomainLimit(nameof(SoilReport.SmpBufferPh), double.NegativeInfinity, 7.5, "pH"),
                new DomainLimit("target", 6.3, 6.3, "pH"))),
        Depth: null,
        LimingMaterial.GroundLimestone,
        "ground limestone; no fineness stated");

    internal override LimingFacts Facts => Known;

    internal override IEnumerable<string> Absent(SoilReport soil)
    {
        if (soil.SmpBufferPh is null)
            yield return nameof(SoilReport.SmpBufferPh);
    }

    internal override ArgumentException? Outside(SoilReport soil, Ph target) =>
        OutsideLimit(target.Value, "pH", nameof(target)) ?? OutsideLimit(soil.SmpBufferPh!.Value.Value, "pH", nameof(SoilReport.SmpBufferPh));

    // Printed without brackets: 6.7 – 6.3 x 12.5 = 5.0, which holds only for the difference times 12.5.
    internal override Estimate<AreaDensity> Rate(SoilReport soil, Ph target)
    {
        double tonnesPerHectare = Math.Max(0, TargetBufferPh - soil.SmpBufferPh!.Value.Value) * TonnesPerHectarePerBufferUnit;
        return Answer(
            tonnesPerHectare * LimeUnits.GramsPerSquareMetrePerTonnePerHectare,
            cautions: tonnesPerHectare == 0 ? [LimeCautions.NoAcidity] : []);
    }
}
