using HortiCalc.Evidence;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Soil;

/// <summary>See <see cref="LimingMethod.Cochrane"/>.</summary>
internal sealed record CochraneLiming : SaturationLiming
{
    private static readonly LimingFacts Known = new(
        new Method(
            "lime-cochrane-aluminium",
            "Cochrane equation by aluminium saturation",
            LimeMethodSources.Cochrane,
            new Domain("acid mineral soils of the tropics; aluminium by potassium chloride", new DomainLimit("tolerated", 0, 100, "%"))),
        Layer,
        LimingMaterial.GroundLimestone,
        "calcium carbonate; no fineness stated");

    public CochraneLiming(Ratio tolerated)
    {
        Guard.Within(Boundary.Fraction(tolerated) * 100, 0, 100, "%", nameof(tolerated));
        Tolerated = HouseUnits.Normalise(tolerated);
    }

    public Ratio Tolerated { get; }

    internal override LimingFacts Facts => Known;

    // 1.5 [Al - RAS (Al + Ca + Mg) / 100]; where that is more than the aluminium, 2 instead of 1.5.
    private protected override double CentimolesPerLitre(SoilCations cations)
    {
        double aluminium = cations.Aluminium.CentimolesPerLitre;
        double excess = aluminium
            - Boundary.Fraction(Tolerated) * (aluminium + cations.Calcium.CentimolesPerLitre + cations.Magnesium.CentimolesPerLitre);
        double first = 1.5 * excess;
        return first > aluminium ? 2 * excess : first;
    }
}
