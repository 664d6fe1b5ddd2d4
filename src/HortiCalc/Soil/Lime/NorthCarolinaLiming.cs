using HortiCalc.Evidence;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Soil;

/// <summary>See <see cref="LimingMethod.NorthCarolina"/>.</summary>
internal sealed record NorthCarolinaLiming(ResidualLime? Residual) : LimingMethod
{
    /// <summary>The pH of the Mehlich buffer itself, where the formula has its pole.</summary>
    private const double BufferPh = 6.6;

    /// <summary>Milliequivalents per 100 cm³ for one unit of buffer pH.</summary>
    private const double AcidityPerBufferUnit = 4;

    private const double ReportingLimitShortTonsPerAcre = 0.3;

    private static readonly LimingFacts Known = new(
        new Method(
            "lime-north-carolina",
            "North Carolina formula by Mehlich buffer acidity",
            LimeSources.NorthCarolina,
            new Domain(
                "soils of North Carolina; the Mehlich buffer is linear from its own pH of 6.6 down to 3.0",
                new DomainLimit(nameof(SoilReport.PhInWater), double.NegativeInfinity, BufferPh, "pH"),
                new DomainLimit(nameof(SoilReport.MehlichBufferPh), 3.0, BufferPh, "pH"),
                new DomainLimit("target", double.NegativeInfinity, BufferPh, "pH"))),
        Depth: null,
        new LimingMaterial("standard agricultural lime", Ratio.FromPercent(90), source: LimeSources.NorthCarolinaStandardLime),
        "as North Carolina asks of lime for sale: of dolomitic lime 90 % through a 20-mesh screen and 35 % through a 100-mesh screen");

    internal override LimingFacts Facts => Known;

    internal override IEnumerable<string> Absent(SoilReport soil)
    {
        if (soil.PhInWater is null)
            yield return nameof(SoilReport.PhInWater);
        if (soil.BufferAcidity is null && soil.MehlichBufferPh is null)
            yield return $"{nameof(SoilReport.BufferAcidity)} or {nameof(SoilReport.MehlichBufferPh)}";
    }

    // The soil is below the target here, so a target of 6.6 or less keeps it below the pole.
    internal override ArgumentException? Outside(SoilReport soil, Ph target) =>
        OutsideLimit(target.Value, "pH", nameof(target))
        ?? (soil.BufferAcidity is null ? OutsideLimit(soil.MehlichBufferPh!.Value.Value, "pH", nameof(SoilReport.MehlichBufferPh)) : null);

    internal override Estimate<AreaDensity> Rate(SoilReport soil, Ph target)
    {
        double currentPh = soil.PhInWater!.Value.Value;
        double acidity = soil.BufferAcidity?.MilliequivalentsPer100CubicCentimetres
            ?? (BufferPh - soil.MehlichBufferPh!.Value.Value) * AcidityPerBufferUnit;
        double factor = (target.Value - currentPh) / (BufferPh - currentPh);
        double needShortTonsPerAcre = acidity * factor;
        double creditShortTonsPerAcre = (Residual?.CreditGramsPerSquareMetre ?? 0) / LimeUnits.GramsPerSquareMetrePerShortTonPerAcre;
        double shortTonsPerAcre = Math.Max(0, needShortTonsPerAcre - creditShortTonsPerAcre);
        Caution[] cautions = (needShortTonsPerAcre, shortTonsPerAcre) switch
        {
            (0, _) => [LimeCautions.NoAcidity],
            (_, 0) => [LimeCautions.CreditCovers],
            (_, < ReportingLimitShortTonsPerAcre) => [LimeCautions.BelowReportingLimit],
            _ => [],
        };
        return Answer(
            shortTonsPerAcre * LimeUnits.GramsPerSquareMetrePerShortTonPerAcre,
            Residual is null ? null : [LimeRules.ResidualCredit],
            cautions);
    }
}
