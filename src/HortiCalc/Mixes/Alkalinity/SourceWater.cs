using HortiCalc.Display;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Mixes;

/// <summary>A water before acid: what a laboratory or a test kit says of it.</summary>
/// <remarks>Immutable; equal by value.</remarks>
/// <example><code>
/// SourceWater well = new(
///     WaterAlkalinity.FromCalciumCarbonate(MassConcentration.FromMilligramsPerLiter(250)), new Ph(7.6), Temperature.FromDegreesCelsius(15));
/// </code></example>
public sealed record SourceWater
{
    /// <summary>Describes a water.</summary>
    /// <param name="alkalinity">The alkalinity, taken to be of carbonates; more than 0.</param>
    /// <param name="ph">The pH; from 5 to 10.</param>
    /// <param name="temperature">From 0 to 50 °C.</param>
    /// <param name="ionicStrength">
    /// The ionic strength, from the alkalinity itself to 0.1 mol/L; <see langword="null"/> to take one and a half times the alkalinity, as where it is all
    /// calcium bicarbonate. <see cref="IonicStrengthFromConductivity"/> gives a better one.
    /// </param>
    /// <exception cref="ArgumentOutOfRangeException">
    /// A number is outside what is allowed, or the pH cannot be that of a water of so little alkalinity.
    /// </exception>
    public SourceWater(VolumetricCharge alkalinity, Ph ph, Temperature temperature, Molarity? ionicStrength = null)
    {
        double molesPerLitre = Guard.Positive(alkalinity.MilliequivalentsPerLitre, "meq/L", nameof(alkalinity)) / 1000;
        Guard.Within(ph.Value, 5, 10, "pH", nameof(ph));
        double celsius = AcidInjection.Method.Require(Boundary.Celsius(temperature), "°C", nameof(temperature));
        Alkalinity = alkalinity;
        Ph = ph;
        Temperature = HouseUnits.Normalise(temperature);
        double strength = ionicStrength is Molarity given ? Boundary.MolesPerLitre(given) : molesPerLitre * 1.5;
        Guard.Within(strength, molesPerLitre, 0.1, "mol/L", ionicStrength is null ? nameof(alkalinity) : nameof(ionicStrength));
        IonicStrength = Molarity.FromMolesPerLiter(strength);

        // At the pH given, hydroxide and hydrogen are known; the carbonates hold the rest of the alkalinity.
        EquilibriumConstants constants = new(celsius);
        Speciation unit = new(new WeakTotals(0, 0) { Carbon = 1 }, constants, ph.Value, strength);
        double ofCarbonates = molesPerLitre - unit.Hydroxide + unit.Hydrogen;
        double perCarbon = unit.Bicarbonate + 2 * unit.Carbonate;
        if (ofCarbonates <= 0)
        {
            throw Guard.Refused(
                nameof(ph), ph.Value, "pH", $"less, since at that pH hydroxide alone is more than the alkalinity of {Guard.Number(molesPerLitre * 1000)} meq/L");
        }

        double carbon = ofCarbonates / perCarbon;
        double weak = (unit.Hydrogen + unit.Hydroxide + carbon * (unit.Bicarbonate + 4 * unit.Carbonate)) / 2;
        Totals = new WeakTotals(molesPerLitre, Math.Max(0, strength - weak)) { Carbon = carbon };
    }

    /// <summary>The alkalinity.</summary>
    public VolumetricCharge Alkalinity { get; }

    /// <summary>The pH.</summary>
    public Ph Ph { get; }

    /// <summary>The temperature.</summary>
    public Temperature Temperature { get; }

    /// <summary>The ionic strength: as given, or from the alkalinity; never <see langword="null"/>.</summary>
    public Molarity? IonicStrength { get; }

    /// <summary>One line of text in metric units and invariant culture.</summary>
    /// <returns>For instance <c>alkalinity 5 meq/L, pH 7.6, 15 °C</c>.</returns>
    public override string ToString() => $"alkalinity {QuantityText.Number(Alkalinity.MilliequivalentsPerLitre, TextStyle.Default)} meq/L, {Ph}, {QuantityText.Of(Temperature, TextStyle.Default)}";

    /// <summary>The ionic strength of a water by its conductivity, I = 1.6·10⁻⁵ mol/L for a µS/cm.</summary>
    /// <param name="conductivity">The conductivity at 25 °C; 0 or more.</param>
    /// <returns>The ionic strength.</returns>
    /// <remarks>Source: aqion, Electrical Conductivity (EC), Three Calculation Methods, equation 2, https://www.aqion.de/sd/140.</remarks>
    /// <exception cref="ArgumentOutOfRangeException">The conductivity is negative.</exception>
    public static Molarity IonicStrengthFromConductivity(ElectricConductivity conductivity) => Molarity.FromMolesPerLiter(
        1.6e-5 * 1000 * Guard.NotNegative(Boundary.DecisiemensPerMetre(conductivity), "mS/cm", nameof(conductivity)));

    internal WeakTotals Totals { get; }

    internal EquilibriumConstants Constants => new(Boundary.Celsius(Temperature));

    internal WeakTotals TotalsWith(GasExchange exchange) => exchange == GasExchange.Closed
        ? Totals
        : Totals with { OpenCarbonDioxideMolesPerLitre = WaterChemistry.CarbonDioxideInAir(Constants) };
}
