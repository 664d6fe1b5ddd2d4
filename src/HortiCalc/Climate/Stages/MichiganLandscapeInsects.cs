using HortiCalc.Evidence;
using static HortiCalc.Climate.StageRows;

namespace HortiCalc.Climate;

/// <summary>Insects of woody plants above 50 °F; the printed method and start were not at hand, nor the rows after the adelgid.</summary>
internal static class MichiganLandscapeInsects
{
    private static readonly Source Page = new(
        "michigan-landscape-insects",
        "GDD of landscape insects",
        "Michigan State University IPM",
        null,
        "https://msu-prod.dotcms.cloud/ipm/agriculture/christmas_trees/gdd_of_landscape_insects");

    public static readonly StageTable[] Rows =
    [
        Insect(Page, 50, "American plum borer", During("adults in flight, laying eggs", 245, 440), During("second generation", 1375, 1500)),
        Insect(Page, 50, "Arborvitae leafminer",
            During("first generation, larvae in mines", 245, 360),
            During("second generation", 533, 700),
            During("third generation", 1700, 2100)),
        Insect(Page, 50, "Balsam gall midge", During("adults laying eggs", 150, 300), During("galls apparent", 550, 700)),
        Insect(Page, 50, "Balsam twig aphid", During("egg hatch", 60, 100), During("stem mothers", 100, 140)),
        Insect(Page, 50, "Banded ash clearwing borer", During("adult emergence", 1800, 2200)),
        Insect(Page, 50, "Beech scale", At("eggs present", 800), At("egg hatch, first crawlers", 1250)),
        Insect(Page, 50, "Birch leafminer",
            During("first adults", 175, 215),
            During("adults laying eggs", 275, 375),
            During("larvae and pupae", 375, 500),
            During("second generation, adults laying eggs", 600, 700)),
        Insect(Page, 50, "Black pineleaf scale", At("egg hatch", 1068)),
        Insect(Page, 50, "Bronze birch borer", During("adults, eggs and young larvae", 400, 600)),
        Insect(Page, 50, "Cankerworm", During("young caterpillars", 100, 200)),
        Insect(Page, 50, "Cooley spruce gall adelgid",
            During("first adults on spruce", 25, 120),
            During("first galls on spruce", 200, 310),
            During("first adults on Douglas fir", 90, 180),
            During("first nymphs on Douglas fir", 90, 150),
            During("second nymphs on Douglas fir", 600, 1000)),
    ];
}
