using HortiCalc.Evidence;
using UnitsNet;

namespace HortiCalc.Mixes;

/// <summary>Densities of bleach that were seen in print, to give to <see cref="HypochloriteLabel"/> where the bottle states none.</summary>
/// <remarks>
/// The writer of the source calls them assumptions; another writer gives about 1.1 for 6 %. A density that is 2 % off
/// makes the chlorine 2 % off. Better is the figure on the safety data sheet of the bottle.
/// </remarks>
public static class HypochloriteDensities
{
    /// <summary>Where the densities were seen.</summary>
    public static Source Source => MixSources.HypochloriteDefinitions;

    /// <summary>Household bleach of 6 % sodium hypochlorite by mass: 1.08 kg/L.</summary>
    public static Density SixPercent => Density.FromKilogramsPerCubicMeter(1080);

    /// <summary>Household bleach of 8.25 % sodium hypochlorite by mass: 1.10 kg/L.</summary>
    public static Density EightAndAQuarterPercent => Density.FromKilogramsPerCubicMeter(1100);

    /// <summary>Pool bleach of trade per cent 10: 1.14 kg/L.</summary>
    public static Density TenTradePercent => Density.FromKilogramsPerCubicMeter(1140);

    /// <summary>Pool bleach of trade per cent 12.5: 1.16 kg/L.</summary>
    public static Density TwelveAndAHalfTradePercent => Density.FromKilogramsPerCubicMeter(1160);
}
