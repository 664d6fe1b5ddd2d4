using HortiCalc.Evidence;

namespace HortiCalc.Soil;

/// <summary>Where the rates for potting media come from.</summary>
internal static class MediumSources
{
    public static Source Textbook { get; } = new(
        "horticulture-table-4-11-lime",
        "Horticulture Principles and Practices, Table 4-11 Selected Standard Mixes",
        "textbook, as printed online",
        null,
        "https://www.yumpu.com/en/document/view/59981442/horticulture-principles-and-practices/172");

    public static Source CornellTropical { get; } = new(
        "cornell-tropical-mixes-lime", "Cornell Tropical Plant Mixes, as quoted", "Cornell University", null, "https://www.hort.net/lists/seeds-list/jan97/msg00003.html");

    public static Source Alberta { get; } = new(
        "alberta-agdex-731-lime",
        "Hobby Greenhouses in Alberta, Agdex 731-5, as quoted",
        "Alberta Agriculture",
        null,
        "http://www.backyardgardener.com/soil/soil13.html");

    public static Source DavisPeat { get; } = new(
        "uc-davis-peat-lime",
        "Peat & Lime Requirements",
        "University of California, Davis, International Programs",
        2007,
        "http://afghanag.ucdavis.edu/natural-resource-management/soil-topics/soil-fact-sheets/FS_Growing_Media_Peat_Lime_requirement.doc/view");

    public static Source VonPost { get; } = new(
        "von-post-peat-lime",
        "Chemical properties of hydroponics substrates: pH, after Maher et al. 2008",
        "Alwaha Agri",
        2023,
        "https://alwahahagri.com/index.php/2023/03/31/chemical-properties-of-hydroponics-substrates-ph/");

    public static Source Supplier { get; } = new(
        "potting-soil-supplier-lime", "Lime in potting soil", "supplier's article", null, "https://zhcnt1.ilovetranslation.com/OGH4tQz2Ogu=d", SourceKind.CommonPractice);

    public static Source TexasQuoted { get; } = new(
        "texas-aggie-lime-quoted",
        "Lime for container media, Texas Aggie Horticulture and University of Georgia Extension as quoted in a forum",
        "autoflower.org",
        null,
        "https://www.autoflower.org/threads/adjusting-soil-ph-with-dolomite-garden-lime.16359",
        SourceKind.CommonPractice);

    public static Source ResidualLime { get; } = new(
        "residual-lime-peat-perlite",
        "Limestone particle size and residual lime concentration (Huang, Fisher, Horner, Argo)",
        "studylib.net",
        null,
        "https://studylib.net/doc/14615553/1-limestone-particle-size-and-residual-lime-concentration...");

    public static Source Nursery { get; } = new(
        "container-nursery-lime",
        "What container mixes do you recommend?",
        "container nursery's page",
        2024,
        "https://24dev.rootmaker.com/2024/11/08/what-container-mixes-do-you-recommend",
        SourceKind.CommonPractice);

    public static Source SubstrateTrial { get; } = new(
        "nursery-substrate-sulfur",
        "Substrate pH Suppression Using Incorporated Sulfur-Based Compounds in Nursery Container Production",
        "abstract in a scientific journal",
        null,
        "https://discovery.researcher.life/article/substrate-ph-suppression-using-incorporated-sulfur-based-compounds-in-nursery-container-production/924fb24ed95236f7a7f633439c062491");
}
