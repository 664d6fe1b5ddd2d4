using System.Text.Json.Serialization;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Mixes;

/// <summary>An acid as it is bought: its strength by mass, and its density where it is a liquid.</summary>
/// <remarks>Immutable; equal by value. The label and its safety data sheet state both.</remarks>
/// <example><code>
/// AcidProduct battery = new(WaterAcid.Sulfuric, MassFraction.FromPercent(35), Density.FromKilogramsPerLiter(1.26));
/// double molar = battery.Molarity!.Value.MolesPerLiter;   // 4.50
/// </code></example>
public sealed record AcidProduct
{
    /// <summary>Describes an acid.</summary>
    /// <param name="acid">Which acid.</param>
    /// <param name="strength">The share of the acid by mass; more than 0, at most 100 %.</param>
    /// <param name="density">The density of the liquid; more than 0. <see langword="null"/> for a dry acid, which is weighed.</param>
    /// <exception cref="ArgumentOutOfRangeException">The acid is not a defined one, or a number is outside what is allowed.</exception>
    public AcidProduct(WaterAcid acid, MassFraction strength, Density? density)
    {
        Acid = Guard.Defined(acid);
        double percent = Guard.Positive(Boundary.MassFraction(strength) * 100, "% by mass", nameof(strength));
        Guard.Within(percent, 0, 100, "% by mass", nameof(strength));
        Strength = HouseUnits.Normalise(strength);
        if (density is Density known)
        {
            Guard.Positive(Boundary.KilogramsPerCubicMetre(known), "kg/m³", nameof(density));
            Density = HouseUnits.Normalise(known);
        }
    }

    /// <summary>Which acid.</summary>
    public WaterAcid Acid { get; }

    /// <summary>The share of the acid by mass.</summary>
    public MassFraction Strength { get; }

    /// <summary>The density of the liquid, or <see langword="null"/> for a dry acid.</summary>
    public Density? Density { get; }

    /// <summary>The acid per volume of the liquid, or <see langword="null"/> for a dry acid.</summary>
    [JsonIgnore]
    public Molarity? Molarity => Density is Density known
        ? UnitsNet.Molarity.FromMolesPerLiter(Boundary.KilogramsPerCubicMetre(known) * Boundary.MassFraction(Strength) / GramsPerMole)
        : null;

    /// <summary>The hydrogens that a mole of the acid gives up to a water of a given pH.</summary>
    /// <param name="ph">The pH at the end.</param>
    /// <param name="temperature">From 0 to 50 °C.</param>
    /// <param name="ionicStrength">The ionic strength of the water; from 0 to 0.5 mol/L.</param>
    /// <returns>
    /// 1 for nitric acid, from 1 to 2 for sulfuric, up to 3 for the others. The whole of the first hydrogens of citric acid is not given up below pH 5.
    /// </returns>
    /// <exception cref="ArgumentOutOfRangeException">The temperature or the ionic strength is outside what the constants were published for.</exception>
    public double HydrogensPerMole(Ph ph, Temperature temperature, Molarity ionicStrength)
    {
        double celsius = AcidInjection.Method.Require(Boundary.Celsius(temperature), "°C", nameof(temperature));
        double molesPerLitre = AcidInjection.Method.Require(Boundary.MolesPerLitre(ionicStrength), "mol/L", nameof(ionicStrength));
        return HydrogensPerMole(new Speciation(new WeakTotals(0, 0), new EquilibriumConstants(celsius), ph.Value, molesPerLitre));
    }

    /// <summary>The acid, its strength and its density.</summary>
    /// <returns>For instance <c>sulfuric acid 93 %</c>.</returns>
    public override string ToString() => $"{AcidFacts.Of(Acid).Name} {Guard.Number(Boundary.MassFraction(Strength) * 100)} %";

    internal double GramsPerMole => AcidFacts.Of(Acid).GramsPerMole;

    /// <summary>Grams of the product that hold a mole of the acid.</summary>
    internal double ProductGramsPerMole => GramsPerMole / Boundary.MassFraction(Strength);

    internal double HydrogensPerMole(Speciation state) => Acid switch
    {
        WaterAcid.Nitric => 1,
        WaterAcid.Sulfuric => state.ChargePerSulfate,
        WaterAcid.Phosphoric => state.ChargePerPhosphate,
        _ => state.ChargePerCitrate,
    };

    internal WeakTotals AddedTo(WeakTotals water, double molesPerLitre) => Acid switch
    {
        WaterAcid.Nitric => water with
        {
            StrongCharge = water.StrongCharge - molesPerLitre,
            StrongIonicStrength = water.StrongIonicStrength + molesPerLitre / 2,
        },
        WaterAcid.Sulfuric => water with { Sulfate = water.Sulfate + molesPerLitre },
        WaterAcid.Phosphoric => water with { Phosphate = water.Phosphate + molesPerLitre },
        _ => water with { Citrate = water.Citrate + molesPerLitre },
    };
}
