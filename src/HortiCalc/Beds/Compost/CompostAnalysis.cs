using HortiCalc.Display;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Beds;

/// <summary>What a laboratory reports of a compost.</summary>
/// <remarks>
/// Immutable; equal when all members are equal. Water is a share of the wet mass, as compost laboratories print it; everything else is of the
/// dry mass. A report "as received" must be brought to dry mass first.
/// </remarks>
public sealed record CompostAnalysis
{
    /// <summary>Takes over a report.</summary>
    /// <param name="density">The bulk density as it is delivered, water included; greater than zero.</param>
    /// <param name="water">The water, as a share of the wet mass; zero or more, below 100 %.</param>
    /// <param name="organicMatter">The organic matter, of the dry mass; from 0 to 100 %.</param>
    /// <param name="nitrogen">The total nitrogen, of the dry mass; from 0 to 100 %.</param>
    /// <param name="phosphorus">The total phosphorus as the element, of the dry mass; from 0 to 100 %.</param>
    /// <param name="conductivity">The electrical conductivity of the extract; <see langword="null"/> where it was not measured.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value is out of range.</exception>
    public CompostAnalysis(
        Density density,
        Ratio water,
        MassFraction organicMatter,
        MassFraction nitrogen,
        MassFraction phosphorus,
        ElectricConductivity? conductivity = null)
    {
        Guard.Positive(Boundary.KilogramsPerCubicMetre(density), "kg/m³", nameof(density));
        double waterPercent = Boundary.Fraction(water) * 100;
        if (waterPercent is not (>= 0 and < 100))
            throw Guard.Refused(nameof(water), waterPercent, "%", "0 % or more and below 100 %, of the wet mass");
        Density = HouseUnits.Normalise(density);
        Water = HouseUnits.Normalise(water);
        OrganicMatter = Share(organicMatter, nameof(organicMatter));
        Nitrogen = Share(nitrogen, nameof(nitrogen));
        Phosphorus = Share(phosphorus, nameof(phosphorus));
        if (conductivity is ElectricConductivity salts)
        {
            Guard.NotNegative(Boundary.DecisiemensPerMetre(salts), "dS/m", nameof(conductivity));
            Conductivity = HouseUnits.Normalise(salts);
        }
    }

    /// <summary>The bulk density as it is delivered, water included.</summary>
    public Density Density { get; }

    /// <summary>The water, as a share of the wet mass.</summary>
    public Ratio Water { get; }

    /// <summary>The organic matter, of the dry mass.</summary>
    public MassFraction OrganicMatter { get; }

    /// <summary>The total nitrogen, of the dry mass.</summary>
    public MassFraction Nitrogen { get; }

    /// <summary>The total phosphorus as the element, of the dry mass.</summary>
    public MassFraction Phosphorus { get; }

    /// <summary>The electrical conductivity of the extract; <see langword="null"/> where it was not measured.</summary>
    public ElectricConductivity? Conductivity { get; }

    /// <summary>One line in metric units and invariant culture.</summary>
    /// <returns>For instance <c>593 kg/m³ with 50 % water; of the dry mass 50 % by mass organic matter, 1.5 % by mass nitrogen</c>.</returns>
    public override string ToString() => $"{QuantityText.Of(Density, TextStyle.Default)} with {QuantityText.Of(Water, TextStyle.Default)} water; of the dry mass {QuantityText.Of(OrganicMatter, TextStyle.Default)} organic matter, {QuantityText.Of(Nitrogen, TextStyle.Default)} nitrogen";

    internal double DryKilogramsPerCubicMetre => Boundary.KilogramsPerCubicMetre(WaterContent.DryDensity(Density, Water, MoistureBasis.OfWetMass));

    private static MassFraction Share(MassFraction share, string parameter)
    {
        Guard.Within(Boundary.MassFraction(share) * 100, 0, 100, "%", parameter);
        return HouseUnits.Normalise(share);
    }
}
