using HortiCalc.Evidence;

namespace HortiCalc.Soil;

/// <summary>The rules of organic nitrogen.</summary>
internal static class NutrientMethods
{
    public static Method ManureShare { get; } = new(
        "manure-nitrogen-by-season", "nitrogen of farmyard manure that the next crop gets", NutrientSources.DefraManure, new Domain("farmyard manure in England and Wales"));

    public static Method IrishManureShare { get; } = new(
        "manure-nitrogen-ireland", "nitrogen of manure counted on in spring", NutrientSources.IrishManure, new Domain("slurry and manure of the farm in Ireland"));

    public static Method ManureContent { get; } = new(
        "manure-nitrogen-content", "nitrogen in farmyard manure", NutrientSources.DefraManure, new Domain("farmyard manure at 25 % dry matter"));

    public static Method ManureRelease { get; } = new(
        "manure-organic-release", "release of organic nitrogen of manure by year", NutrientSources.CornellManure, new Domain("manures of New York, this year and two before"));

    public static Method CompostHalving { get; } = new(
        "compost-nitrogen-by-year",
        "nitrogen of mature compost by year",
        NutrientSources.CompostHalving,
        new Domain("mature compost", new DomainLimit("year", 1, 50, "")));

    public static Method Effect { get; } = new(
        "nitrogen-effect-by-ratio", "net release or tying up of nitrogen by carbon to nitrogen", NutrientSources.CarbonToNitrogen, new Domain("manures and residues"));

    public static Method Kinetics { get; } = new(
        "nitrogen-first-order", "mineralisation of nitrogen, first order", NutrientSources.Mineralization, new Domain("an incubated soil with compost", new DomainLimit("time", 0, 63, "d")));
}
