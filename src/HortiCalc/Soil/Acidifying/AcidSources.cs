using HortiCalc.Evidence;

namespace HortiCalc.Soil;

/// <summary>
/// Where the rules of acidifying come from. A key is also the name of the file of published values, where the source prints any.
/// </summary>
internal static class AcidSources
{
    public static Source Rhs { get; } = new(
        "rhs-acidifying-soil", "Acidifying soil", "Royal Horticultural Society", null, "https://rhs.org.uk/soil-composts-mulches/acidifying-soil");

    public static Source Michigan { get; } = new(
        "michigan-sulphur-to-4-5",
        "How to acidify your soil: elemental sulphur needed to lower pH to 4.5, with data of Michigan State University",
        "TerraLink, horticultural supplier",
        null,
        "https://terralink.mailerpage.com/blog/u3p6t9-how-to-acidify-your-soil");

    // The page names no original, so it counts as custom.
    public static Source Australian { get; } = new(
        "au-sulphur-by-texture",
        "How do I change the pH of my soil?, sulphur to lower the top 10 cm",
        "garden supplier's help page, Australia",
        null,
        "https://inoculo.com.au/pages/how-do-i-change-the-ph-of-my-soil",
        SourceKind.CommonPractice);

    public static Source Blueberry { get; } = new(
        "extension-blueberry-sulfur", "Soil pH for Blueberry Plantings", "eXtension Blueberries", null, "https://blueberries.extension.org/soil-ph-for-blueberry-plantings/");

    public static Source GardenSoil { get; } = new(
        "garden-soil-sulfur",
        "Make The pH Work For You, dusting sulfur for one pH unit",
        "garden-soil.com, from a garden book",
        null,
        "http://www.garden-soil.com/garden_soil_make_ph_work_4.html",
        SourceKind.CommonPractice);

    public static Source HowTo { get; } = new(
        "how-to-lower-soil-ph",
        "How to lower soil pH, general rates for one pH unit",
        "how-to article",
        null,
        "https://lightslategraysweet.pages.dev/posts/how-to-lower-soil-ph-with-pictures-",
        SourceKind.CommonPractice);

    public static Source AluminiumByTexture { get; } = new(
        "aluminum-sulfate-by-texture",
        "Aluminum sulfate to lower soil pH, by texture",
        "garden blog",
        null,
        "http://365blogger.com/show/19539.html",
        SourceKind.CommonPractice);

    public static Source FreeCarbonate { get; } = new(
        "cropworx-free-lime", "March 2006: soil pH and how to correct it", "Cropworx", 2006, "https://www.cropworx.net/march-2006");

    public static Source Purdue { get; } = new(
        "purdue-turf-sulfur",
        "Sulfur is not effective for lowering pH of turfed soils",
        "Purdue University Turfgrass Science",
        null,
        "https://turf.purdue.edu/sulfur-is-not-effective-for-lowering-ph-of-turfed-soils/?cat=55");

    public static Source Clemson { get; } = new(
        "clemson-soil-acidification",
        "Soil pH Management, notes to the rates of sulfur",
        "Clemson Agricultural Service Laboratory",
        null,
        "https://precisionag.sites.clemson.edu/Calculators/Fertility/SoilAcidification");

    public static Source BritishColumbia { get; } = new(
        "bc-acidifying-soils",
        "Soil Acidity: Acidifying Soils, factsheet 638.100-1",
        "British Columbia Ministry of Agriculture",
        2015,
        "https://online.documentine.com/ferrous-sulfate-elemental-iron-conversion/1/acidifying-soils-bc-ministry-of-agriculture.html");

    public static Source GardenLimit { get; } = new(
        "garden-sulfur-limit",
        "Article on lowering pH, as sent to a list of fruit growers",
        "North American Fruit Explorers, mailing list",
        2007,
        "https://lists.ibiblio.org/pipermail/nafex/2007-May/026267.html",
        SourceKind.CommonPractice);

    public static Source Illinois { get; } = new(
        "illinois-acidifying-factors",
        "Amounts of aluminum and iron sulfate beside elemental sulfur, quoting University of Illinois Extension",
        "veryfocus.online",
        null,
        "http://www.veryfocus.online/articles_ljgmga.html");

    public static Source Minnesota { get; } = new(
        "ask-extension-iron-sulfate",
        "Making soil more acidic for blueberries, answer of 10 June 2013",
        "Ask Extension, Minnesota",
        2013,
        "https://ask.extension.org/questions/133176");

    public static Source Georgia { get; } = new(
        "georgia-alum-and-sulfur",
        "Aluminum sulfate and sulfur for a clay soil from pH 6 to 5, per 100 square feet",
        "walterreeves.com, garden advice, Georgia",
        null,
        "http://www.walterreeves.com",
        SourceKind.CommonPractice);

    public static Source UkExercise { get; } = new(
        "uk-horticulture-sulphur-exercise",
        "Exercise of a horticulture course: neutralising value of ammonium sulphate beside elemental sulphur",
        "freemathhelp.com",
        null,
        "https://freemathhelp.com/forum/threads/i-really-need-help-with-this-i-think-i-have-worked-out-the-first-part-but-im-not-sure-2nd-part-no-idea.122782");

    public static Source Alabama { get; } = new(
        "alabama-anr-174",
        "Nutrient Content of Fertilizer Materials, ANR-174",
        "Alabama A&M and Auburn Universities, Alabama Cooperative Extension System",
        null,
        "https://docslib.org/doc/3055401/nutrient-content-of-fertilizer-materials");

    public static Source Norganics { get; } = new(
        "norganics-fertilizer-alkalinity",
        "Acidity/Alkalinity of Fertilizer Materials",
        "norganics.com",
        null,
        "http://norganics.com/index-2/technical-articles/acidityalkalinity-of-fertilizer-materials");

    public static Source ServiTech { get; } = new(
        "servitech-nitrogen-acidity",
        "Crop File 1.04.102, Chemistry of soil pH: sources of acidity",
        "ServiTech",
        null,
        "https://cropfile.hostwiki.io/1-00-soil-fertility-and-plant-nutrition/1-04-102-chemistry-of-soil-ph-sources-of-acidity");

    public static Source CornellNitrogen { get; } = new(
        "cornell-nrcca-po-37",
        "PO 37, long-term change in soil pH from applying nitrogen",
        "Cornell University, Northeast Region Certified Crop Advisers",
        null,
        "https://nrcca.cals.cornell.edu/nutrient/CA5/CA0537.php");

    public static Source TeagascNitrogen { get; } = new(
        "teagasc-nitrogen-lime",
        "Weather to dictate lime application in coming weeks",
        "Teagasc, as printed by Agriland",
        null,
        "https://www.agriland.ie/farming-news/weather-to-dictate-lime-application-in-coming-weeks/");

    public static Source SulfurDataSheet { get; } = new(
        "sulphur-powder-data-sheet",
        "Sulphur powder, safety data sheet: H228, H315, H319",
        "Rowe Scientific",
        null,
        "https://paperzz.com/doc/8916978/sulphur-powder---rowe-scientific");

    public static Source SulfurDust { get; } = new(
        "wiser-sulfur",
        "Sulfur, fire and explosion",
        "National Library of Medicine, WISER",
        null,
        "https://webwiser.nlm.nih.gov/getSubstanceData.do?substanceId=395&displaySubstanceName=Sulfur&STCCID=&UNNAID=&selectedDataMenuItemID=50&catId=53");

    public static Source AluminiumLabel { get; } = new(
        "garden-aluminum-sulphate",
        "Aluminum Sulphate, directions for use",
        "Art's Garden Centre",
        null,
        "https://www.artsgardencentre.com/product-page/aluminum-sulphate");

    public static Source GardenSulfurTime { get; } = new(
        "us-garden-lowering-ph",
        "Lowering pH with Sulfur",
        "agroconection.com, garden advice",
        null,
        "http://www.agroconection.com/lowering-ph-with-sulfur.html",
        SourceKind.CommonPractice);

    public static Source Rodale { get; } = new(
        "rodale-sulfur-blueberries",
        "Sulfur for blueberries, after Clemson University",
        "Rodale's Organic Life",
        null,
        "https://www.rodalesorganiclife.com/garden/sulfur-for-blueberries");

    public static Source GardenServices { get; } = new(
        "garden-services-sulfur", "pH", "garden-services.com", null, "https://garden-services.com/soil_ph.htm", SourceKind.CommonPractice);
}
