using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Beds;

/// <summary>From wet to dry and back: what a material weighs with the water in it and without. Exact arithmetic.</summary>
/// <remarks>The volume is taken to stay; peat, for one, shrinks when it dries.</remarks>
/// <example><code>
/// Density dry = WaterContent.DryDensity(
///     Density.FromKilogramsPerCubicMeter(600), water: Ratio.FromPercent(50), MoistureBasis.OfWetMass); // 300 kg/m³
/// Ratio water = WaterContent.FromMasses(Mass.FromGrams(750), Mass.FromGrams(600), MoistureBasis.OfDryMass); // 25 %
/// </code></example>
public static class WaterContent
{
    /// <summary>The water content of a sample weighed wet and dry.</summary>
    /// <param name="wet">The wet mass; not less than the dry.</param>
    /// <param name="dry">The dry mass; greater than zero.</param>
    /// <param name="basis">What the share is taken of.</param>
    /// <returns>The water as a share of the mass chosen.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The dry mass is not greater than zero, or the wet is less.</exception>
    public static Ratio FromMasses(Mass wet, Mass dry, MoistureBasis basis)
    {
        double dryKilograms = Guard.Positive(Boundary.Kilograms(dry), "kg", nameof(dry));
        double wetKilograms = Guard.AtLeast(Boundary.Kilograms(wet), dryKilograms, "kg", nameof(wet));
        return Ratio.FromPercent(
            100 * (wetKilograms - dryKilograms) / (Guard.Defined(basis) == MoistureBasis.OfDryMass ? dryKilograms : wetKilograms));
    }

    /// <summary>The dry part of a wet mass.</summary>
    /// <param name="wet">The wet mass; zero or more.</param>
    /// <param name="water">The water content; zero or more, below 100 % where it is of the wet mass.</param>
    /// <param name="basis">What the water content is a share of.</param>
    /// <returns>The dry mass.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The mass or the water content is out of range.</exception>
    public static Mass DryMass(Mass wet, Ratio water, MoistureBasis basis) =>
        Mass.FromKilograms(Guard.NotNegative(Boundary.Kilograms(wet), "kg", nameof(wet)) * DryShare(water, basis));

    /// <summary>What a dry mass weighs with the water in it.</summary>
    /// <param name="dry">The dry mass; zero or more.</param>
    /// <param name="water">The water content; zero or more, below 100 % where it is of the wet mass.</param>
    /// <param name="basis">What the water content is a share of.</param>
    /// <returns>The wet mass.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The mass or the water content is out of range.</exception>
    public static Mass WetMass(Mass dry, Ratio water, MoistureBasis basis) =>
        Mass.FromKilograms(Guard.NotNegative(Boundary.Kilograms(dry), "kg", nameof(dry)) / DryShare(water, basis));

    /// <summary>The dry bulk density of a material of known wet one.</summary>
    /// <param name="wet">The wet bulk density; greater than zero.</param>
    /// <param name="water">The water content; zero or more, below 100 % where it is of the wet mass.</param>
    /// <param name="basis">What the water content is a share of.</param>
    /// <returns>The dry bulk density.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The density or the water content is out of range.</exception>
    public static Density DryDensity(Density wet, Ratio water, MoistureBasis basis) => Density.FromKilogramsPerCubicMeter(
        Guard.Positive(Boundary.KilogramsPerCubicMetre(wet), "kg/m³", nameof(wet)) * DryShare(water, basis));

    /// <summary>The wet bulk density of a material of known dry one.</summary>
    /// <param name="dry">The dry bulk density; greater than zero.</param>
    /// <param name="water">The water content; zero or more, below 100 % where it is of the wet mass.</param>
    /// <param name="basis">What the water content is a share of.</param>
    /// <returns>The wet bulk density.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The density or the water content is out of range.</exception>
    public static Density WetDensity(Density dry, Ratio water, MoistureBasis basis) => Density.FromKilogramsPerCubicMeter(
        Guard.Positive(Boundary.KilogramsPerCubicMetre(dry), "kg/m³", nameof(dry)) / DryShare(water, basis));

    private static double DryShare(Ratio water, MoistureBasis basis)
    {
        double percent = Guard.NotNegative(Boundary.Fraction(water) * 100, "%", nameof(water));
        if (Guard.Defined(basis) == MoistureBasis.OfDryMass)
            return 100 / (100 + percent);
        return percent < 100
            ? (100 - percent) / 100
            : throw Guard.Refused(nameof(water), percent, "%", "0 % or more and below 100 %, of the wet mass");
    }
}
