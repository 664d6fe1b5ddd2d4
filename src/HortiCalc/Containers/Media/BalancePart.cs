using HortiCalc.Display;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Containers;

/// <summary>One material of a mix with what the balance of the mix is reckoned from.</summary>
/// <remarks>Immutable; equal when all members are equal.</remarks>
public sealed record BalancePart
{
    /// <summary>Describes a material in a mix.</summary>
    /// <param name="material">The material.</param>
    /// <param name="volume">Its loose volume; zero or more.</param>
    /// <param name="dryBulkDensity">Its dry mass by loose volume; greater than zero.</param>
    /// <param name="carbon">Carbon by dry mass; from 0 to 100 %. About half of organic matter is carbon.</param>
    /// <param name="nitrogen">Nitrogen by dry mass; from 0 to 100 %.</param>
    /// <param name="phosphorus">Phosphorus, the element, by dry mass; from 0 to 100 %.</param>
    /// <param name="potassium">Potassium, the element, by dry mass; from 0 to 100 %.</param>
    /// <exception cref="ArgumentException">The material is empty.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A value lies outside what is said above, or the elements are more than the dry mass together.</exception>
    public BalancePart(string material, Volume volume, Density dryBulkDensity, MassFraction carbon, MassFraction nitrogen, MassFraction phosphorus = default, MassFraction potassium = default)
    {
        Material = Guard.NotBlank(material);
        Guard.NotNegative(Boundary.Litres(volume), "L", nameof(volume));
        Guard.Positive(Boundary.KilogramsPerCubicMetre(dryBulkDensity), "kg/m³", nameof(dryBulkDensity));
        double together = Guard.Within(Boundary.MassFraction(carbon) * 100, 0, 100, "%", nameof(carbon))
            + Guard.Within(Boundary.MassFraction(nitrogen) * 100, 0, 100, "%", nameof(nitrogen))
            + Guard.Within(Boundary.MassFraction(phosphorus) * 100, 0, 100, "%", nameof(phosphorus))
            + Guard.Within(Boundary.MassFraction(potassium) * 100, 0, 100, "%", nameof(potassium));
        if (together > 100 + 1e-9)
        {
            throw new ArgumentOutOfRangeException(
                nameof(carbon), $"Carbon, nitrogen, phosphorus and potassium were {Guard.Number(together)} % together; allowed: up to 100 %, of the dry mass.");
        }

        Volume = HouseUnits.Normalise(volume);
        DryBulkDensity = HouseUnits.Normalise(dryBulkDensity);
        Carbon = HouseUnits.Normalise(carbon);
        Nitrogen = HouseUnits.Normalise(nitrogen);
        Phosphorus = HouseUnits.Normalise(phosphorus);
        Potassium = HouseUnits.Normalise(potassium);
    }

    /// <summary>The material.</summary>
    public string Material { get; }

    /// <summary>Its loose volume.</summary>
    public Volume Volume { get; }

    /// <summary>Its dry mass by loose volume.</summary>
    public Density DryBulkDensity { get; }

    /// <summary>Carbon by dry mass.</summary>
    public MassFraction Carbon { get; }

    /// <summary>Nitrogen by dry mass.</summary>
    public MassFraction Nitrogen { get; }

    /// <summary>Phosphorus, the element, by dry mass.</summary>
    public MassFraction Phosphorus { get; }

    /// <summary>Potassium, the element, by dry mass.</summary>
    public MassFraction Potassium { get; }

    internal double DryKilograms => Boundary.Litres(Volume) / 1000 * Boundary.KilogramsPerCubicMetre(DryBulkDensity);

    /// <summary>The part in invariant culture.</summary>
    /// <returns>For instance <c>40 L bark</c>.</returns>
    public override string ToString() => $"{QuantityText.Of(Volume, TextStyle.Default)} {Material}";
}
