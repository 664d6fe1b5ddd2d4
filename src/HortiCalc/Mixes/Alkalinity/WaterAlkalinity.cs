using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Mixes;

/// <summary>Alkalinity in the three ways that laboratories report it: as calcium carbonate, as bicarbonate, in milliequivalents.</summary>
/// <remarks>
/// A report in mg/L says nothing until it says of what: as bicarbonate the figure is 1.22 times that as calcium carbonate. One meq/L is 50.04 mg/L as
/// CaCO₃ and 61.02 mg/L as HCO₃.
/// </remarks>
/// <example><code>
/// VolumetricCharge alkalinity = WaterAlkalinity.FromCalciumCarbonate(MassConcentration.FromMilligramsPerLiter(250));
/// double milliequivalents = alkalinity.MilliequivalentsPerLitre;   // 5.0
/// </code></example>
public static class WaterAlkalinity
{
    internal static readonly double CalciumCarbonateGramsPerEquivalent = ChemicalFormula.GramsPerMole("CaCO3") / 2;
    internal static readonly double BicarbonateGramsPerEquivalent = ChemicalFormula.GramsPerMole("HCO3");

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
}
