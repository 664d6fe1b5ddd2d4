using HortiCalc.Evidence;
using UnitsNet;

namespace HortiCalc.Beds;

/// <summary>Published shares of nitrogen that manure and compost gave up, side by side: from one percent to forty.</summary>
public static class NitrogenShares
{
    private static readonly Source Davis = new(
        "uc-davis-compost-nitrogen", "Nitrogen and carbon mineralization dynamics of manures and composts", "University of California, Davis", 2000, "https://staging.scite.ai/authors/j-p-mitchell-YjaPVz");

    private static readonly Source Almond = new(
        "almond-doctor-compost", "Compost applications for the almond orchard", "extension adviser (California)", null, "http://thealmonddoctor.com/almond/compost-applications-for-the-almond-orchard/");

    private static readonly Source Hadas = new(
        "hadas-portnoy-1994", "Nitrogen and carbon mineralization rates of composted manures incubated in soil", "Journal of Environmental Quality 23(6)", 1994, "https://acnpsearch.tweb-dev.unibo.it/singlejournalindex/42016415");

    private static readonly Source Horrocks = new(
        "horrocks-2016-municipal-compost", "Municipal compost as a nutrient source for organic crop production in New Zealand", "Agronomy", 2016, "https://pl.scribd.com/document/395444986/agronomy-06-00035-pdf");

    /// <summary>All of them.</summary>
    public static IReadOnlyList<NitrogenShare> Published { get; } = ValueList<NitrogenShare>.Of(
    [
        Weeks("manure", true, 12, 12, 16, 16, "incubation of 1996", Davis),
        Weeks("manure compost", true, 12, 12, 7, 7, "incubation of 1996", Davis),
        Weeks("plant residue compost", true, 12, 12, 1, 1, "incubation of 1996", Davis),
        Weeks("manure", true, 24, 24, 15, 15, "incubation of 1997", Davis),
        Weeks("manure compost", true, 24, 24, 6, 6, "incubation of 1997", Davis),
        Weeks("plant residue compost", true, 24, 24, 2, 2, "incubation of 1997", Davis),
        Weeks("manure", false, 17, 18, 11, 11, "recovered by fescue", Davis),
        Weeks("manure compost", false, 17, 18, 6, 6, "recovered by fescue", Davis),
        Weeks("plant residue compost", false, 17, 18, 2, 2, "recovered by fescue", Davis),
        Weeks("mature compost", false, 52, 52, 10, 15, "rule for the first year; half of it in each year after", CompostSources.Course),
        Weeks("most composts", false, 52, 52, 5, 10, "advice", Almond),
        Weeks("cattle manure compost", false, 32, 32, 11, 29, "incubation at 30 °C", Hadas),
        Weeks("municipal compost", false, 156, 208, 13, 23, "used by crops in three to four years", Horrocks),
    ]);

    private static NitrogenShare Weeks(
        string material, bool isOfOrganic, double fromWeeks, double toWeeks, double lowPercent, double highPercent, string way, Source source) =>
        new(material, isOfOrganic, Duration.FromDays(7 * fromWeeks), Duration.FromDays(7 * toWeeks), Ratio.FromPercent(lowPercent), Ratio.FromPercent(highPercent), way, source);
}
