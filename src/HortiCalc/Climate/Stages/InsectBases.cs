using HortiCalc.Evidence;
using static HortiCalc.Climate.StageRows;

namespace HortiCalc.Climate;

/// <summary>Base temperatures of insects, where no sums are printed with them.</summary>
internal static class InsectBases
{
    private static readonly Source MinnesotaSeedcorn = new(
        "minnesota-seedcorn-maggot",
        "Seedcorn maggot degree days",
        "University of Minnesota",
        2020,
        "https://www.vegedge.umn.edu/scmdd");

    private static readonly Source MinnesotaCabbage = new(
        "minnesota-cabbage-maggot",
        "Cabbage maggot degree days",
        "University of Minnesota",
        2020,
        "https://www.vegedge.umn.edu/cmdd");

    private static readonly Source Carrotfly = new(
        "nordic-carrot-fly",
        "Carrot fly warning by temperature sum",
        "Norwegian Institute of Bioeconomy Research",
        2000,
        "https://gitlab.nibio.no/VIPS/models/grid/PSILARTEMP/-/commit/6b4123fd69f27116647f894efc80c571a571a4c3");

    private static readonly Source Warwick = new(
        "warwick-aphid-flight",
        "Pest blog: flight of aphids",
        "University of Warwick",
        2014,
        "https://blogs.warwick.ac.uk/rosemarycollier/monthly/0314");

    private static readonly Source Weevil = new(
        "alfalfa-weevil-base",
        "Egg hatch of Hypera postica",
        "Environmental Entomology 24:1404-1407",
        1995,
        "https://acnpsearch.tweb-dev.unibo.it/singlejournalindex/13437935");

    private static readonly Source OntarioVegetables = new(
        "ontario-vegetable-insects",
        "Insect pest and crop degree day update, June 13 2017",
        "Ontario Ministry of Agriculture",
        2017,
        "https://wegrowfortheworld.com/2017/06/insect-pest-and-crop-degree-day-update-june-13-2017/");

    public static readonly BaseTemperature[] Rows =
    [
        Base(StageSubject.Insect, "Seedcorn maggot", Between(39, 84.2), DegreeDayMethod.CappedMaximumAverage, UpperCutoff.Horizontal, MinnesotaSeedcorn),
        Base(StageSubject.Insect, "Cabbage maggot", Between(43, null), DegreeDayMethod.SimpleAverage, UpperCutoff.None, MinnesotaCabbage),
        Base(StageSubject.Insect, "Carrot fly", BetweenCelsius(5.0, null), null, UpperCutoff.None, Carrotfly),
        Base(StageSubject.Insect, "Aphids", BetweenCelsius(4.4, null), null, UpperCutoff.None, Warwick),
        Base(StageSubject.Insect, "Alfalfa weevil", Between(48, null), DegreeDayMethod.SingleSine, UpperCutoff.None, Weevil),
        Base(StageSubject.Insect, "Onion maggot", BetweenCelsius(4, null), null, UpperCutoff.None, OntarioVegetables),
        Base(StageSubject.Insect, "Seedcorn maggot", BetweenCelsius(4, null), null, UpperCutoff.None, OntarioVegetables),
        Base(StageSubject.Insect, "Cabbage maggot", BetweenCelsius(6, null), null, UpperCutoff.None, OntarioVegetables),
        Base(StageSubject.Insect, "Carrot weevil", BetweenCelsius(7, null), null, UpperCutoff.None, OntarioVegetables),
        Base(StageSubject.Insect, "Carrot rust fly", BetweenCelsius(3, null), null, UpperCutoff.None, OntarioVegetables),
        Base(StageSubject.Insect, "Aster leafhopper", BetweenCelsius(9, null), null, UpperCutoff.None, OntarioVegetables),
    ];
}
