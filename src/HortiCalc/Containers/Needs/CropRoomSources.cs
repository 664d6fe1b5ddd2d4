using HortiCalc.Evidence;

namespace HortiCalc.Containers;

/// <summary>Where the room of crops is printed. Most lists are of low authority, and they differ twofold.</summary>
internal static class CropRoomSources
{
    public static Source GardenHandbook { get; } = new(
        "garden-handbook-depths", "Garden handbook chart of container depths, re-posted", "garden handbook chart (re-posted, US)", null, "http://healthyfamilycookin.blogspot.com/2011/04/gardening-series-post-4.html");

    public static Source SmallGarden { get; } = new(
        "small-garden-depths", "Small vegetable garden design", "garden advice site", null, "https://gardenguides.com/96225-small-vegetable-garden-design.html");

    public static Source PotDepths { get; } = new(
        "pot-and-container-depths", "Pot and container sizes for growing vegetable crops", "garden advice site", null, "https://harvesttotable.com/pot-and-container-sizes-for-growing-vegetable-crops/");

    public static Source Iowa { get; } = new(
        "iowa-plants-per-container", "Container vegetable gardening: plants per container", "Iowa State University Extension, Horticulture Guide", null, "https://www.scribd.com/document/16101997/Vegetables-Container-Vegetable-Gardening");

    public static Source Texas { get; } = new(
        "texas-e-545-containers", "Vegetable gardening in containers, E-545", "Texas A&M AgriLife Extension", 2009, "https://docslib.org/doc/12486142/vegetable-gardening-in-containers-joseph-g");

    public static Source Illinois { get; } = new(
        "illinois-vegetable-pots", "Minimum pot diameter for vegetables", "University of Illinois Extension column, re-posted", null, "https://www.coquenexus5.com/tag/experimenting");
}
