using System.Text.Json.Serialization;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Soil;

/// <summary>The exchangeable cations of a soil per volume, as laboratories of the tropics report them in cmol/dm³.</summary>
/// <remarks>Immutable; equal when all members are equal.</remarks>
/// <example><code>
/// SoilCations cations = new(
///     calcium: VolumetricCharge.FromCentimolesPerLitre(0.8),
///     magnesium: VolumetricCharge.FromCentimolesPerLitre(0.3),
///     potassium: VolumetricCharge.FromCentimolesPerLitre(0.1),
///     aluminium: VolumetricCharge.FromCentimolesPerLitre(1.1),
///     potentialAcidity: VolumetricCharge.FromCentimolesPerLitre(5.0));
/// Console.WriteLine($"{cations.BaseSaturation!.Value.Percent:0}");
/// </code></example>
public sealed record SoilCations
{
    /// <summary>Describes the exchangeable cations of a soil.</summary>
    /// <param name="calcium">Calcium.</param>
    /// <param name="magnesium">Magnesium.</param>
    /// <param name="potassium">Potassium, with sodium where it is reported.</param>
    /// <param name="aluminium">Exchangeable aluminium, by potassium chloride.</param>
    /// <param name="potentialAcidity">Hydrogen and aluminium at pH 7, or <see langword="null"/> where it is not reported.</param>
    public SoilCations(
        VolumetricCharge calcium,
        VolumetricCharge magnesium,
        VolumetricCharge potassium,
        VolumetricCharge aluminium,
        VolumetricCharge? potentialAcidity = null)
    {
        Calcium = calcium;
        Magnesium = magnesium;
        Potassium = potassium;
        Aluminium = aluminium;
        PotentialAcidity = potentialAcidity;
    }

    /// <summary>Calcium.</summary>
    public VolumetricCharge Calcium { get; }

    /// <summary>Magnesium.</summary>
    public VolumetricCharge Magnesium { get; }

    /// <summary>Potassium, with sodium where it is reported.</summary>
    public VolumetricCharge Potassium { get; }

    /// <summary>Exchangeable aluminium.</summary>
    public VolumetricCharge Aluminium { get; }

    /// <summary>Hydrogen and aluminium at pH 7, or <see langword="null"/> where it is not reported.</summary>
    public VolumetricCharge? PotentialAcidity { get; }

    /// <summary>The share of bases in the exchange capacity at pH 7; <see langword="null"/> where the potential acidity is not reported or nothing is held.</summary>
    [JsonIgnore]
    public Ratio? BaseSaturation => PotentialAcidity is { } acidity && BasesCentimolesPerLitre + acidity.CentimolesPerLitre > 0
        ? Ratio.FromPercent(100 * BasesCentimolesPerLitre / (BasesCentimolesPerLitre + acidity.CentimolesPerLitre))
        : null;

    /// <summary>The share of aluminium in the effective exchange capacity, bases and aluminium; <see langword="null"/> where nothing is held.</summary>
    [JsonIgnore]
    public Ratio? AluminiumSaturation => BasesCentimolesPerLitre + Aluminium.CentimolesPerLitre is > 0 and double held
        ? Ratio.FromPercent(100 * Aluminium.CentimolesPerLitre / held)
        : null;

    internal double BasesCentimolesPerLitre => Calcium.CentimolesPerLitre + Magnesium.CentimolesPerLitre + Potassium.CentimolesPerLitre;

    /// <summary>The same cations from a report per mass, in meq/100 g.</summary>
    /// <param name="calcium">Calcium.</param>
    /// <param name="magnesium">Magnesium.</param>
    /// <param name="potassium">Potassium, with sodium where it is reported.</param>
    /// <param name="aluminium">Exchangeable aluminium.</param>
    /// <param name="bulkDensity">The mass of dry soil per volume; above zero.</param>
    /// <param name="potentialAcidity">Hydrogen and aluminium at pH 7, or <see langword="null"/> where it is not reported.</param>
    /// <returns>The cations per volume.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The bulk density is not above zero.</exception>
    public static SoilCations FromMass(
        ExchangeableCharge calcium,
        ExchangeableCharge magnesium,
        ExchangeableCharge potassium,
        ExchangeableCharge aluminium,
        Density bulkDensity,
        ExchangeableCharge? potentialAcidity = null)
    {
        Guard.Positive(Boundary.KilogramsPerCubicMetre(bulkDensity), "kg/m³", nameof(bulkDensity));
        return new SoilCations(
            calcium * bulkDensity, magnesium * bulkDensity, potassium * bulkDensity, aluminium * bulkDensity, potentialAcidity is { } acidity ? acidity * bulkDensity : null);
    }

    /// <summary>The cations in cmol/L and invariant culture.</summary>
    /// <returns>For instance <c>Ca 0.8, Mg 0.3, K 0.1, Al 1.1, H+Al 5 cmol/L</c>.</returns>
    public override string ToString()
    {
        string acidity = PotentialAcidity is { } given ? $", H+Al {Guard.Number(given.CentimolesPerLitre)}" : "";
        return $"Ca {Guard.Number(Calcium.CentimolesPerLitre)}, Mg {Guard.Number(Magnesium.CentimolesPerLitre)}, "
            + $"K {Guard.Number(Potassium.CentimolesPerLitre)}, Al {Guard.Number(Aluminium.CentimolesPerLitre)}{acidity} cmol/L";
    }
}
