using HortiCalc.Evidence;

namespace HortiCalc.Soil;

/// <summary>Where what is said of liming materials comes from.</summary>
internal static class MaterialSources
{
    public static Source PennStateForage { get; } = new(
        "penn-state-forage-liming", "Liming", "Penn State Extension, forages", null,
        "http://www.forages.psu.edu/topics/soil_fertility/pre_estab/liming.html");

    public static Source OregonTopDressing { get; } = new(
        "oregon-em-9057", "Applying Lime to Raise Soil pH for Crop Production (Western Oregon), EM 9057", "Oregon State University Extension", null,
        "https://extension.oregonstate.edu./catalog/pub/em-9057-applying-lime-raise-soil-ph-crop-production-western-oregon");

    public static Source CornellEnv { get; } = new(
        "cornell-effective-neutralizing-value", "PO 41: purity, fineness and calcium carbonate equivalent", "Cornell University, Northeast Region CCA", null,
        "https://courses2.cit.cornell.edu/cca/soilFertilityCA/CA5/CA512.html");

    public static Source Missouri { get; } = new(
        "missouri-effective-neutralizing-material", "Ag Lime Control Service", "University of Missouri", null, "http://aes.missouri.edu/pfcs/index.stm");

    // The same publication gives the equivalent of hydrated lime, so the key is that of its file.
    public static Source Iowa { get; } = new(
        "wisconsin-liming-terminology", "Liming Terminology and Analysis (example of J. Sawyer, Iowa State University)", "University of Wisconsin-Madison", null,
        "https://fdocuments.in/amp/document/liming-terminology-and-liming-terminology-and-analysis-carrie-laboski-university.html");

    public static Source Mississippi { get; } = new(
        "mississippi-p3762", "Agricultural Limestone's Neutralizing Value, P3762", "Mississippi State University Extension", null,
        "http://extension.msstate.edu/publications/information-sheets/agricultural-limestones-neutralizing-value?page=3");

    public static Source MississippiSixty { get; } = new(
        "mississippi-acidity-and-liming", "Acidity and Liming", "Mississippi State University Extension", null,
        "http://extension.msstate.edu/agriculture/crops/soils/acidity-and-liming");

    public static Source Ohio { get; } = new(
        "british-columbia-637-200-2", "Evaluation of Agricultural Limestone, Order No. 637.200-2 (method developed in Ohio)", "British Columbia Ministry of Agriculture", 2015,
        "https://www.scribd.com/document/501367941/637200-2-evaluation-agricultural-limestone");

    public static Source Ontario { get; } = new(
        "ontario-agricultural-index", "Sources of Agricultural Limestone", "Ontario Ministry of Agriculture, Food and Rural Affairs", null,
        "http://www.omafra.gov.on.ca/english/crops/resource/limeston.htm");

    public static Source PeatMedia { get; } = new(
        "hortscience-42-1268", "Container-substrate pH response to differing limestone type and particle size", "HortScience 42(5), 1268-1273", 2007,
        "https://studylib.net/doc/14615551/container-substrate-ph-response-to-differing-limestone-ty...");

    public static Source SieveSizes { get; } = new(
        "servitech-sieve-sizes", "Crop File 2.03.011, Table 1. Sieve and Particle Size Conversions", "ServiTech", null,
        "https://cropfile.hostwiki.io/2-00-fertilizer-lime-amendment-technology-and-use/2-03-011-liming-material-quality");
}
