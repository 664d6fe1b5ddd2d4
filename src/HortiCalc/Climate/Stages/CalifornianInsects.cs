using HortiCalc.Evidence;
using static HortiCalc.Climate.StageRows;

namespace HortiCalc.Climate;

/// <summary>Models of the University of California: a method and a cutoff each.</summary>
internal static class CalifornianInsects
{
    private static readonly Source Page = new(
        "california-insect-models",
        "Phenology model descriptions",
        "University of California Statewide IPM Program",
        null,
        "https://ipm.ucanr.edu/weather/phenology-models-description/");

    private static readonly DegreeDayMethod Sine = DegreeDayMethod.SingleSine;

    public static readonly StageTable[] Stages =
    [
        Insect(Page, Between(51, 90), Sine, UpperCutoff.Vertical, Biofix.On(new MonthDay(1, 1)), "San Jose scale, traps",
            At("set out traps for males", 200)),
        Insect(Page, Between(51, 90), Sine, UpperCutoff.Horizontal, Biofix.When("the first overwintered male in the trap"), "San Jose scale on almond",
            At("crawlers", 405),
            During("best time against crawlers", 600, 700)),
        Insect(Page, Between(50, 88), Sine, UpperCutoff.Horizontal, Biofix.When("the first male moth in the trap"), "Peach twig borer",
            At("first peak of two", 232.2),
            At("single peak of flight", 369),
            At("best time against the overwintered flight", 400),
            At("second peak of two", 676.8)),
        Insect(Page, Between(51.8, null), Sine, UpperCutoff.None, Biofix.On(new MonthDay(3, 1)), "Elm leaf beetle",
            At("begin to count eggs", 360),
            At("peak of eggs", 510),
            At("peak of first and second instar", 700),
            At("second generation, begin to count eggs", 1565),
            At("second generation, peak of eggs", 1715),
            At("second generation, peak of first and second instar", 2000)),
        Insect(Page, Between(50.7, null), Sine, UpperCutoff.None, Biofix.On(new MonthDay(1, 1)), "Black cutworm",
            At("set out traps", 90)),
    ];

    public static readonly DevelopmentTime[] Times =
    [
        Lasts(Page, "San Jose scale", "females before larvae", 541, Between(51, 90), Sine, UpperCutoff.Vertical),
        Lasts(Page, "San Jose scale", "first instar", 231, Between(51, 90), Sine, UpperCutoff.Vertical),
        Lasts(Page, "San Jose scale", "second instar", 220, Between(51, 90), Sine, UpperCutoff.Vertical),
        Lasts(Page, "San Jose scale", "tight cap females", 58, Between(51, 90), Sine, UpperCutoff.Vertical),
        Lasts(Page, "San Jose scale", "generation", 1050, Between(51, 90), Sine, UpperCutoff.Vertical),
        Lasts(Page, "Peach twig borer", "generation, adult to adult", 1080, Between(50, 88), Sine, UpperCutoff.Horizontal),
        Lasts(Page, "Corn earworm (Texas)", "eggs", 72.9, Between(54.7, 91.9), Sine, UpperCutoff.Intermediate),
        Lasts(Page, "Corn earworm (Texas)", "small larvae, first to third instar", 147.1, Between(54.7, 91.9), Sine, UpperCutoff.Intermediate),
        Lasts(Page, "Corn earworm (Texas)", "large larvae, fourth and fifth instar", 217.1, Between(54.7, 91.9), Sine, UpperCutoff.Intermediate),
        Lasts(Page, "Corn earworm (Texas)", "pupae", 323.1, Between(54.7, 91.9), Sine, UpperCutoff.Intermediate),
        Lasts(Page, "Corn earworm (Texas)", "generation, egg to adult", 760.1, Between(54.7, 91.9), Sine, UpperCutoff.Intermediate),
        Lasts(Page, "Corn earworm (Texas)", "adults before laying", 112.7, Between(54.7, 91.9), Sine, UpperCutoff.Intermediate),
        Lasts(Page, "Corn earworm (Texas)", "generation, adult to adult", 872.8, Between(54.7, 91.9), Sine, UpperCutoff.Intermediate),
        Lasts(Page, "Corn earworm (Oregon)", "larvae", 360, Between(54.5, null), Sine, UpperCutoff.None),
        Lasts(Page, "Black cutworm (laboratory)", "eggs", 93.6, Between(50.7, 86), null, UpperCutoff.None),
        Lasts(Page, "Black cutworm (laboratory)", "larvae", 635.4, Between(50.7, 86), null, UpperCutoff.None),
    ];
}
