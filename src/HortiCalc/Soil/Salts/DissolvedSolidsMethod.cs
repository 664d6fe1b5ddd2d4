using HortiCalc.Evidence;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Soil;

/// <summary>A published factor from conductivity to the mass of dissolved solids.</summary>
/// <remarks>Immutable; a closed set: the values are the static members. <see cref="Irrigation"/> is the default for irrigation water and soil.</remarks>
public sealed record DissolvedSolidsMethod
{
    private readonly double milligramsPerLitrePerDecisiemen;

    private DissolvedSolidsMethod(string key, string name, Source source, string conditions, double factor, double low, double high)
    {
        Method = new Method(key, name, source, new Domain(conditions, new DomainLimit("conductivity", low, high, "dS/m")));
        milligramsPerLitrePerDecisiemen = factor;
    }

    /// <summary>640 mg/L for 1 dS/m: irrigation waters and soil extracts up to 5 dS/m.</summary>
    public static DissolvedSolidsMethod Irrigation { get; } = new(
        "solids-640", "dissolved solids, 640 mg/L for 1 dS/m", SaltSources.SodiumRatio, "mixed salts of irrigation water", 640, 0, 5);

    /// <summary>800 mg/L for 1 dS/m: waters above 5 dS/m; from memory.</summary>
    public static DissolvedSolidsMethod SaltyWater { get; } = new(
        "solids-800", "dissolved solids, 800 mg/L for 1 dS/m", SaltSources.SaltyWaterSolids, "salty waters", 800, 5, double.PositiveInfinity);

    /// <summary>500 mg/L for 1 dS/m: the scale that many pocket meters show, as if all were sodium chloride.</summary>
    public static DissolvedSolidsMethod SodiumChlorideScale { get; } = new(
        "solids-500", "dissolved solids, 500 mg/L for 1 dS/m", SaltSources.ChlorideScale, "meters of the sodium chloride scale", 500, 0, double.PositiveInfinity);

    /// <summary>Every factor there is.</summary>
    public static IReadOnlyList<DissolvedSolidsMethod> All { get; } =
        ValueList<DissolvedSolidsMethod>.Of([Irrigation, SaltyWater, SodiumChlorideScale]);

    /// <summary>The factor's key, name, source and domain.</summary>
    public Method Method { get; }

    /// <summary>Finds a factor by its key.</summary>
    /// <param name="key">The key of its method, for instance <c>solids-640</c>.</param>
    /// <returns>The factor.</returns>
    /// <exception cref="ArgumentException">There is no such factor, or the key is empty.</exception>
    public static DissolvedSolidsMethod FromKey(string key) => SoilKeys.Find(All, method => method.Method.Key, key);

    /// <summary>The name and source of the factor.</summary>
    /// <returns>One line of text.</returns>
    public override string ToString() => Method.ToString();

    internal Estimate<MassConcentration> Solids(ElectricConductivity conductivity)
    {
        double reading = Guard.NotNegative(Boundary.DecisiemensPerMetre(conductivity), "dS/m", nameof(conductivity));
        Method.Require(reading, "dS/m", nameof(conductivity));
        return new Estimate<MassConcentration>(MassConcentration.FromMilligramsPerLiter(reading * milligramsPerLitrePerDecisiemen), Method);
    }

    internal Estimate<ElectricConductivity> Conductivity(MassConcentration solids)
    {
        double conductivity = Guard.NotNegative(Boundary.MilligramsPerLitre(solids), "mg/L", nameof(solids)) / milligramsPerLitrePerDecisiemen;
        Method.Require(conductivity, "dS/m");
        return new Estimate<ElectricConductivity>(ElectricConductivity.FromMillisiemensPerCentimeter(conductivity), Method);
    }
}
