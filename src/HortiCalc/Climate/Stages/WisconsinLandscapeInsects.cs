using HortiCalc.Evidence;
using static HortiCalc.Climate.StageRows;

namespace HortiCalc.Climate;

/// <summary>Insects and a mite of woody plants above 50 °F, as far as the copy goes; method and start are not stated.</summary>
internal static class WisconsinLandscapeInsects
{
    private static readonly Source Page = new(
        "wisconsin-landscape-insects",
        "Degree days for common landscape insect pests",
        "University of Wisconsin-Madison Fresh Market Vegetable Program",
        null,
        "https://docsbay.net/degree-days-for-common-landscape-insect-pests");

    public static readonly StageTable[] Rows =
    [
        Insect(Page, 50, "Ash borer", During("first-instar larvae", 275, 500)),
        Insect(Page, 50, "Ash plantbug", During("nymphs", 100, 200)),
        Insect(Page, 50, "Birch leafminer", During("first generation larvae", 275, 500)),
        Insect(Page, 50, "Black vine weevil", During("first generation adults", 400, 600), During("second generation adults", 900, 1000)),
        Insect(Page, 50, "Bronze birch borer", During("larvae", 400, 500)),
        Insect(Page, 50, "Cooley spruce gall adelgid",
            During("adults", 50, 100),
            At("egg hatch", 210),
            At("galls forming", 250),
            During("second generation nymphs", 2800, 3000)),
        Insect(Page, 50, "Cottony maple scale", At("egg hatch", 850), During("crawlers", 900, 1200)),
        Insect(Page, 50, "Eastern spruce gall adelgid",
            During("adults", 50, 100),
            At("egg hatch", 90),
            At("first-instar larvae", 100),
            During("second generation nymphs", 2800, 3000)),
        Insect(Page, 50, "Eastern tent caterpillar",
            At("egg hatch", 50),
            At("first-instar larvae", 100),
            At("second-instar larvae", 140),
            At("third-instar larvae", 350),
            At("adults", 725)),
        Insect(Page, 50, "Elm leaf beetle", During("larvae", 400, 500)),
        Insect(Page, 50, "Elm sawfly", At("larvae", 365)),
        Insect(Page, 50, "Euonymus scale", During("crawlers", 500, 700)),
        Insect(Page, 50, "European pine sawfly", During("first-instar larvae", 50, 100)),
        Insect(Page, 50, "European pine shoot moth", During("spring larvae active", 50, 100), At("adults", 900)),
        Insect(Page, 50, "Fall webworm", At("larvae", 850)),
        Insect(Page, 50, "Fletcher scale", During("adults", 100, 200), At("egg hatch", 600), During("crawlers active", 900, 1200)),
        Insect(Page, 50, "Gypsy moth", During("egg hatch", 100, 200), During("larvae", 200, 350)),
        Insect(Page, 50, "Hawthorn leafminer", During("larvae", 275, 500)),
        Insect(Page, 50, "Honeylocust plantbugs", During("present", 100, 200)),
        Insect(Page, 50, "Imported willow leaf beetle", During("present", 200, 350)),
        Insect(Page, 50, "Japanese beetle", During("adults", 900, 1200)),
        Insect(Page, 50, "Mountain ash sawfly", At("present", 500)),
        Insect(Page, 50, "Oystershell scale (brown race)",
            At("egg hatch", 265),
            During("first generation crawlers", 275, 500),
            During("second generation crawlers", 1600, 1700)),
        Insect(Page, 50, "Oystershell scale (grey race)", During("first generation crawlers", 400, 600)),
        Insect(Page, 50, "Pine needle scale",
            During("first generation crawlers", 200, 350),
            During("second generation crawlers", 1600, 1700)),
        Insect(Page, 50, "Pine spittlebug",
            At("first generation egg hatch", 145),
            At("second generation egg hatch", 1500),
            During("second generation crawlers", 1500, 1600)),
        Insect(Page, 50, "Spruce spider mite", During("present", 100, 200)),
        Insect(Page, 50, "Taxus mealybug", During("present", 275, 500)),
    ];
}
