using System.Text.Json.Serialization;
using HortiCalc.Evidence;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Containers;

/// <summary>What a core of medium told: how much water drained out of it when it was full, and what it weighed drained and dry.</summary>
/// <remarks>
/// <para>Air space is the water that drains; container capacity what stays, by weight; total porosity both together, all as shares of the core. They hold for the
/// height of the core: a taller one has more air.</para>
/// <para>Readings that cannot be are refused: more water than the core has room for, or a dry core heavier than the drained one. Those that would need particles
/// denser than quartz are taken up with a caution (<see cref="Cautions"/>). Without scales, see <see cref="SoakReading"/>. Immutable; equal when all members are
/// equal.</para>
/// </remarks>
/// <example><code>
/// PorometerReading bark = new(
///     core: Volume.FromMilliliters(347.5), drained: Volume.FromMilliliters(107.7), drainedMass: Mass.FromGrams(229.3), dryMass: Mass.FromGrams(62.5));
/// Console.WriteLine($"{bark.AirSpace.Percent:0} % air, {bark.ContainerCapacity.Percent:0} % water");
/// </code></example>
public sealed record PorometerReading
{
    private const double QuartzKilogramsPerCubicMetre = 2650;

    /// <summary>Takes up a reading.</summary>
    /// <param name="core">The volume of the core; above zero.</param>
    /// <param name="drained">The water that drained out of it after it was full; from zero to the core.</param>
    /// <param name="drainedMass">The mass of the core after it has drained, without its ring.</param>
    /// <param name="dryMass">Its mass after drying; above zero, not more than <paramref name="drainedMass"/>.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value lies outside what is said above, or water and air would be more than the core.</exception>
    public PorometerReading(Volume core, Volume drained, Mass drainedMass, Mass dryMass)
    {
        double coreLitres = Guard.Positive(Boundary.Litres(core), "L", nameof(core));
        double drainedLitres = Guard.Within(Boundary.Litres(drained), 0, coreLitres, "L", nameof(drained));
        double dryKilograms = Guard.Positive(Boundary.Kilograms(dryMass), "kg", nameof(dryMass));
        double wetKilograms = Guard.AtLeast(Boundary.Kilograms(drainedMass), dryKilograms, "kg", nameof(drainedMass));

        // Of water a litre is a kilogram here, as in the method; 0.3 % off at 25 °C.
        double mostKilograms = dryKilograms + coreLitres - drainedLitres;
        if (wetKilograms > mostKilograms * (1 + 1e-12))
        {
            throw Guard.Refused(
                nameof(drainedMass), wetKilograms, "kg", $"up to {Guard.Number(mostKilograms)} kg, beyond which water and air are more than the core holds");
        }

        Core = HouseUnits.Normalise(core);
        Drained = HouseUnits.Normalise(drained);
        DrainedMass = HouseUnits.Normalise(drainedMass);
        DryMass = HouseUnits.Normalise(dryMass);
    }

    /// <summary>The volume of the core.</summary>
    public Volume Core { get; }

    /// <summary>The water that drained out of it after it was full.</summary>
    public Volume Drained { get; }

    /// <summary>The mass of the core after it has drained.</summary>
    public Mass DrainedMass { get; }

    /// <summary>Its mass after drying.</summary>
    public Mass DryMass { get; }

    /// <summary>Air space at the height of the core, as a share of its volume.</summary>
    [JsonIgnore]
    public Ratio AirSpace => Ratio.FromPercent(100 * Boundary.Litres(Drained) / Boundary.Litres(Core));

    /// <summary>Container capacity at the height of the core: the water that stays, as a share of its volume.</summary>
    [JsonIgnore]
    public Ratio ContainerCapacity => Ratio.FromPercent(100 * (Boundary.Kilograms(DrainedMass) - Boundary.Kilograms(DryMass)) / Boundary.Litres(Core));

    /// <summary>Total porosity: water and air together, as a share of the core's volume.</summary>
    [JsonIgnore]
    public Ratio TotalPorosity
    {
        get
        {
            double percent = AirSpace.Percent + ContainerCapacity.Percent;

            // Shares that fill the core may add up past it, or just short of it, in the last digit.
            return Ratio.FromPercent(percent > 100 - 1e-9 ? 100 : percent);
        }
    }

    /// <summary>Air as a share of the pores, which is another figure than air space.</summary>
    [JsonIgnore]
    public Ratio AirOfPores => Ratio.FromPercent(TotalPorosity.Percent == 0 ? 0 : 100 * AirSpace.Percent / TotalPorosity.Percent);

    /// <summary>The dry mass by volume.</summary>
    [JsonIgnore]
    public Density DryBulkDensity => Density.FromKilogramsPerCubicMeter(1000 * Boundary.Kilograms(DryMass) / Boundary.Litres(Core));

    /// <summary>The mass by volume after draining: what the medium in a watered pot weighs.</summary>
    [JsonIgnore]
    public Density DrainedBulkDensity => Density.FromKilogramsPerCubicMeter(1000 * Boundary.Kilograms(DrainedMass) / Boundary.Litres(Core));

    /// <summary>The mean density of the particles that the reading implies: dry mass by the volume that is neither air nor water.</summary>
    /// <returns>The density; <see langword="null"/> where the pores fill the whole core.</returns>
    [JsonIgnore]
    public Density? ImpliedParticleDensity => TotalPorosity.Percent < 100
        ? Density.FromKilogramsPerCubicMeter(DryBulkDensity.KilogramsPerCubicMeter / (1 - TotalPorosity.Percent / 100))
        : null;

    /// <summary>What to doubt: nothing, or that the reading leaves too little room for its particles.</summary>
    [JsonIgnore]
    public IReadOnlyList<Caution> Cautions => ImpliedParticleDensity is { KilogramsPerCubicMeter: <= QuartzKilogramsPerCubicMetre }
        ? ValueList<Caution>.Of([])
        : ValueList<Caution>.Of([PhysicsCautions.Particles]);

    /// <summary>The reading in invariant culture.</summary>
    /// <returns>For instance <c>31 % air, 48 % water, 79 % pores</c>.</returns>
    public override string ToString() =>
        $"{Rounded(AirSpace)} % air, {Rounded(ContainerCapacity)} % water, {Rounded(TotalPorosity)} % pores";

    private static string Rounded(Ratio share) => Guard.Number(Math.Round(share.Percent, 1, MidpointRounding.AwayFromZero));
}
