using HortiCalc.Evidence;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Containers;

/// <summary>What a filled pot weighs. Exact arithmetic on what is given.</summary>
/// <example><code>
/// Mass dry = PotWeight.Dry(Volume.FromLiters(40), Density.FromKilogramsPerCubicMeter(200), empty: Mass.FromKilograms(3));
/// Mass wet = PotWeight.Wet(Volume.FromLiters(40), Density.FromKilogramsPerCubicMeter(200), water: Ratio.FromPercent(55), empty: Mass.FromKilograms(3));
/// Pressure load = PotWeight.Load(wet * 6, Area.FromSquareMeters(1.2));
/// Console.WriteLine($"{dry.Kilograms} to {wet.Kilograms} kg each, {load.Kilopascals:0.0} kPa");   // 11 to 33 kg each, 1.6 kPa
/// </code></example>
public static class PotWeight
{
    // The particle density usually taken for mineral soil (common practice); organic parts are lighter.
    private const double HeaviestGrainsKilogramsPerCubicMetre = 2650;

    /// <summary>What to take care of where full pots are lifted, or stand on a balcony, a roof or a bench.</summary>
    public static IReadOnlyList<Caution> Cautions { get; } = ValueList<Caution>.Of([ContainerCautions.Lifting, ContainerCautions.Load]);

    /// <summary>A pot whose medium is dry.</summary>
    /// <param name="medium">The volume of the medium; zero or more.</param>
    /// <param name="dryBulkDensity">Its dry mass by volume; zero or more.</param>
    /// <param name="empty">The mass of the empty pot; zero or more.</param>
    /// <returns>The mass.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is negative.</exception>
    public static Mass Dry(Volume medium, Density dryBulkDensity, Mass empty) => Wet(medium, dryBulkDensity, Ratio.Zero, empty);

    /// <summary>A pot whose medium holds water.</summary>
    /// <param name="medium">The volume of the medium; zero or more.</param>
    /// <param name="dryBulkDensity">Its dry mass by volume; zero or more.</param>
    /// <param name="water">
    /// The water as a share of the volume, for a watered pot <see cref="DrainedMedium.ContainerCapacity"/>; from 0 % to the pores that are there:
    /// mineral grains are 2650 kg/m³ and nothing usual in a medium is heavier.
    /// </param>
    /// <param name="empty">The mass of the empty pot; zero or more.</param>
    /// <returns>The mass, with water of 1 kg/L.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value lies outside what is said above.</exception>
    public static Mass Wet(Volume medium, Density dryBulkDensity, Ratio water, Mass empty)
    {
        double litres = Guard.NotNegative(Boundary.Litres(medium), "L", nameof(medium));
        double dry = Guard.NotNegative(Boundary.KilogramsPerCubicMetre(dryBulkDensity), "kg/m³", nameof(dryBulkDensity));
        double mostPercent = Math.Max(0, 1 - dry / HeaviestGrainsKilogramsPerCubicMetre) * 100;
        double share = Guard.Within(Boundary.Fraction(water) * 100, 0, mostPercent * (1 + 1e-12), "%", nameof(water)) / 100;
        return Mass.FromKilograms(litres * (dry / 1000 + share) + Guard.NotNegative(Boundary.Kilograms(empty), "kg", nameof(empty)));
    }

    /// <summary>The load that a mass is on a floor.</summary>
    /// <param name="mass">The mass; zero or more.</param>
    /// <param name="area">The floor that bears it; greater than zero.</param>
    /// <returns>The load, by standard gravity: 1 kPa is 102 kg on a square metre.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value lies outside what is said above.</exception>
    public static Pressure Load(Mass mass, Area area) => Pressure.FromKilopascals(
        Guard.NotNegative(Boundary.Kilograms(mass), "kg", nameof(mass)) * 9.80665 / 1000 / Guard.Positive(Boundary.SquareMetres(area), "m²", nameof(area)));
}
