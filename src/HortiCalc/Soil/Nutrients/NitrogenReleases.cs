using HortiCalc.Evidence;
using UnitsNet;

namespace HortiCalc.Soil;

/// <summary>What manures and composts were measured to release of their nitrogen.</summary>
public static class NitrogenReleases
{
    /// <summary>Measured shares, source by source. Where a source prints a span of weeks the long end stands.</summary>
    public static IReadOnlyList<NitrogenRelease> All { get; } = ValueList<NitrogenRelease>.Of(
    [
        Measured("manure", NitrogenPool.Organic, 84, 16, NutrientSources.CaliforniaComposts),
        Measured("manure compost", NitrogenPool.Organic, 84, 7, NutrientSources.CaliforniaComposts),
        Measured("plant residue compost", NitrogenPool.Organic, 84, 1, NutrientSources.CaliforniaComposts),
        Measured("manure", NitrogenPool.Organic, 168, 15, NutrientSources.CaliforniaComposts),
        Measured("manure compost", NitrogenPool.Organic, 168, 6, NutrientSources.CaliforniaComposts),
        Measured("plant residue compost", NitrogenPool.Organic, 168, 2, NutrientSources.CaliforniaComposts),
        Measured("manure", NitrogenPool.Total, 126, 11, NutrientSources.CaliforniaComposts),
        Measured("manure compost", NitrogenPool.Total, 126, 6, NutrientSources.CaliforniaComposts),
        Measured("plant residue compost", NitrogenPool.Total, 126, 2, NutrientSources.CaliforniaComposts),
        Measured("composted tea leaves", NitrogenPool.Total, 63, 5.25, NutrientSources.Mineralization),
        Measured("composted coffee waste", NitrogenPool.Total, 63, 9.1, NutrientSources.Mineralization),
        Measured("composted kitchen garbage", NitrogenPool.Total, 63, 38.6, NutrientSources.Mineralization),
    ]);

    /// <summary>Fitted curves of soil with composts, 63 days long.</summary>
    public static IReadOnlyList<NitrogenMineralization> Kinetics { get; } = ValueList<NitrogenMineralization>.Of(
    [
        Fitted("composted tea leaves", 18.8, 0.101),
        Fitted("composted coffee waste", 6.30, 0.199),
        Fitted("composted kitchen garbage", 22.4, 0.255),
    ]);

    private static NitrogenRelease Measured(string material, NitrogenPool pool, double days, double percent, Source source) =>
        new(material, pool, Duration.FromDays(days), Ratio.FromPercent(percent), source);

    private static NitrogenMineralization Fitted(string material, double milligramsPerKilogram, double perDay) =>
        new(material, MassFraction.FromMilligramsPerKilogram(milligramsPerKilogram), Duration.FromDays(1 / perDay), NutrientMethods.Kinetics);
}
