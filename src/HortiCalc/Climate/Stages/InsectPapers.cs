using HortiCalc.Evidence;
using static HortiCalc.Climate.StageRows;

namespace HortiCalc.Climate;

/// <summary>Development thresholds and thermal constants from papers, fitted at constant temperatures.</summary>
internal static class InsectPapers
{
    private static readonly Source African = new(
        "african-entomology-codling-moth",
        "Development rates of the embryonic and immature stages of codling moth",
        "African Entomology 17(2):208",
        2009,
        "https://bioone.org/journals/african-entomology/volume-17/issue-2/003.017.0208/Development-Rates-of-the-Embryonic-and-Immature-Stages-of-Codling/10.4001/003.017.0208.short");

    private static readonly Source Adly = new(
        "adly-helicoverpa",
        "Development of Helicoverpa armigera on lettuce in Egypt",
        "Adly and others",
        null,
        "https://kiphub.com/paper/670ab649eeb5c7cfbf9a87df");

    private static readonly Source Lacanobia = new(
        "lacanobia-2002",
        "Development of Lacanobia subjuncta by temperature",
        "Environmental Entomology 31:995-999",
        2002,
        "https://wiki.pestinfo.org/wiki/Environmental_Entomology_(2002)_31,_995-999");

    private static readonly Source Eudocima = new(
        "eudocima-salaminia",
        "Effects of temperature on development and seasonality of Eudocima salaminia in eastern Australia",
        "Bulletin of Entomological Research",
        null,
        "https://homsy-staging.cambridgecore.org/core/journals/bulletin-of-entomological-research/article/abs/effects-of-temperature-on-development-and-seasonality-of-eudocima-salaminia-lepidoptera-noctuidae-in-eastern-australia/70FCCD70F42A69962071BAAD4E8140BE");

    private static readonly Source Leafroller = new(
        "choristoneura-1985",
        "Development of Choristoneura rosaceana by temperature",
        "Environmental Entomology 14:17-19",
        1985,
        "https://hopper.science.oregonstate.edu/wea/weaabst.html");

    public static readonly DevelopmentTime[] Rows =
    [
        LastsCelsius(African, "Cydia pomonella", "egg", 80.1, 11.1),
        LastsCelsius(African, "Cydia pomonella", "larva", 345.5, 7.9),
        LastsCelsius(African, "Cydia pomonella", "pupa", 280.0, 9.9),
        LastsCelsius(Adly, "Helicoverpa armigera", "egg", 43.05, 12.56),
        LastsCelsius(Adly, "Helicoverpa armigera", "larva", 255.66, 11.09),
        LastsCelsius(Adly, "Helicoverpa armigera", "pupa", 231.29, 11.23),
        LastsCelsius(Adly, "Helicoverpa armigera", "generation", 589.62, 10.92),
        LastsCelsius(Lacanobia, "Lacanobia subjuncta", "egg", 75, 6.6),
        LastsCelsius(Lacanobia, "Lacanobia subjuncta", "larva", 476, 6.7),
        LastsCelsius(Lacanobia, "Lacanobia subjuncta", "pupa", 312, 4.9),
        LastsCelsius(Eudocima, "Eudocima salaminia", "egg (50 % eclosion)", 62.4, 11),
        LastsCelsius(Eudocima, "Eudocima salaminia", "larva", 246, 12),
        LastsCelsius(Eudocima, "Eudocima salaminia", "pupa", 233, 12),
        LastsCelsius(Leafroller, "Choristoneura rosaceana", "egg (oviposition to hatch)", 111.9, 10.0),
        LastsCelsius(Leafroller, "Choristoneura rosaceana", "pupa", 117.4, 9.5),
        LastsCelsius(Leafroller, "Choristoneura rosaceana", "pre-oviposition", 35.2, 11.9),
    ];
}
