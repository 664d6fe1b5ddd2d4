using HortiCalc.Evidence;

namespace HortiCalc.Soil;

/// <summary>
/// Where the rules of liming come from. A key is also the name of the file of published values, where the source prints any.
/// </summary>
internal static class LimeSources
{
    public static Source UkGardenTexture { get; } = new(
        "principles-of-horticulture-table-14-4",
        "Principles of Horticulture, Table 14.4 Raising soil pH guidelines",
        "Routledge",
        null,
        "http://what-when-how.com/Tutorial/topic-14138t3/Principles-of-Horticulture-188.html");

    // The page names no original, so it counts as custom.
    public static Source UsGardenTexture { get; } = new(
        "us-garden-limestone-to-6-5",
        "Raising pH with Limestone, pounds of ground limestone per 100 square feet",
        "agroconection.com, garden advice",
        null,
        "http://www.agroconection.com/raising-ph-with-limestone.html",
        SourceKind.CommonPractice);

    // The page names no original, so it counts as custom.
    public static Source AustralianGardenTexture { get; } = new(
        "au-lime-per-ph-unit-by-texture",
        "How do I change the pH of my soil?, lime to raise the top 10 cm by one pH unit",
        "garden supplier's help page, Australia",
        null,
        "https://inoculo.com.au/pages/how-do-i-change-the-ph-of-my-soil",
        SourceKind.CommonPractice);

    public static Source PennStateTurf { get; } = new(
        "penn-state-turf-lime",
        "Lime Recommendations - Turf, Table 1. Lime Recommendation",
        "Penn State Agricultural Analytical Services Laboratory",
        null,
        "https://agsci.psu.edu/aasl/soil-testing/fertility/handbooks/turf/tables/lime-recommendations-turf");

    public static Source PennStateAgronomic { get; } = new(
        "penn-state-agronomy-guide-limestone",
        "The Agronomy Guide, Part 1, Section 2: Limestone recommendation",
        "Penn State College of Agricultural Sciences",
        null,
        "http://agguide.agronomy.psu.edu/cm/sec2/sec24e1.cfm");

    public static Source PennStateHomeGarden { get; } = new(
        "penn-state-home-garden",
        "Home Garden, notes to the soil test report",
        "Penn State Agricultural Analytical Services Laboratory",
        null,
        "http://agsci.psu.edu/aasl/online-report/home-garden");

    public static Source PennStateHomeLawn { get; } = new(
        "penn-state-home-lawn",
        "Home Lawn - Maintain, notes to the soil test report",
        "Penn State Agricultural Analytical Services Laboratory",
        null,
        "https://agsci.psu.edu/aasl/online-report/home-lawn-maintain");

    public static Source PennStateCommercialTurf { get; } = new(
        "penn-state-commercial-turf",
        "Commercial Turf - Maintain, notes to the soil test report",
        "Penn State Agricultural Analytical Services Laboratory",
        null,
        "https://agsci.psu.edu/aasl/online-report/commercial-turf-maintain");

    public static Source NorthCarolina { get; } = new(
        "ncda-lime-and-fertilizer-requirements",
        "Agronomic Services - Soil Testing - Lime and Fertilizer Requirements",
        "N.C. Department of Agriculture and Consumer Services",
        null,
        "https://ncagr.gov/agronomic-services-soil-testing-lime-and-fertilizer-requirements");

    public static Source NorthCarolinaStandardLime { get; } = new(
        "ncda-circular-1-part-4",
        "Crop Fertilization Based on North Carolina Soil Tests, Part IV: Resource Information",
        "N.C. Department of Agriculture and Consumer Services",
        null,
        "http://www.ncagr.gov/agronomi/obpart4.htm");

    public static Source NorthCarolinaLawn { get; } = new(
        "nc-extension-lawn-lime",
        "Soil testing and the application of lime (R. Gaster, Lee County Center, as quoted)",
        "North Carolina Cooperative Extension",
        null,
        "https://www.jackjeffcoat.com/1182.news");

    public static Source AgriculturalLimeAssociation { get; } = new(
        "agricultural-lime-association-uk",
        "pH value and lime requirements",
        "Agricultural Lime Association",
        null,
        "https://aglime.org.uk/tech/ph_value_and_lime_requirements.php");

    public static Source IrishForageGuide { get; } = new(
        "irish-forage-guide-2018",
        "Forage Guide 2018",
        "Irish Farmers Monthly",
        2018,
        "http://irishfarmersmonthly.com/forageguide2018/html/27.html");

    public static Source MissouriSurface { get; } = new(
        "missouri-surface-lime",
        "How much lime to apply",
        "University of Missouri Extension, as printed by 921news.com",
        null,
        "https://921news.com/how-much-lime-to-apply/");

    public static Source Depth { get; } = new(
        "castle-hill-quarry-lime",
        "Agricultural Limestone Dust & Ground Limestone",
        "Castle Hill Quarry",
        null,
        "http://castle-hill-quarry.co.uk/page6.html");

    public static Source AtomicWeights { get; } = new(
        "iupac-atomic-weights-1997",
        "Standard atomic weights 1997",
        "International Union of Pure and Applied Chemistry",
        1997,
        "http://newdruginfo.com/pharmacopeia/usp28/v28230/usp28nf23s0_m6n00100.htm");

    public static Source CalciumHydroxideCard { get; } = new(
        "icsc-0408-calcium-hydroxide",
        "International Chemical Safety Card 0408, Calcium hydroxide",
        "International Programme on Chemical Safety, with the National Institute for Occupational Safety and Health",
        null,
        "http://niosh.dnacih.com/nioshdbs/ipcsneng/neng0408.htm");

    public static Source Rhs { get; } = new(
        "rhs-lime-and-liming",
        "Lime and liming",
        "Royal Horticultural Society",
        null,
        "https://rhs.org.uk/soil-composts-mulches/lime-liming");

    public static Source GardenLimingMaterials { get; } = new(
        "us-garden-liming-materials",
        "Liming materials",
        "agroconection.com, garden advice",
        null,
        "http://www.agroconection.com/liming-materials.html",
        SourceKind.CommonPractice);
}
