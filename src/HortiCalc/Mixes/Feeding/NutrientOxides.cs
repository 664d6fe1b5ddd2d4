using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Mixes;

/// <summary>From the oxides of labels to elements and back, by molar masses.</summary>
/// <remarks>Labels in Europe and America state phosphorus as P₂O₅ and potassium as K₂O, those in Australia the elements.</remarks>
/// <example><code>
/// MassFraction phosphorus = NutrientOxides.ToElement(NutrientOxide.Phosphate, MassFraction.FromPercent(52));   // 22.7 %
/// </code></example>
public static class NutrientOxides
{
    /// <summary>The element in an oxide.</summary>
    /// <param name="oxide">The oxide.</param>
    /// <param name="share">The share stated as the oxide; from 0 to 100 %.</param>
    /// <returns>The share of the element.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The oxide is not a defined one, or the share is outside 0 to 100 %.</exception>
    public static MassFraction ToElement(NutrientOxide oxide, MassFraction share) =>
        MassFraction.FromPercent(Percent(share, nameof(share)) * ElementPerOxide(Guard.Defined(oxide)));

    /// <summary>The oxide that a label would state for an element.</summary>
    /// <param name="oxide">The oxide.</param>
    /// <param name="share">The share of the element; from 0 to 100 %.</param>
    /// <returns>The share as the oxide, which may be above 100 %: oxides are a way to count.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The oxide is not a defined one, or the share is outside 0 to 100 %.</exception>
    public static MassFraction FromElement(NutrientOxide oxide, MassFraction share) =>
        MassFraction.FromPercent(Percent(share, nameof(share)) / ElementPerOxide(Guard.Defined(oxide)));

    internal static double ElementPerOxide(NutrientOxide oxide)
    {
        (string formula, string symbol) = oxide switch
        {
            NutrientOxide.Phosphate => ("P2O5", "P"),
            NutrientOxide.Potash => ("K2O", "K"),
            NutrientOxide.Magnesia => ("MgO", "Mg"),
            NutrientOxide.Lime => ("CaO", "Ca"),
            _ => ("SO3", "S"),
        };
        return ChemicalFormula.Atoms(formula)[symbol] * AtomicWeights.Of(symbol) / ChemicalFormula.GramsPerMole(formula);
    }

    private static double Percent(MassFraction share, string parameter) =>
        Guard.Within(Boundary.MassFraction(share) * 100, 0, 100, "% by mass", parameter);
}
