using HortiCalc.Evidence;

namespace HortiCalc.Containers;

/// <summary>What to take care of with the physics of media.</summary>
internal static class PhysicsCautions
{
    public static Caution Drying { get; } = new(
        "medium.drying-curve",
        CautionLevel.Note,
        "The curve is of drying from saturation; a medium watered again after drying holds less, and peat that has dried out sheds water.",
        new Source(
            "hortscience-45-1106",
            "Simultaneous determination of water retention curve and unsaturated hydraulic conductivity of substrates, abstract",
            "HortScience 45(7)",
            2010,
            "https://journals.ashs.org/hortsci/view/journals/hortsci/45/7/article-p1106.xml"));

    public static Caution Packing { get; } = new(
        "medium.packing",
        CautionLevel.Note,
        "Pressing and settling take air from a medium: the figures hold for the density at which the medium was measured.",
        new Source(
            "milks-1989",
            "Hydrology of Horticultural Substrates: II. Predicting Physical Properties of Media in Containers, abstract",
            "Journal of the American Society for Horticultural Science 114(1)",
            1989,
            "https://doi.org/10.21273/jashs.114.1.53"));
}
