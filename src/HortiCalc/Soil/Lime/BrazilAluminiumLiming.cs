using HortiCalc.Evidence;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Soil;

/// <summary>See <see cref="LimingMethod.BrazilAluminium()"/>.</summary>
internal sealed record BrazilAluminiumLiming : SaturationLiming
{
    private static readonly LimingFacts Known = new(
        new Method(
            "lime-brazil-aluminium",
            "Brazilian formula by aluminium, calcium and magnesium",
            LimeMethodSources.BrazilAluminium,
            new Domain(
                "soils of Brazil; the factor is 0 to 1 for sandy soils, 1 to 2 for medium ones, 2 to 3 for clays, 3 to 4 for heavy clays",
                new DomainLimit("factor", 0, 4, ""),
                new DomainLimit("tolerated", 0, 100, "%"))),
        Layer,
        new LimingMaterial("lime of relative power 100", Ratio.FromPercent(100), source: LimeMethodSources.BrazilBaseSaturation),
        "a relative power of total neutralisation of 100 %: fineness is in it");

    public BrazilAluminiumLiming(double factor, Ratio tolerated, VolumetricCharge calciumAndMagnesium)
    {
        Factor = Guard.Within(factor, 0, 4, "", nameof(factor));
        Guard.Within(Boundary.Fraction(tolerated) * 100, 0, 100, "%", nameof(tolerated));
        Tolerated = HouseUnits.Normalise(tolerated);
        CalciumAndMagnesium = calciumAndMagnesium;
    }

    public double Factor { get; }

    public Ratio Tolerated { get; }

    public VolumetricCharge CalciumAndMagnesium { get; }

    internal override LimingFacts Facts => Known;

    // Y [Al - mt t / 100] + [X - (Ca + Mg)]; neither part takes from the other.
    private protected override double CentimolesPerLitre(SoilCations cations)
    {
        double aluminium = cations.Aluminium.CentimolesPerLitre;
        double excess = aluminium - Boundary.Fraction(Tolerated) * (cations.BasesCentimolesPerLitre + aluminium);
        double lacking = CalciumAndMagnesium.CentimolesPerLitre - cations.Calcium.CentimolesPerLitre - cations.Magnesium.CentimolesPerLitre;
        return Factor * Math.Max(0, excess) + Math.Max(0, lacking);
    }
}
