using HortiCalc.Evidence;
using UnitsNet;

namespace HortiCalc.Climate;

/// <summary>Published temperatures of the medium that kill roots in pots.</summary>
/// <remarks>
/// They are for the medium, not the air: <see cref="PotCooling"/> has the one from the other. Statements from single winters, places and
/// provenances; in the ground roots are kept by the warmth of the earth and by snow.
/// </remarks>
public static class RootHardiness
{
    internal static readonly Source Mathers = new(
        "mathers-root-hardiness",
        "Root hardiness in containers: statements of H. Mathers, Ohio State University",
        "quoted in a fruit growers' discussion",
        2018,
        "https://growingfruit.org/t/cornelian-cherry-cornus-mas/28682/16");

    private static readonly Source Georgia = new(
        "dirr-smith-1988",
        "Cold injury in the landscape: Georgia 1983-84",
        "Dirr and Smith, Ornamentals Northwest Archives",
        1988,
        "https://docslib.org/doc/2729896/cold-injury-in-the-landscape-georgia-1983-841");

    private static readonly Source BayWeekly = new(
        "bay-weekly-roots",
        "Freezing to death: column on container plants",
        "Bay Weekly",
        null,
        "https://bayweekly.com/freezing-to-death");

    /// <summary>Every statement there is.</summary>
    public static IReadOnlyList<RootKilling> All { get; } = ValueList<RootKilling>.Of(
    [
        Of("Buxus", RootAge.Young, 20, 25, "tops hardy to -23 to -21 °C (-10 to -5 °F)", Georgia),
        Of("Ilex crenata", RootAge.Young, 20, 25, "tops hardy to -23 to -21 °C (-10 to -5 °F)", Georgia),
        Of("Pyracantha coccinea", RootAge.Young, 22, 22, "stems killed at -26 °C (-15 °F)", Georgia),
        Of("Rhododendron prunifolium", RootAge.Young, 20, 20, "", Georgia),
        Of("Rhododendron Hinodegiri", RootAge.Young, 10, 10, "", Georgia),
        Of("Rhododendron catawbiense", RootAge.Young, 0, 0, "", Georgia),
        Of("Rhododendron PJM", RootAge.Young, -9, -9, "", Georgia),
        Of("Ilex opaca", RootAge.Young, 23, 23, "tops hardy to about -29 °C (-20 °F)", Mathers),
        Of("Ilex opaca", RootAge.Mature, 9, 9, "tops hardy to about -29 °C (-20 °F)", Mathers),
        Of(
            "hardier group: Alberta spruce, Amur maple, azalea, birch, chamaecyparis, mountain laurel, Pfitzer juniper, red cedar, rhododendron, sumac",
            RootAge.NotStated, 0, 0, "stand 0 °F and below", BayWeekly),
        Of(
            "tender group: Atlantic cedar, boxwood, camellia, Chinese holly, Colorado spruce, dogwood, Japanese holly, magnolia, viburnum",
            RootAge.NotStated, 24, 24, "some are killed at temperatures as high as this", BayWeekly),
    ]);

    /// <summary>What is stated about a plant.</summary>
    /// <param name="plant">A part of its name, in any case: <c>ilex</c>, <c>magnolia</c>.</param>
    /// <returns>The statements whose plant contains it; none where nothing is known here.</returns>
    /// <exception cref="ArgumentException">The name is empty.</exception>
    /// <example><code>
    /// IReadOnlyList&lt;RootKilling&gt; holly = RootHardiness.For("Ilex opaca"); // young roots -5 °C, mature ones -12.8 °C
    /// </code></example>
    public static IReadOnlyList<RootKilling> For(string plant)
    {
        Units.Guard.NotBlank(plant);
        return ValueList<RootKilling>.Of(All.Where(statement => statement.Plant.Contains(plant, StringComparison.OrdinalIgnoreCase)));
    }

    private static RootKilling Of(string plant, RootAge age, double lowestFahrenheit, double highestFahrenheit, string note, Source source) => new(
        plant, age, Temperature.FromDegreesFahrenheit(lowestFahrenheit), Temperature.FromDegreesFahrenheit(highestFahrenheit), note, source);
}
