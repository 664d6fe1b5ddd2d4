using HortiCalc.Evidence;

namespace HortiCalc.Beds;

/// <summary>Sources on compost that more than one table draws on.</summary>
internal static class CompostSources
{
    public static readonly Source Course = new(
        "compost-calculations-course", "Compost calculations", "course hand-out", null, "https://siteproxy.ruqli.workers.dev:443/https/www.scribd.com/document/475881217/compost-calculations");

    public static readonly Source Washington = new(
        "washington-compost-salts", "Garden tips: too much compost", "Washington State University Extension", 2016, "http://ext100.wsu.edu/gardentips/2016/08/02/too-much-compost/");

    public static readonly Source Colorado = new(
        "colorado-soil-lab", "Poor plant growth and salts", "Colorado State University Soil Testing Laboratory", null, "http://soiltestinglab.colostate.edu/articles.html");

    public static readonly Source Missouri = new(
        "missouri-compost-analysis", "Interpreting the results and recommendations of compost analysis, table 1", "University of Missouri Extension", null, "https://extension.missouri.edu/programs/soil-and-plant-testing-laboratory/spl-compost-analysis/");
}
