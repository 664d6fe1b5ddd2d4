using HortiCalc.Evidence;

namespace HortiCalc.Soil;

/// <summary>Where the rules of soil tests and fertilisers come from. A key is also the name of the file of published values, where there are any.</summary>
internal static class NutrientSources
{
    public static Source Ifa { get; } = new(
        "ifa-conversion-factors",
        "Conversion factors: nutrients as percent of product",
        "International Fertilizer Industry Association",
        null,
        "http://www.fertilizer.org/ifa/Home-Page/STATISTICS/Conversions-factors");

    public static Source Sgs { get; } = new(
        "ifa-sgs-conversion-tables", "Conversion tables", "IFA, by SGS", null, "http://www.fertilizer.sgs.com/conversion-tables.htm");

    public static Source Sweden { get; } = new(
        "lmi-oxides",
        "Recalculate nutrient content from oxides to pure substance",
        "LMI AB, Sweden",
        null,
        "https://www.lmiab.com/en/faq-items/rakna-om-naringsinnehallet-fran-oxider-till-rent-amne/");

    public static Source NorthCarolina { get; } = new(
        "ncda-oxides",
        "Conversion of P2O5 to P",
        "N.C. Department of Agriculture and Consumer Services",
        null,
        "http://www.freedocumentsearch.com/doc/convert-p2o5-to-p.html");

    public static Source Ireland { get; } = new(
        "ireland-conversion-rates", "Conversion rates", "Fertilizer Association of Ireland", null, "https://fertilizer-assoc.ie/calculators-app/conversion-rates");

    public static Source IrishManure { get; } = new(
        "ireland-animal-manures", "Animal manures", "Fertilizer Association of Ireland", null, "https://www.fertilizer-assoc.ie/plant-nutrients/animal-manures/");

    public static Source NewZealandSalts { get; } = new(
        "new-zealand-nutrient-salts",
        "Fertiliser quality: composition of salts for nutrient solutions",
        "New Zealand hydroponic adviser",
        null,
        "http://www.ghvi.co.nz/new2/N8fertiliser_quality.php");

    public static Source TexasOrganics { get; } = new(
        "texas-organic-fertilizers",
        "Some common organic fertilizers",
        "Texas A&M, Earth-Kind gardening",
        null,
        "https://plantanswers.com/earthkind/ekgarden8.html");

    public static Source SaltIndex { get; } = new(
        "mortvedt-salt-index", "Salt indices of common fertilizers, after Mortvedt 2001", "Emami", null, "https://en.emamicorp.com/salinity-index-of-common-fertilizers");

    public static Source DefraManure { get; } = new(
        "defra-farmyard-manure",
        "Managing Livestock Manures: farmyard manure nitrogen",
        "UK Department for Environment, Food and Rural Affairs",
        null,
        "http://adlib.everysite.co.uk/adlib/defra/content.aspx?id=2RRVTHNXTS.88UF90DE8XRAN");

    public static Source CornellManure { get; } = new(
        "cornell-manure-release",
        "Release rate for organic N in manure, Crop and Soil Sciences 412",
        "Cornell University",
        null,
        "https://courses.cit.cornell.edu/css412/mod2/ext_m2_pg6.htm");

    public static Source Mineralization { get; } = new(
        "ijss-2007-mineralisation",
        "Nitrogen Mineralization Kinetics and Nutrient Availability in Soil Amended with Composted Tea Leaves, Coffee Waste and Kitchen Garbage",
        "International Journal of Soil Science",
        2007,
        "https://scialert.net/fulltext/?doi=ijss.2007.96.106&org=10#ref");

    public static Source CaliforniaComposts { get; } = new(
        "california-compost-nitrogen",
        "Nitrogen released from manure and compost in incubations and by fescue, 31 samples",
        "University of California Davis",
        null,
        "https://staging.scite.ai/authors/j-p-mitchell-YjaPVz");

    public static Source CarbonToNitrogen { get; } = new(
        "alberta-carbon-to-nitrogen",
        "Nutrient Management Planning Guide, chapter 4.3",
        "Alberta Agriculture",
        null,
        "http://www.agric.gov.ab.ca/flippingbook/agdex/400_28-3/html/files/assets/seo/page173.html");

    public static Source CompostHalving { get; } = Source.CommonPractice(
        "compost-nitrogen-halving", "mature compost gives 10 to 15 % of its nitrogen in the first year and half as much in each later one");
}
