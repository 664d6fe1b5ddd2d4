using System.Text.Json.Serialization;
using HortiCalc.Evidence;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Containers;

/// <summary>What a mix of materials comes to: its dry mass, carbon, nitrogen and their ratio. Exact arithmetic on what is given.</summary>
/// <remarks>
/// Ratios of carbon to nitrogen are not averaged: the masses of carbon and of nitrogen are added, so that the heavy and the rich part counts most. Immutable; equal when
/// parts and loss are.
/// </remarks>
/// <example><code>
/// MixBalance mix = new(
///     [
///         new("pine bark", Volume.FromLiters(60), Density.FromKilogramsPerCubicMeter(180), MassFraction.FromPercent(50), MassFraction.FromPercent(0.3)),
///         new("compost", Volume.FromLiters(40), Density.FromKilogramsPerCubicMeter(400), MassFraction.FromPercent(25), MassFraction.FromPercent(1.5)),
///     ],
///     mixingLoss: Ratio.FromPercent(10));
/// Console.WriteLine($"C:N {mix.CarbonToNitrogen:0}, {mix.DryBulkDensity.KilogramsPerCubicMeter:0} kg/m³ dry");
/// </code></example>
public sealed record MixBalance
{
    /// <summary>Adds up a mix.</summary>
    /// <param name="parts">The materials; one or more, together with some volume.</param>
    /// <param name="mixingLoss">The share of the loose volume that is lost when fine parts fall between coarse ones; 0 % or more, below 100 %. No published figure was found:
    /// mix a bucket and measure.</param>
    /// <exception cref="ArgumentNullException">The parts are <see langword="null"/>.</exception>
    /// <exception cref="ArgumentException">There are no parts.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The parts have no volume together, or the loss lies outside what is said above.</exception>
    public MixBalance(IReadOnlyList<BalancePart> parts, Ratio mixingLoss)
    {
        Parts = ValueList<BalancePart>.Of(Guard.NotNull(parts));
        if (Parts.Count == 0)
            throw new ArgumentException("parts was empty; allowed: one material or more.", nameof(parts));
        Guard.Positive(LooseLitres, "L", nameof(parts));
        MediumBatch.Loss(mixingLoss);
        MixingLoss = HouseUnits.Normalise(mixingLoss);
    }

    /// <summary>The materials.</summary>
    public IReadOnlyList<BalancePart> Parts { get; }

    /// <summary>The share of the loose volume that is lost in mixing.</summary>
    public Ratio MixingLoss { get; }

    /// <summary>The volume of the mix.</summary>
    [JsonIgnore]
    public Volume Volume => Volume.FromLiters(LooseLitres * (1 - Boundary.Fraction(MixingLoss)));

    /// <summary>The dry mass.</summary>
    [JsonIgnore]
    public Mass DryMass => Mass.FromKilograms(DryKilograms);

    /// <summary>The dry mass by volume of the mix.</summary>
    [JsonIgnore]
    public Density DryBulkDensity => Density.FromKilogramsPerCubicMeter(DryKilograms / (LooseLitres * (1 - Boundary.Fraction(MixingLoss))) * 1000);

    /// <summary>All carbon.</summary>
    [JsonIgnore]
    public Mass Carbon => Mass.FromKilograms(Parts.Sum(part => part.DryKilograms * Boundary.MassFraction(part.Carbon)));

    /// <summary>All nitrogen, most of it bound in organic matter.</summary>
    [JsonIgnore]
    public Mass Nitrogen => Mass.FromKilograms(Parts.Sum(part => part.DryKilograms * Boundary.MassFraction(part.Nitrogen)));

    /// <summary>All phosphorus, the element.</summary>
    [JsonIgnore]
    public Mass Phosphorus => Mass.FromKilograms(Parts.Sum(part => part.DryKilograms * Boundary.MassFraction(part.Phosphorus)));

    /// <summary>All potassium, the element.</summary>
    [JsonIgnore]
    public Mass Potassium => Mass.FromKilograms(Parts.Sum(part => part.DryKilograms * Boundary.MassFraction(part.Potassium)));

    /// <summary>The ratio of carbon to nitrogen by mass; <see langword="null"/> where there is no nitrogen.</summary>
    [JsonIgnore]
    public double? CarbonToNitrogen => Boundary.Kilograms(Nitrogen) > 0 ? Boundary.Kilograms(Carbon) / Boundary.Kilograms(Nitrogen) : null;

    /// <summary>The nitrogen that must be added to bring the mix to a ratio of carbon to nitrogen.</summary>
    /// <param name="wanted">The ratio wanted; greater than zero. Below 20 a mix releases nitrogen, above 30 it ties it up (Alberta Agriculture).</param>
    /// <returns>The nitrogen; zero where there is enough.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The ratio is not greater than zero.</exception>
    public Mass NitrogenToReach(double wanted) => Mass.FromKilograms(
        Math.Max(0, Boundary.Kilograms(Carbon) / Guard.Positive(wanted, "") - Boundary.Kilograms(Nitrogen)));

    /// <summary>The mix in invariant culture.</summary>
    /// <returns>For instance <c>60 L pine bark, 40 L compost: C:N 36</c>.</returns>
    public override string ToString()
    {
        string ratio = CarbonToNitrogen is { } known ? $"C:N {Guard.Number(Math.Round(known, 1, MidpointRounding.AwayFromZero))}" : "no nitrogen";
        return $"{string.Join(", ", Parts)}: {ratio}";
    }

    private double LooseLitres => Parts.Sum(part => Boundary.Litres(part.Volume));

    private double DryKilograms => Parts.Sum(part => part.DryKilograms);
}
