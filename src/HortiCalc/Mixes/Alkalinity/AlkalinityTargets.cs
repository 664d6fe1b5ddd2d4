using HortiCalc.Evidence;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Mixes;

/// <summary>Published targets for the alkalinity of water by container: the smaller the pot, the less it can buffer.</summary>
public static class AlkalinityTargets
{
    /// <summary>Plugs, 0.75 to 1.25 meq/L.</summary>
    public static AlkalinityTarget Plugs { get; } = Milliequivalents("plugs", 0.75, 1.25);

    /// <summary>Packs and flats, 1.7 to 2.0 meq/L.</summary>
    public static AlkalinityTarget PacksAndFlats { get; } = Milliequivalents("packs and flats", 1.7, 2.0);

    /// <summary>Plugs and liners by a maker of media, 60 to 80 mg/L as CaCO₃.</summary>
    public static AlkalinityTarget PlugsAndLiners { get; } = CalciumCarbonate("plugs and liners", 60, 80);

    /// <summary>Larger containers by a maker of media, 120 to 140 mg/L as CaCO₃.</summary>
    public static AlkalinityTarget LargerContainers { get; } = CalciumCarbonate("larger containers", 120, 140);

    /// <summary>All of them.</summary>
    public static IReadOnlyList<AlkalinityTarget> All { get; } =
        ValueList<AlkalinityTarget>.Of([Plugs, PacksAndFlats, PlugsAndLiners, LargerContainers]);

    private static AlkalinityTarget Milliequivalents(string container, double low, double high) => new(
        container,
        VolumetricCharge.FromMilliequivalentsPerLitre(low),
        VolumetricCharge.FromMilliequivalentsPerLitre(high),
        AlkalinitySources.TradePressTargets);

    private static AlkalinityTarget CalciumCarbonate(string container, double low, double high) => new(
        container,
        WaterAlkalinity.FromCalciumCarbonate(MassConcentration.FromMilligramsPerLiter(low)),
        WaterAlkalinity.FromCalciumCarbonate(MassConcentration.FromMilligramsPerLiter(high)),
        AlkalinitySources.MediaMakerTargets);
}
