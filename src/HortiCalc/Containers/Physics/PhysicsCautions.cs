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

    public static Caution Particles { get; } = new(
        "medium.particle-density",
        CautionLevel.Care,
        "The reading leaves less room than its dry mass needs: particles would be denser than the 2.65 g/cm³ of minerals, and those of media have 0.35 to 2.1. Measure again:"
        + " the core swelled, its volume is taken too small, or water stood outside the pores.",
        new Source(
            "fonteno-1990",
            "A new method for measuring total porosity in horticultural substrates, abstract",
            "HortScience 25(9)",
            1990,
            "https://discovery.researcher.life/article/a-new-method-for-measuring-total-porosity-in-horticultural-substrates/647ed22da753359b8a2ca569fdbb1503"));

    public static Caution Soaking { get; } = new(
        "medium.soaking",
        CautionLevel.Note,
        "A dry medium keeps some of its air when it is soaked, so that pores and air are read too low: soak it slowly from below, drain it and fill it again, and take the last reading.",
        new Source(
            "acta-horticulturae-342-air",
            "An evaluation of various UK methods for estimating air-filled porosity, abstract",
            "Acta Horticulturae 342",
            1993,
            "https://www.ishs.org/ishs-article/342_20"));
}
