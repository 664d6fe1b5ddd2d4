using HortiCalc.Evidence;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Climate;

/// <summary>Published thermal properties of soils and of what they are made of.</summary>
/// <remarks>
/// Nothing is read between the wetnesses printed: diffusivity rises steeply with the first water and falls again, in sand from about a fifth of the
/// volume on.
/// </remarks>
public static class SoilMaterials
{
    private static readonly Source Continuum = new(
        "soil-thermal-properties",
        "Transport in the Atmosphere-Vegetation-Soil Continuum, Table 2.2",
        "textbook; data of De Vries, Smits and others",
        null,
        "http://what-when-how.com/Tutorial/topic-topic-20631it/Transport-in-the-Atmosphere-Vegetation-Soil-Continuum-64.html");

    /// <summary>A loosely packed sandy soil, dry.</summary>
    public static SoilMaterial LooseSandySoilDry { get; } = Of("sandy soil, loosely packed", 0, 1600, 1.28e6, 0.24, 0.19e-6);

    /// <summary>A loosely packed sandy soil with a fifth of water by volume.</summary>
    public static SoilMaterial LooseSandySoilMoist { get; } = Of("sandy soil, loosely packed", 0.2, 1800, 2.12e6, 2.1, 0.99e-6);

    /// <summary>A loosely packed sandy soil full of water.</summary>
    public static SoilMaterial LooseSandySoilWet { get; } = Of("sandy soil, loosely packed", 0.4, 2000, 2.96e6, 2.5, 0.85e-6);

    /// <summary>A clay soil, dry.</summary>
    public static SoilMaterial ClaySoilDry { get; } = Of("clay soil", 0, 1590, 1.43e6, 0.15, 0.10e-6);

    /// <summary>A clay soil with a fifth of water by volume.</summary>
    public static SoilMaterial ClaySoilMoist { get; } = Of("clay soil", 0.2, 1790, 2.27e6, 0.9, 0.4e-6);

    /// <summary>A clay soil full of water.</summary>
    public static SoilMaterial ClaySoilWet { get; } = Of("clay soil", 0.4, 1990, 3.10e6, 1.4, 0.45e-6);

    /// <summary>A peat soil, dry.</summary>
    public static SoilMaterial PeatSoilDry { get; } = Of("peat soil", 0, 130, 0.25e6, 0.04, 0.16e-6);

    /// <summary>A peat soil half full of water.</summary>
    public static SoilMaterial PeatSoilMoist { get; } = Of("peat soil", 0.45, 580, 2.13e6, 0.27, 0.13e-6);

    /// <summary>A peat soil full of water.</summary>
    public static SoilMaterial PeatSoilWet { get; } = Of("peat soil", 0.9, 1030, 4.01e6, 0.50, 0.12e-6);

    /// <summary>Every material of the table, in its order.</summary>
    public static IReadOnlyList<SoilMaterial> All { get; } = ValueList<SoilMaterial>.Of(
    [
        Of("quartz", null, 2660, 2.13e6, 8.8, 4.2e-6),
        Of("clay mineral", null, 2650, 2.39e6, 2.9, 1.2e-6),
        Of("organic matter", null, 1300, 2.47e6, 0.25, 0.10e-6),
        Of("water", null, 1000, 4.18e6, 0.57, 0.14e-6),
        Of("still air", null, 1.2, 1.2e3, 0.025, 21e-6),
        LooseSandySoilDry,
        LooseSandySoilMoist,
        LooseSandySoilWet,
        Of("sandy soil, tightly packed", 0, 1780, 1.42e6, 0.29, 0.20e-6),
        Of("sandy soil, tightly packed", 0.15, 1930, 2.05e6, 2.5, 1.2e-6),
        Of("sandy soil, tightly packed", 0.33, 2110, 2.81e6, 2.9, 1.0e-6),
        ClaySoilDry,
        ClaySoilMoist,
        ClaySoilWet,
        PeatSoilDry,
        PeatSoilMoist,
        PeatSoilWet,
        Of("rock", null, 2700, 2.03e6, 2.9, 1.4e-6),
        Of("ice", null, 900, 1.88e6, 2.5, 1.3e-6),
        Of("fresh snow", null, 200, 0.42e6, 0.1, 0.3e-6),
        Of("old snow", null, 800, 1.67e6, 1.7, 1.0e-6),
    ]);

    private static SoilMaterial Of(
        string name,
        double? waterFraction,
        double kilogramsPerCubicMetre,
        double joulesPerCubicMetreKelvin,
        double wattsPerMetreKelvin,
        double squareMetresPerSecond) => new(
            name,
            waterFraction is double fraction ? VolumeConcentration.FromPercent(Math.Round(fraction * 100, MidpointRounding.AwayFromZero)) : null,
            Density.FromKilogramsPerCubicMeter(kilogramsPerCubicMetre),
            VolumetricHeatCapacity.FromJoulesPerCubicMeterKelvin(joulesPerCubicMetreKelvin),
            ThermalConductivity.FromWattsPerMeterKelvin(wattsPerMetreKelvin),
            ThermalDiffusivity.FromSquareMetresPerSecond(squareMetresPerSecond),
            Continuum);
}
