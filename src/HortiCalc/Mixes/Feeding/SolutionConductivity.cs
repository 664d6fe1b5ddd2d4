using HortiCalc.Evidence;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Mixes;

/// <summary>The electric conductivity of waters and nutrient solutions, from their ions.</summary>
public static class SolutionConductivity
{
    /// <summary>The conductivity at 25 °C, which meters with compensation show at any temperature.</summary>
    /// <param name="solution">The ions; they should balance in charge.</param>
    /// <param name="method">The method, or <see langword="null"/> for <see cref="ConductivityMethod.DiffusionCoefficients"/>.</param>
    /// <returns>The conductivity; 0 for pure water, whose real 0.00006 mS/cm no method here counts.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The solution is stronger than the method was published for, or holds what it does not know.</exception>
    /// <example><code>
    /// Estimate&lt;ElectricConductivity&gt; reading = SolutionConductivity.Of(NutrientFormulas.HoaglandOne.Macronutrients);
    /// Console.WriteLine(reading.Value.MillisiemensPerCentimeter);   // 2.14
    /// </code></example>
    public static Estimate<ElectricConductivity> Of(SolutionIons solution, ConductivityMethod? method = null)
    {
        Guard.NotNull(solution);
        ConductivityMethod chosen = method ?? ConductivityMethod.DiffusionCoefficients;
        return new Estimate<ElectricConductivity>(
            ElectricConductivity.FromMillisiemensPerCentimeter(chosen.MillisiemensPerCentimetre(solution)), chosen.Evidence);
    }

    /// <summary>The conductivity that one ion adds where nothing holds it back.</summary>
    /// <param name="ion">The ion.</param>
    /// <returns>mS/cm for a millimole per litre at infinite dilution and 25 °C, or <see langword="null"/> where no coefficient is printed.</returns>
    /// <remarks>Source: diffusion coefficients of PHREEQC, U.S. Geological Survey, https://github.com/usgs-coupled/phreeqc.</remarks>
    /// <exception cref="ArgumentOutOfRangeException">The ion is not a defined one.</exception>
    public static ElectricConductivity? LimitingPerMillimole(SolutionIon ion) =>
        ConductivityKernels.SquareCentimetresPerMole(Guard.Defined(ion)) is double molar and > 0
            ? ElectricConductivity.FromMillisiemensPerCentimeter(molar / 1000)
            : null;
}
