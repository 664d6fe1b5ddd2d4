using HortiCalc.Evidence;
using static HortiCalc.Climate.StageRows;

namespace HortiCalc.Climate;

/// <summary>Insects of the orchard.</summary>
internal static class OrchardInsects
{
    private static readonly Source Page = new(
        "michigan-codling-moth",
        "Codling moth: about this model",
        "Michigan State University Enviroweather",
        null,
        "https://enviroweather.msu.edu/aboutThisModel.php?mod=f_cm");

    private static readonly Biofix Catch = Biofix.When("the first moths in the trap on two dates running");

    public static readonly StageTable[] Rows =
    [
        Insect(Page, 50, Catch, "Codling moth",
            At("first moths", 0),
            At("first egg hatch", 250),
            At("20 % egg hatch", 350),
            At("peak egg laying", 550),
            At("second generation, first moths", 1060),
            At("second generation, first egg hatch", 1250),
            At("second generation, peak of moths", 1600),
            At("second generation, peak egg laying", 1700)),
    ];
}
