using HortiCalc.Evidence;

namespace HortiCalc.Soil;

/// <summary>Where the pH of crops comes from.</summary>
internal static class CropPhSources
{
    public static Source Fao { get; } = new(
        "fao-ecocrop-ph", "EcoCrop database: soil pH columns", "FAO EcoCrop, copy in github.com/OpenCLIM/ecocrop", 2024, "https://gaez.fao.org/pages/ecocrop");

    public static Source Almanac { get; } = new(
        "us-almanac-ph",
        "pH Preferences: Trees, Shrubs, Vegetables, and Flowers",
        "The Old Farmer's Almanac",
        null,
        "http://www.almanac.com/content/ph-preferences?quicktabs_2=2");

    public static Source Oklahoma { get; } = new(
        "okstate-pss-2229-ph",
        "Soil pH and Buffer Index, Table 1. pH Preference of Common Field Crops",
        "Oklahoma State University Extension, PSS-2229",
        null,
        "https://extension.okstate.edu/fact-sheets/soil-ph-and-buffer-index.html");

    public static Source Oregon { get; } = new(
        "oregon-em-9057-ph",
        "Applying Lime to Raise Soil pH for Crop Production (Western Oregon), Table 1. Minimum soil pH",
        "Oregon State University Extension, EM 9057",
        2013,
        "https://studylib.net/doc/13885792/s-applying-lime-to-raise-soil-ph-for-crop-production--wes...");

    public static Source Ahdb { get; } = new(
        "ahdb-target-ph",
        "Soil pH and liming recommendations for arable and grass systems",
        "AHDB, Nutrient Management Guide RB209",
        null,
        "https://ahdb.org.uk/knowledge-library/soil-ph-and-liming-recommendations-for-arable-and-grass-systems");

    public static Source Germany { get; } = new(
        "germany-target-ph",
        "Ziel-pH-Wert und Erhaltungskalkung (Ackerland, Grünland)",
        "top agrar",
        null,
        "https://www.topagrar.com/heftplus/hohe-naehrstoffeffizienz-ph-wert-11581429.html");

    public static Source Vdlufa { get; } = new(
        "vdlufa-class-c-ph",
        "Orientierungswerte für pH-Werte auf Acker und Grünland (class C)",
        "lime supplier citing VDLUFA",
        null,
        "http://www.montex-gmbh.de/duengekalk/kalkbedarf/");

    public static Source ClemsonHgic1650 { get; } = new("clemson-hgic-1650-ph", "HGIC 1650 Changing the pH of Your Soil", "Clemson University, Home & Garden Information Center", null, "https://studylib.net/doc/18223853/soil-ph---clemson-university");

    public static Source ClemsonHgicLimiting { get; } = new("clemson-hgic-limiting-ph", "HGIC blog, Could Soil pH Be Limiting", "Clemson University, Home & Garden Information Center", null, "https://hgic.clemson.edu/could-soil-ph-be-limiting-your-gardens-potential/");

    public static Source NcdaSoilLabColumn { get; } = new("ncda-soil-lab-column-ph", "target pH", "NCDA&CS soil lab column", null, "https://jocoreport.com/agronomist-explains-the-basics-of-soil-ph-and-lime");

    public static Source PennStateTurf { get; } = new("penn-state-turf-ph", "Liming Turfgrass Areas", "Penn State", null, "http://turf.psu.edu/extension/factsheets/liming");

    public static Source PennStateAgronomy { get; } = new("penn-state-agronomy-ph", "target pH", "Penn State Agronomy Guide", null, "http://agguide.agronomy.psu.edu/cm/sec2/sec24e1.cfm");

    public static Source MissouriBarton { get; } = new("missouri-barton-ph", "Barton County", "University of Missouri Extension", null, "http://outreach.missouri.edu/barton/agriculture.aspx");

    public static Source TeagascTarget { get; } = new("teagasc-target-ph", "target pH", "Teagasc Calculating Lime Advice", null, "https://www.teagasc.ie/about/farm-advisory/advisory-regions/cork-east/farm-advice/calculating-lime-advice/");

    public static Source IrishForageGuide { get; } = new("irish-forage-guide-ph", "target pH", "Irish Farmers Monthly Forage Guide 2018", null, "http://irishfarmersmonthly.com/forageguide2018/html/27.html");

    public static Source UkHorticulturalSociety { get; } = new("uk-horticultural-society-ph", "UK", "Horticultural society page", null, "http://www.shas.org.uk/Lime", SourceKind.CommonPractice);

    public static Source DpirdTarget { get; } = new("dpird-target-ph", "Developing a liming program", "DPIRD WA", null, "https://www.agric.wa.gov.au/managing-soils/developing-liming-program?nopaging=1");

    public static Source SundownFarms { get; } = new("sundown-farms-ph", "target pH", "Sundown Farms pH Targets", null, "https://sundownfarms.com/garden-advice/ph-targets/", SourceKind.CommonPractice);

    public static Source MarylandContainer { get; } = new("maryland-container-ph", "target pH", "University of Maryland article on Kent Co. extension blog", null, "http://kentcoopextension.blogspot.com/2008/07/nursery-lime-and-nursery-growing-media.html");

    public static Source RavensdownPasture { get; } = new("ravensdown-pasture-ph", "Science of lime", "Ravensdown", null, "https://ravensdown.co.nz/expertise/science-of-lime-saves-wasting-time");
}
