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

    public static Source Maryland { get; } = new(
        "maryland-container-groups", "Types of containers for growing vegetables", "University of Maryland Extension", 2023, "https://extension.umd.edu/resource/types-containers-growing-vegetables");

    public static Source Minnesota { get; } = new(
        "minnesota-container-chart", "Container vegetables and herbs: a handy size chart", "University of Minnesota Extension, Yard and Garden News", 2019, "https://blog-yard-garden-news.extension.umn.edu/2019/05/become-smarter-gardener-in-2019-get.html");

    public static Source GardenMentor { get; } = new(
        "container-size-guide", "Container size guide for vegetables", "garden advice site", null, "https://gardeningmentor.com/container-size/");

    public static Source Iowa { get; } = new(
        "iowa-plants-per-container", "Container vegetable gardening: plants per container", "Iowa State University Extension, Horticulture Guide", null, "https://www.scribd.com/document/16101997/Vegetables-Container-Vegetable-Gardening");

    public static Source Texas { get; } = new(
        "texas-e-545-containers", "Vegetable gardening in containers, E-545", "Texas A&M AgriLife Extension", 2009, "https://docslib.org/doc/12486142/vegetable-gardening-in-containers-joseph-g");

    public static Source Illinois { get; } = new(
        "illinois-vegetable-pots", "Minimum pot diameter for vegetables", "University of Illinois Extension column, re-posted", null, "https://www.coquenexus5.com/tag/experimenting");

    public static Source IllinoisColumn { get; } = new(
        "illinois-homeowners-column", "The Homeowners Column: Contain your enthusiasm for vegetable gardening", "University of Illinois Extension", 2011, "https://web.extension.illinois.edu/cfiv/homeowners/110413.html");

    public static Source FrenchPlanters { get; } = new(
        "french-planter-dimensions", "Planters: choosing the dimensions (Bacs à plantes)", "garden advice site (France)", null, "https://jardiner-bio.info/bacs-a-plantes-choisir-les-dimensions-ideales-pour-une-croissance-optimale");
}
