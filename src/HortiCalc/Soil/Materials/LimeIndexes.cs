using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Soil;

/// <summary>
/// Conversion between the figures that state how much of a liming material is effective. Only the scale is converted: schemes that judge
/// fineness by other sieves give the same product other figures.
/// </summary>
/// <example><code>
/// double missouri = LimeIndexes.Convert(1260, LimeIndex.EffectiveCalciumCarbonateEquivalentPounds, LimeIndex.EffectiveNeutralizingMaterial);
/// Console.WriteLine(missouri);   // 504
/// </code></example>
public static class LimeIndexes
{
    /// <summary>The share of effective calcium carbonate that a figure states.</summary>
    /// <param name="value">The figure, in the index's own unit; zero or more.</param>
    /// <param name="index">The index.</param>
    /// <returns>The share; of the neutralising value as calcium oxide, the equivalent as calcium carbonate.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The figure is negative or not finite, or the index is unknown.</exception>
    public static Ratio ToEffective(double value, LimeIndex index) =>
        Ratio.FromDecimalFractions(Guard.NotNegative(value, "", nameof(value)) / OfPure(index));

    /// <summary>The figure that states a share of effective calcium carbonate.</summary>
    /// <param name="effective">The share; zero or more.</param>
    /// <param name="index">The index.</param>
    /// <returns>The figure, in the index's own unit.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The share is negative or not finite, or the index is unknown.</exception>
    public static double FromEffective(Ratio effective, LimeIndex index) =>
        Guard.NotNegative(Boundary.Fraction(effective), "", nameof(effective)) * OfPure(index);

    /// <summary>The same share by another index.</summary>
    /// <param name="value">The figure, in the unit of the index it is stated in; zero or more.</param>
    /// <param name="from">The index it is stated in.</param>
    /// <param name="to">The index wanted.</param>
    /// <returns>The figure by the index wanted.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The figure is negative or not finite, or an index is unknown.</exception>
    public static double Convert(double value, LimeIndex from, LimeIndex to) =>
        Guard.NotNegative(value, "", nameof(value)) / OfPure(from) * OfPure(to);

    /// <summary>The figure of pure, fine, dry calcium carbonate.</summary>
    private static double OfPure(LimeIndex index) => Guard.Defined(index) switch
    {
        LimeIndex.EffectiveCalciumCarbonateEquivalentPounds or LimeIndex.EffectiveNeutralizingPower => 2000,
        LimeIndex.EffectiveNeutralizingMaterial => 800,
        LimeIndex.NeutralisingValueAsCalciumOxide => 100 / LimeChemistry.CarbonatePerOxide,
        _ => 100,
    };
}
