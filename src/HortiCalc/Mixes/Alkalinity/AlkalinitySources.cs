using HortiCalc.Evidence;

namespace HortiCalc.Mixes;

/// <summary>The sources of water alkalinity. Each key is also the name of a file of published values, where the source prints any.</summary>
internal static class AlkalinitySources
{
    /// <summary>
    /// Water, carbonate, sulfate and ammonium from phreeqc.dat, phosphate and citrate from minteq.v4.dat, which takes them from NIST databases 46.3 and 46.2.
    /// </summary>
    public static readonly Source Constants = new(
        "usgs-equilibrium-constants",
        "PHREEQC databases phreeqc.dat and minteq.v4.dat: equilibrium constants",
        "U.S. Geological Survey",
        2025,
        "https://github.com/usgs-coupled/phreeqc");

    public static readonly Source Davies = new(
        "davies-activity",
        "Activity coefficients after Davies (1967), equation 5-43 of Crittenden and others (2012)",
        "tidywater, documentation of calculate_activity",
        2025,
        "https://rdrr.io/cran/tidywater/man/calculate_activity.html");

    public static readonly Source UniversityOfMassachusetts = new(
        "umass-adjusting-alkalinity",
        "Adjusting Alkalinity with Acids",
        "University of Massachusetts Extension",
        null,
        "https://ag.umass.edu/greenhouse-floriculture/fact-sheets/adjusting-alkalinity-with-acids");

    public static readonly Source AcidChoices = new(
        "acid-choices-for-alkalinity",
        "Acid Choices for Reducing Water Alkalinity, Table 1",
        "training page of a maker of growing media",
        null,
        "https://pthorticulture.com/en-ca/training-center/acid-choices-for-reducing-water-alkalinity");

    public static readonly Source Bucket = new(
        "acid-concentration-by-bucket",
        "How to calculate the concentration of acid required",
        "irrigation manufacturer",
        null,
        "https://www.rivulis.com/knowledge-hub/maintenance/number-5-chemical-treatment/acid-treatment/how-to-calculate-the-concentration-of-acid-required/");

    public static readonly Source TradePressTargets = new(
        "alkalinity-by-container",
        "Production pointers: understanding alkalinity",
        "trade-press extension column",
        null,
        "https://greenhousemag.com/article/production-pointers-understanding-alkalinity");

    public static readonly Source MediaMakerTargets = new(
        "alkalinity-by-container-media",
        "Suggested water alkalinity by container, text of a maker of growing media",
        "forum copy",
        null,
        "https://icmag.com/threads/ph-levels-pt-1.5780");

    public static readonly Source SourceWater = new(
        "oklahoma-hydroponic-water",
        "Electrical Conductivity and pH Guide for Hydroponics, Table 1: acceptable values in source water",
        "Oklahoma State University Extension",
        null,
        "https://extension.okstate.edu/fact-sheets/electrical-conductivity-and-ph-guide-for-hydroponics.html");

    public static readonly Source Custom = Source.CommonPractice("citric-acid-is-consumed", "microbes consume citric acid in stored water");
}
