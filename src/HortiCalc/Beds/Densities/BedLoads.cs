using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Beds;

/// <summary>What soil weighs on a roof, balcony or bench, in the units that an engineer asks for.</summary>
/// <example><code>
/// BulkDensity wet = BulkDensities.Named("texas-yard-saturated", "vegetable soil");
/// Estimate&lt;AreaDensity&gt; load = wet.LoadOf(Length.FromCentimeters(30)); // 340 kg/m² and a caution
/// Pressure pressure = BedLoads.PressureOf(load.Value); // 3.33 kPa, which is kN/m²
/// </code></example>
public static class BedLoads
{
    private const double MetresPerSecondSquared = 9.80665;

    /// <summary>A mass on an area as a pressure: kilonewtons per square metre are kilopascals.</summary>
    /// <param name="load">The mass on each area; zero or more.</param>
    /// <returns>The pressure, at standard gravity.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The load is negative.</exception>
    public static Pressure PressureOf(AreaDensity load) => Pressure.FromKilopascals(
        Guard.NotNegative(Boundary.GramsPerSquareMetre(load) / 1000, "kg/m²", nameof(load)) * MetresPerSecondSquared / 1000);
}
