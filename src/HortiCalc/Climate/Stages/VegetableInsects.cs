using HortiCalc.Evidence;
using static HortiCalc.Climate.StageRows;

namespace HortiCalc.Climate;

/// <summary>Insects of the vegetable garden; method and, but for one, start are not stated.</summary>
internal static class VegetableInsects
{
    private static readonly Source Page = new(
        "wisconsin-vegetable-insects",
        "Degree days for common fruit and vegetable insect pests",
        "University of Wisconsin-Madison (K. Delahaut)",
        2015,
        "https://pddc.dev.webhosting.cals.wisc.edu/2015/07/21/degree-days-for-common-fruit-and-vegetable-insect-pests/");

    private static readonly Biofix FirstEggs = Biofix.When("the first eggs");

    public static readonly StageTable[] Rows =
    [
        Insect(Page, 43, "Cabbage maggot",
            At("first generation flies", 300),
            At("second generation flies", 1476),
            At("third generation flies", 2652)),
        Insect(Page, 50, FirstEggs, "Colorado potato beetle",
            At("first instar", 185),
            At("second instar", 240),
            At("third instar", 300),
            At("fourth instar", 400),
            At("pupa", 675)),
        Insect(Page, 50, "Common asparagus beetle", During("egg laying", 150, 240)),
        Insect(Page, 50, "Corn rootworm", At("adults present", 1300)),
        Insect(Page, 50, "European corn borer",
            At("first spring moths", 375),
            At("first eggs", 450),
            At("peak spring moths", 631),
            At("first summer moths", 1400),
            At("first summer eggs", 1450),
            At("first summer egg hatch", 1550),
            At("peak summer moths", 1733),
            During("summer treatment period", 1550, 2100)),
        Insect(Page, 50, "Imported cabbageworm", During("butterflies", 150, 240)),
        Insect(Page, 40, "Onion maggot",
            At("first generation flies", 680),
            At("second generation flies", 1950),
            At("third generation flies", 3230)),
    ];
}
