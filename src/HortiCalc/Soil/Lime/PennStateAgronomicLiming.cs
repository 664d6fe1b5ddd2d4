using HortiCalc.Evidence;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Soil;

/// <summary>See <see cref="LimingMethod.PennStateAgronomic"/>.</summary>
internal sealed record PennStateAgronomicLiming : AcidityLiming
{
    private const double UndefinedAcidity = 4.0;

    private static readonly LimingFacts Known = new(
        new Method(
            "lime-penn-state-agronomic",
            "Penn State formula by exchangeable acidity",
            LimeSources.PennStateAgronomic,
            new Domain(
                "field crops; goals of pH 6.5 and 7.0 only",
                new DomainLimit(nameof(SoilReport.ExchangeableAcidity), 0, double.PositiveInfinity, "meq/100 g"),
                new DomainLimit("target", 6.5, 7.0, "pH"))),
        Length.FromInches(7),
        LimingMaterial.GroundLimestone,
        "at least 'fine sized' by the aglime regulations of Pennsylvania");

    internal override LimingFacts Facts => Known;

    private protected override ReadOnlySpan<double> Goals => [6.5, 7.0];

    internal override Estimate<AreaDensity> Rate(SoilReport soil, Ph target)
    {
        double acidity = soil.ExchangeableAcidity!.Value.MilliequivalentsPer100Grams;
        double poundsPerAcre = (target.Value, acidity) switch
        {
            (7.0, _) => 1000 * acidity,
            (_, > UndefinedAcidity) => 840 * acidity,
            _ => 2000,
        };
        Caution[] cautions = (poundsPerAcre, target.Value, acidity) switch
        {
            (0, _, _) => [LimeCautions.NoAcidity],
            (_, 6.5, UndefinedAcidity) => [LimeCautions.UndefinedInSource],
            _ => [],
        };
        return Answer(poundsPerAcre * LimeUnits.GramsPerSquareMetrePerPoundPerAcre, cautions: cautions);
    }
}
