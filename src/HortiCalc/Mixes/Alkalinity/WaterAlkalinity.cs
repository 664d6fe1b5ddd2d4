using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Mixes;

/// <summary>Alkalinity in the ways that laboratories report it: as calcium carbonate, as bicarbonate and carbonate, as calcium oxide, in milliequivalents.</summary>
/// <remarks>
/// <para>
/// A report in mg/L says nothing until it says of what: as bicarbonate the figure is 1.22 times that as calcium carbonate. One meq/L is 50.04 mg/L as
/// CaCO₃ and 61.02 mg/L as HCO₃. Where a report has carbonate and bicarbonate, the two add.
/// </para>
/// <para>
/// Of the degrees of carbonate hardness, the German one (°dH, °KH) is 10 mg/L as CaO and the French one (°fH, TAC) 10 mg/L as CaCO₃; the acid capacity to
/// pH 4.3 in mmol/L is milliequivalents.
/// </para>
/// </remarks>
/// <example><code>
/// VolumetricCharge alkalinity = WaterAlkalinity.FromCalciumCarbonate(MassConcentration.FromMilligramsPerLiter(250));
/// double milliequivalents = alkalinity.MilliequivalentsPerLitre;   // 5.0
/// VolumetricCharge twelveGermanDegrees = WaterAlkalinity.FromCalciumOxide(MassConcentration.FromMilligramsPerLiter(120));   // 4.28 meq/L
/// </code></example>
public static class WaterAlkalinity
{
    internal static readonly double CalciumCarbonateGramsPerEquivalent = ChemicalFormula.GramsPerMole("CaCO3") / 2;
    internal static readonly double BicarbonateGramsPerEquivalent = ChemicalFormula.GramsPerMole("HCO3");
    private static readonly double CarbonateGramsPerEquivalent = ChemicalFormula.GramsPerMole("CO3") / 2;
    private static readonly double CalciumOxideGramsPerEquivalent = ChemicalFormula.GramsPerMole("CaO") / 2;

    /// <summary>An alkalinity reported as calcium carbonate.</summary>
    /// <param name="asCalciumCarbonate">The report's figure; 0 or more.</param>
    /// <returns>The charge per volume.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The figure is negative.</exception>
    public static VolumetricCharge FromCalciumCarbonate(MassConcentration asCalciumCarbonate) => VolumetricCharge.FromMilliequivalentsPerLitre(
        Guard.NotNegative(Boundary.MilligramsPerLitre(asCalciumCarbonate), "mg/L", nameof(asCalciumCarbonate)) / CalciumCarbonateGramsPerEquivalent);

    /// <summary>An alkalinity reported as bicarbonate.</summary>
    /// <param name="asBicarbonate">The report's figure; 0 or more.</param>
    /// <returns>The charge per volume.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The figure is negative.</exception>
    public static VolumetricCharge FromBicarbonate(MassConcentration asBicarbonate) => VolumetricCharge.FromMilliequivalentsPerLitre(
        Guard.NotNegative(Boundary.MilligramsPerLitre(asBicarbonate), "mg/L", nameof(asBicarbonate)) / BicarbonateGramsPerEquivalent);

    /// <summary>The part of an alkalinity that is reported as carbonate, CO₃; add that of the bicarbonate.</summary>
    /// <param name="asCarbonate">The report's figure; 0 or more.</param>
    /// <returns>The charge per volume.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The figure is negative.</exception>
    public static VolumetricCharge FromCarbonate(MassConcentration asCarbonate) => VolumetricCharge.FromMilliequivalentsPerLitre(
        Guard.NotNegative(Boundary.MilligramsPerLitre(asCarbonate), "mg/L", nameof(asCarbonate)) / CarbonateGramsPerEquivalent);

    /// <summary>An alkalinity reported as calcium oxide, CaO: 10 mg/L for a German degree of carbonate hardness.</summary>
    /// <param name="asCalciumOxide">The report's figure; 0 or more.</param>
    /// <returns>The charge per volume.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The figure is negative.</exception>
    public static VolumetricCharge FromCalciumOxide(MassConcentration asCalciumOxide) => VolumetricCharge.FromMilliequivalentsPerLitre(
        Guard.NotNegative(Boundary.MilligramsPerLitre(asCalciumOxide), "mg/L", nameof(asCalciumOxide)) / CalciumOxideGramsPerEquivalent);

    /// <summary>The alkalinity that a titration or a drop test found.</summary>
    /// <param name="acid">The acid used to the end point; 0 or more.</param>
    /// <param name="strength">The charge that the acid takes per volume of it: 20 meq/L for 0.02 N, which is 0.01 mol/L of sulfuric acid.</param>
    /// <param name="sample">The water titrated; more than 0.</param>
    /// <returns>The charge per volume of water. The end point itself takes 0.03 meq/L of it at pH 4.5 and 0.05 at pH 4.3.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A volume is outside what is allowed.</exception>
    public static VolumetricCharge FromTitration(Volume acid, VolumetricCharge strength, Volume sample) => VolumetricCharge.FromMilliequivalentsPerLitre(
        strength.MilliequivalentsPerLitre * Guard.NotNegative(Boundary.Litres(acid), "L", nameof(acid))
        / Guard.Positive(Boundary.Litres(sample), "L", nameof(sample)));

    /// <summary>What a report in calcium carbonate would say.</summary>
    /// <param name="alkalinity">The charge per volume.</param>
    /// <returns>The figure as calcium carbonate.</returns>
    public static MassConcentration ToCalciumCarbonate(VolumetricCharge alkalinity) =>
        MassConcentration.FromMilligramsPerLiter(alkalinity.MilliequivalentsPerLitre * CalciumCarbonateGramsPerEquivalent);

    /// <summary>What a report in bicarbonate would say.</summary>
    /// <param name="alkalinity">The charge per volume.</param>
    /// <returns>The figure as bicarbonate.</returns>
    public static MassConcentration ToBicarbonate(VolumetricCharge alkalinity) =>
        MassConcentration.FromMilligramsPerLiter(alkalinity.MilliequivalentsPerLitre * BicarbonateGramsPerEquivalent);

    /// <summary>What a report in calcium oxide would say: ten times the German degrees of carbonate hardness.</summary>
    /// <param name="alkalinity">The charge per volume.</param>
    /// <returns>The figure as calcium oxide.</returns>
    public static MassConcentration ToCalciumOxide(VolumetricCharge alkalinity) =>
        MassConcentration.FromMilligramsPerLiter(alkalinity.MilliequivalentsPerLitre * CalciumOxideGramsPerEquivalent);
}
