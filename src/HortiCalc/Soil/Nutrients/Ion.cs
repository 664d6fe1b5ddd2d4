using HortiCalc.Evidence;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Soil;

/// <summary>An ion of soils and waters: turns its mass into charge and back.</summary>
/// <remarks>
/// Immutable; a closed set: the values are the static members. By molar masses from the standard atomic weights, so that 1 cmol(c)/kg of calcium is
/// 200.4 mg/kg and not the rounded 200.
/// </remarks>
/// <example><code>
/// ExchangeableCharge calcium = Ion.Calcium.Charge(MassFraction.FromMilligramsPerKilogram(800));   // 3.99 cmol(c)/kg
/// MassConcentration sodium = Ion.Sodium.Mass(VolumetricCharge.FromCentimolesPerLitre(0.3));        // 3 meq/L, 69 mg/L
/// Console.WriteLine($"{calcium} {sodium}");
/// </code></example>
public sealed record Ion
{
    private const double Hydrogen1 = 1.00794;
    private const double Carbon = 12.0107;
    private const double Nitrogen = 14.0067;
    private const double Oxygen = 15.9994;
    private const double Sulfur = 32.065;

    private Ion(string key, double gramsPerMole, int charge)
    {
        Key = key;
        GramsPerEquivalent = gramsPerMole / charge;
    }

    /// <summary>Calcium, Ca²⁺.</summary>
    public static Ion Calcium { get; } = new("calcium", 40.078, 2);

    /// <summary>Magnesium, Mg²⁺.</summary>
    public static Ion Magnesium { get; } = new("magnesium", 24.3050, 2);

    /// <summary>Potassium, K⁺.</summary>
    public static Ion Potassium { get; } = new("potassium", 39.0983, 1);

    /// <summary>Sodium, Na⁺.</summary>
    public static Ion Sodium { get; } = new("sodium", 22.98976928, 1);

    /// <summary>Ammonium, NH₄⁺.</summary>
    public static Ion Ammonium { get; } = new("ammonium", Nitrogen + 4 * Hydrogen1, 1);

    /// <summary>Hydrogen, H⁺.</summary>
    public static Ion Hydrogen { get; } = new("hydrogen", Hydrogen1, 1);

    /// <summary>Aluminium, Al³⁺.</summary>
    public static Ion Aluminium { get; } = new("aluminium", 26.9815386, 3);

    /// <summary>Chloride, Cl⁻.</summary>
    public static Ion Chloride { get; } = new("chloride", 35.453, 1);

    /// <summary>Bicarbonate, HCO₃⁻.</summary>
    public static Ion Bicarbonate { get; } = new("bicarbonate", Hydrogen1 + Carbon + 3 * Oxygen, 1);

    /// <summary>Carbonate, CO₃²⁻.</summary>
    public static Ion Carbonate { get; } = new("carbonate", Carbon + 3 * Oxygen, 2);

    /// <summary>Sulfate, SO₄²⁻.</summary>
    public static Ion Sulfate { get; } = new("sulfate", Sulfur + 4 * Oxygen, 2);

    /// <summary>Nitrate, NO₃⁻: the whole ion, not its nitrogen.</summary>
    public static Ion Nitrate { get; } = new("nitrate", Nitrogen + 3 * Oxygen, 1);

    /// <summary>Every ion there is.</summary>
    public static IReadOnlyList<Ion> All { get; } = ValueList<Ion>.Of(
        [Calcium, Magnesium, Potassium, Sodium, Ammonium, Hydrogen, Aluminium, Chloride, Bicarbonate, Carbonate, Sulfate, Nitrate]);

    /// <summary>The ion's name.</summary>
    public string Key { get; }

    internal double GramsPerEquivalent { get; }

    /// <summary>Finds an ion by its name.</summary>
    /// <param name="key">The name, for instance <c>calcium</c>.</param>
    /// <returns>The ion.</returns>
    /// <exception cref="ArgumentException">There is no such ion, or the name is empty.</exception>
    public static Ion FromKey(string key) => SoilKeys.Find(All, ion => ion.Key, key);

    /// <summary>The charge of a content of soil.</summary>
    /// <param name="content">The ion by mass of soil; zero or more.</param>
    /// <returns>The charge by mass of soil.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The content is negative.</exception>
    public ExchangeableCharge Charge(MassFraction content) => ExchangeableCharge.FromCentimolesPerKilogram(
        Guard.NotNegative(Boundary.MassFraction(content), "", nameof(content)) * 1000 / GramsPerEquivalent * 100);

    /// <summary>The content of soil that holds a charge.</summary>
    /// <param name="charge">The charge by mass of soil.</param>
    /// <returns>The ion by mass of soil.</returns>
    public MassFraction Mass(ExchangeableCharge charge) =>
        MassFraction.FromMilligramsPerKilogram(charge.CentimolesPerKilogram * GramsPerEquivalent * 10);

    /// <summary>The charge of a content of water.</summary>
    /// <param name="content">The ion by volume of water; zero or more.</param>
    /// <returns>The charge by volume: 1 meq/L is 0.1 cmol(c)/L.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The content is negative.</exception>
    public VolumetricCharge Charge(MassConcentration content) => VolumetricCharge.FromCentimolesPerLitre(
        Guard.NotNegative(Boundary.MilligramsPerLitre(content), "mg/L", nameof(content)) / GramsPerEquivalent / 10);

    /// <summary>The content of water that holds a charge.</summary>
    /// <param name="charge">The charge by volume.</param>
    /// <returns>The ion by volume of water.</returns>
    public MassConcentration Mass(VolumetricCharge charge) =>
        MassConcentration.FromMilligramsPerLiter(charge.CentimolesPerLitre * 10 * GramsPerEquivalent);

    /// <summary>The ion's name.</summary>
    /// <returns>For instance <c>calcium</c>.</returns>
    public override string ToString() => Key;
}
