using HortiCalc.Evidence;
using UnitsNet;

namespace HortiCalc.Beds;

/// <summary>Published salt limits of soils and composts, side by side with the extract each belongs to, as far as it is said.</summary>
public static class SaltLimits
{
    private static readonly Source Clemson = new(
        "clemson-compost-interpretation", "Compost interpretation", "Clemson University Agricultural Service Laboratory", null, "http://www.clemson.edu/public/regulatory/ag_svc_lab/compost/interpretation.html");

    private static readonly Source Arkansas = new(
        "arkansas-fsa6098-quoted", "Greenhouse and nursery substrates, FSA6098 (quoted)", "University of Arkansas", null, "https://www.spring-lake.net/blog/tag/substrates/");

    /// <summary>Compost above this is better not used.</summary>
    public static SaltLimit AvoidCompost { get; } = Of("compost to be avoided above", "", 8, 8, CompostSources.Washington);

    /// <summary>What is desired of compost by the strictest of its extracts, one part to two of water.</summary>
    public static SaltLimit Desired { get; } = Of("compost, desired below", "1 to 2", 1.5, 1.5, CompostSources.Missouri);

    /// <summary>All of them.</summary>
    public static IReadOnlyList<SaltLimit> Published { get; } = ValueList<SaltLimit>.Of(
    [
        Of("soil that most plants tolerate", "", 2.5, 3, CompostSources.Colorado),
        Of("soil that hurts salt-sensitive plants", "", 2, 2.5, CompostSources.Colorado),
        Of("saline soil", "", 4, 4, CompostSources.Colorado),
        AvoidCompost,
        Of("composts as they typically are", "", 1, 10, Clemson),
        Of("mature compost", "", 3.5, 3.5, CompostSources.Course),
        Of("fresh container medium without fertiliser", "pour-through", 0.75, 0.75, Arkansas),
        Of("container medium, typical", "saturated medium", 0.5, 3, Arkansas),
        Of("compost, desired below", "saturated paste", 4, 4, CompostSources.Missouri),
        Of("compost, desired below", "1 to 1", 2.5, 2.5, CompostSources.Missouri),
        Desired,
    ]);

    private static SaltLimit Of(string subject, string extract, double low, double high, Source source) => new(
        subject,
        extract,
        ElectricConductivity.FromMillisiemensPerCentimeter(low),
        ElectricConductivity.FromMillisiemensPerCentimeter(high),
        source);
}
