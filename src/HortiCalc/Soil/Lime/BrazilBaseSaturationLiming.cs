using HortiCalc.Evidence;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Soil;

/// <summary>See <see cref="LimingMethod.BrazilBaseSaturation"/>.</summary>
internal sealed record BrazilBaseSaturationLiming : SaturationLiming
{
    private static readonly LimingFacts Known = new(
        new Method(
            "lime-brazil-base-saturation",
            "Brazilian formula by base saturation",
            LimeMethodSources.BrazilBaseSaturation,
            new Domain(
                "soils of Brazil; 50 % for cereals and tubers, 60 % for legumes and sugar cane, 70 % for vegetables, coffee and fruit",
                new DomainLimit("targetSaturation", 0, 100, "%"))),
        Layer,
        new LimingMaterial("lime of relative power 100", Ratio.FromPercent(100), source: LimeMethodSources.BrazilBaseSaturation),
        "a relative power of total neutralisation of 100 %: fineness is in it");

    public BrazilBaseSaturationLiming(Ratio targetSaturation)
    {
        Guard.Within(Boundary.Fraction(targetSaturation) * 100, 0, 100, "%", nameof(targetSaturation));
        TargetSaturation = HouseUnits.Normalise(targetSaturation);
    }

    public Ratio TargetSaturation { get; }

    internal override LimingFacts Facts => Known;

    private protected override IEnumerable<string> AbsentIn(SoilCations cations)
    {
        if (cations.PotentialAcidity is null)
            yield return $"{nameof(SoilReport.Cations)}.{nameof(SoilCations.PotentialAcidity)}";
    }

    // (V2 - V1) T / 100, with V1 T / 100 the sum of bases.
    private protected override double CentimolesPerLitre(SoilCations cations) =>
        Boundary.Fraction(TargetSaturation) * (cations.BasesCentimolesPerLitre + cations.PotentialAcidity!.Value.CentimolesPerLitre)
        - cations.BasesCentimolesPerLitre;
}
