using HortiCalc.Evidence;

namespace HortiCalc.Containers;

/// <summary>Where the room of crops is printed. Most lists are of low authority, and they differ twofold.</summary>
internal static class CropRoomSources
{
    public static Source GardenHandbook { get; } = new(
        "garden-handbook-depths", "Garden handbook chart of container depths, re-posted", "garden handbook chart (re-posted, US)", null, "http://healthyfamilycookin.blogspot.com/2011/04/gardening-series-post-4.html");

    public static Source SmallGarden { get; } = new(
        "small-garden-depths", "Small vegetable garden design", "garden advice site", null, "https://gardenguides.com/96225-small-vegetable-garden-design.html");

    public static Source RaisedBedTable { get; } = new(
        "raised-bed-depths-table", "Optimal raised garden bed depths", "retailer table", null, "https://www.anleolifeshop.com/blogs/garden-center/optimal-raised-garden-bed-depths");

    public static Source RootingGroups { get; } = new(
        "rooting-depth-groups", "What soil depth for planting vegetables in a raised bed: rooting depth groups", "rooting depth groups (widely copied)", null, "https://diygardeningandbet.wixsite.com/diygabl/post/what-soil-depth-for-planting-vegetables-in-a-raised-bed");

    public static Source RaisedBedGroups { get; } = new(
        "raised-bed-depth-groups", "How deep should a raised garden bed be", "garden advice site", null, "https://biologyinsights.com/how-deep-should-a-raised-garden-bed-be");

    public static Source RaisedBedCrops { get; } = new(
        "raised-bed-depths-by-crop", "Do different vegetables require specific depth considerations", "garden advice site", null, "https://smartgardenguru.com/blog/do-different-vegetables-require-specific-depth-considerations");

    public static Source PotDepths { get; } = new(
        "pot-and-container-depths", "Pot and container sizes for growing vegetable crops", "garden advice site", null, "https://harvesttotable.com/pot-and-container-sizes-for-growing-vegetable-crops/");

    public static Source GardenMix { get; } = new(
        "garden-mix-depth", "Garden mix", "landscape supplier", null, "https://sandsandsoils.com/garden-mix");

    public static Source Iowa { get; } = new(
        "iowa-plants-per-container", "Container vegetable gardening: plants per container", "Iowa State University Extension, Horticulture Guide", null, "https://www.scribd.com/document/16101997/Vegetables-Container-Vegetable-Gardening");

    public static Source Texas { get; } = new(
        "texas-e-545-containers", "Vegetable gardening in containers, E-545", "Texas A&M AgriLife Extension", 2009, "https://docslib.org/doc/12486142/vegetable-gardening-in-containers-joseph-g");

    public static Source Illinois { get; } = new(
        "illinois-vegetable-pots", "Minimum pot diameter for vegetables", "University of Illinois Extension column, re-posted", null, "https://www.coquenexus5.com/tag/experimenting");
}
