using System.Text.Json.Serialization;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Soil;

/// <summary>The exchangeable cations of a soil per mass, and the exchange capacity by summation.</summary>
/// <remarks>
/// Immutable; equal when all members are equal. Exact sums and shares. With acidity measured at the soil's own pH the sum is the effective capacity,
/// with acidity by a buffer that of the buffer's pH; free lime or salt in the soil makes it too large.
/// </remarks>
/// <example><code>
/// ExchangeableCations cations = new(
///     calcium: Ion.Calcium.Charge(MassFraction.FromMilligramsPerKilogram(1600)),
///     magnesium: Ion.Magnesium.Charge(MassFraction.FromMilligramsPerKilogram(133)),
///     potassium: Ion.Potassium.Charge(MassFraction.FromMilligramsPerKilogram(379)),
///     sodium: Ion.Sodium.Charge(MassFraction.FromMilligramsPerKilogram(22)),
///     acidity: ExchangeableCharge.FromMilliequivalentsPer100Grams(2.4));
/// Console.WriteLine(cations.Capacity);
/// Console.WriteLine(cations.BaseSaturation);
/// </code></example>
public sealed record ExchangeableCations
{
    /// <summary>Describes the exchangeable cations of a soil.</summary>
    /// <param name="calcium">Calcium.</param>
    /// <param name="magnesium">Magnesium.</param>
    /// <param name="potassium">Potassium.</param>
    /// <param name="sodium">Sodium.</param>
    /// <param name="acidity">Hydrogen and aluminium.</param>
    /// <exception cref="ArgumentOutOfRangeException">All are zero.</exception>
    public ExchangeableCations(
        ExchangeableCharge calcium,
        ExchangeableCharge magnesium,
        ExchangeableCharge potassium,
        ExchangeableCharge sodium,
        ExchangeableCharge acidity)
    {
        Calcium = calcium;
        Magnesium = magnesium;
        Potassium = potassium;
        Sodium = sodium;
        Acidity = acidity;
        Guard.Positive(Capacity.CentimolesPerKilogram, "cmol(c)/kg", nameof(calcium));
    }

    /// <summary>Calcium.</summary>
    public ExchangeableCharge Calcium { get; }

    /// <summary>Magnesium.</summary>
    public ExchangeableCharge Magnesium { get; }

    /// <summary>Potassium.</summary>
    public ExchangeableCharge Potassium { get; }

    /// <summary>Sodium.</summary>
    public ExchangeableCharge Sodium { get; }

    /// <summary>Hydrogen and aluminium.</summary>
    public ExchangeableCharge Acidity { get; }

    /// <summary>The cation exchange capacity, CEC, by summation.</summary>
    [JsonIgnore]
    public ExchangeableCharge Capacity => Bases + Acidity;

    /// <summary>Calcium, magnesium, potassium and sodium together.</summary>
    [JsonIgnore]
    public ExchangeableCharge Bases => Calcium + Magnesium + Potassium + Sodium;

    /// <summary>The share of the bases in the capacity.</summary>
    [JsonIgnore]
    public Ratio BaseSaturation => Share(Bases);

    /// <summary>The share of sodium in the capacity, ESP.</summary>
    [JsonIgnore]
    public Ratio ExchangeableSodium => Share(Sodium);

    /// <summary>The share of one of the cations in the capacity.</summary>
    /// <param name="part">A charge that is part of the capacity: <see cref="Calcium"/>, or two of them together.</param>
    /// <returns>The share.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The charge is more than the capacity.</exception>
    public Ratio Share(ExchangeableCharge part) => Ratio.FromPercent(
        100 * Guard.Within(part.CentimolesPerKilogram, 0, Capacity.CentimolesPerKilogram, "cmol(c)/kg", nameof(part)) / Capacity.CentimolesPerKilogram);

    /// <summary>The same cations per volume, as the liming methods by saturation take them; sodium goes with potassium.</summary>
    /// <param name="bulkDensity">The mass of dry soil per volume; above zero.</param>
    /// <param name="aluminium">The aluminium in the acidity; not more than it.</param>
    /// <returns>The cations, with <see cref="Acidity"/> as the potential acidity.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The density is not above zero, or the aluminium is more than the acidity.</exception>
    public SoilCations PerVolume(Density bulkDensity, ExchangeableCharge aluminium)
    {
        Guard.Within(aluminium.CentimolesPerKilogram, 0, Acidity.CentimolesPerKilogram, "cmol(c)/kg", nameof(aluminium));
        return SoilCations.FromMass(Calcium, Magnesium, Potassium + Sodium, aluminium, bulkDensity, Acidity);
    }

    /// <summary>The cations in invariant culture.</summary>
    /// <returns>For instance <c>Ca 8, Mg 1.1, K 0.97, Na 0.1, acidity 2.4 cmol(c)/kg</c>.</returns>
    public override string ToString() =>
        $"Ca {Guard.Number(Calcium.CentimolesPerKilogram)}, Mg {Guard.Number(Magnesium.CentimolesPerKilogram)}, K {Guard.Number(Potassium.CentimolesPerKilogram)}, "
        + $"Na {Guard.Number(Sodium.CentimolesPerKilogram)}, acidity {Guard.Number(Acidity.CentimolesPerKilogram)} cmol(c)/kg";
}
