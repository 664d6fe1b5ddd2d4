using HortiCalc.Evidence;
using UnitsNet;

namespace HortiCalc.Beds;

/// <summary>Published kinetics of nitrogen from composts.</summary>
public static class CompostReleases
{
    private static readonly Source Ebid = new(
        "soil-science-2007-composts",
        "Nitrogen mineralization kinetics and nutrient availability in soil amended with composted tea leaves, coffee waste and kitchen garbage",
        "International Journal of Soil Science",
        2007,
        "https://scialert.net/fulltext/?doi=ijss.2007.96.106&org=10#ref");

    /// <summary>Composted tea leaves: little, and slowly.</summary>
    public static CompostRelease TeaLeaves { get; } = Of("composted tea leaves", 18.8, 0.101, 5.25);

    /// <summary>Composted coffee waste.</summary>
    public static CompostRelease CoffeeWaste { get; } = Of("composted coffee waste", 6.3, 0.199, 9.1);

    /// <summary>Composted kitchen garbage: much, and within weeks.</summary>
    public static CompostRelease KitchenGarbage { get; } = Of("composted kitchen garbage", 22.4, 0.255, 38.6);

    /// <summary>All of them.</summary>
    public static IReadOnlyList<CompostRelease> Published { get; } = ValueList<CompostRelease>.Of([TeaLeaves, CoffeeWaste, KitchenGarbage]);

    private static CompostRelease Of(string material, double milligramsPerKilogram, double perDay, double percent) => new(
        material, MassFraction.FromMilligramsPerKilogram(milligramsPerKilogram), perDay, Ratio.FromPercent(percent), Duration.FromDays(63), Ebid);
}
