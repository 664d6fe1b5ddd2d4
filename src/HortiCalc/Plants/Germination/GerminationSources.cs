using HortiCalc.Evidence;

namespace HortiCalc.Plants;

/// <summary>Where the figures of germination come from.</summary>
internal static class GerminationSources
{
    public static readonly Source Knott = new(
        "knott-emergence-days",
        "Days required for seedling emergence at various soil temperatures from seed planted 1/2 inch deep",
        "University of California Santa Cruz, Teaching Organic Farming and Gardening, after Knott's Handbook for Vegetable Growers",
        1997,
        "https://issuhub.com/view/index?id=3972&pageIndex=132");

    public static readonly Source Oregon = new(
        "oregon-seed-germination",
        "Soil temperature conditions for vegetable seed germination",
        "Oregon State University Extension, J. F. Harrington",
        2013,
        "https://extension.oregonstate.edu/gardening/soil-compost/soil-temperature-conditions-vegetable-seed-germination");

    public static readonly Source Heirloom = new(
        "heirloom-emergence-days",
        "Days required for vegetable seedling emergence at various soil temperatures",
        "heirloom seed company information page",
        null,
        "https://victoryseeds.com/pages/germination-temps");

    public static readonly Source Harrington = new(
        "harrington-normal-seedlings",
        "Percentage of normal vegetable seedlings produced at different soil temperatures, with days to emergence",
        "farm information page reproducing the table of Harrington",
        null,
        "https://highanddryfarm.com/germination-versus-temperature");

    public static readonly Source California = new(
        "california-soil-ranges",
        "Soil temperature ranges for seed germination",
        "garden broadcaster page, Sacramento Valley, California",
        null,
        "http://www.farmerfred.com/soiltemp_eto.htm");

    public static readonly Source Textbook = new(
        "abiotic-stress-germination",
        "Ranges of temperatures for seed germination of different crops",
        "Abiotic Stress - Plant Responses and Applications in Agriculture, Table 1",
        null,
        "http://what-when-how.com/Tutorial/topic-1005u3kes/Abiotic-Stress-Plant-Responses-and-Applications-in-Agriculture-179.html");

    public static readonly Source Magazine = new(
        "magazine-soil-temperatures",
        "Soil temperatures for vegetable seed germination: minimum, optimum, maximum",
        "GRIT (magazine)",
        null,
        "https://www.grit.com/farm-and-garden/weathering-the-elements/");

    public static readonly Source Onion = new(
        "onion-germination",
        "Onions and other Vegetable Alliums, equations 4.6 and 4.7",
        "textbook; data of Harrington 1962",
        2008,
        "http://what-when-how.com/Tutorial/topic-894gk04/Onions-and-other-Vegetable-Alliums-109.html");

    public static readonly Source OnionWhiteLisbon = new(
        "onion-white-lisbon",
        "Onions and other Vegetable Alliums, equations 4.8 and 4.9",
        "textbook",
        2008,
        "http://what-when-how.com/Tutorial/topic-894gk04/Onions-and-other-Vegetable-Alliums-113.html");

    public static readonly Source Fennel = new(
        "fennel-germination",
        "Influence of temperature on seed germination response of fennel",
        "Advances in Plants & Agriculture Research 1(5):207-213",
        2014,
        "http://medcraveonline.com/APAR/influence-of-temperature-on-seed-germination-response-of-fennel.html");

    // The curve of the cardinal temperatures alone, as several open implementations of the paper have it.
    public static readonly Source Yin = new(
        "yin-1995",
        "A nonlinear model for crop development as a function of temperature",
        "Agricultural and Forest Meteorology 77:1-16",
        1995,
        "https://doi.org/10.1016/0168-1923(95)02236-Q");

    public static readonly Source Lentil = new(
        "lentil-emergence",
        "Cardinal temperatures and thermal time required for emergence of lentil (Lens culinaris Medik)",
        "Legume Research 40(2):291-298",
        2017,
        "https://www.arccjournals.com/journal/legume-research-an-international-journal/LR-266");

    public static readonly Source Cumin = new(
        "cumin-germination",
        "Application of nonlinear regression models for prediction of cardinal temperatures in seed germination of various cumin ecotypes",
        "University of Tehran",
        null,
        "https://magiran.com/paper/2119308/");

    public static readonly Source MedicinalPlants = new(
        "medicinal-plants-cardinal",
        "Evaluation of cardinal temperature for three species of medicinal plants, Ajowan, Fennel and Dill",
        "Ferdowsi University of Mashhad",
        null,
        "https://jdesert.ut.ac.ir/article_31870.html");

    public static readonly Source ThymeFennelCalligonum = new(
        "thyme-fennel-cardinal",
        "Cardinal temperatures of germination of Thymus transcaspicus, Foeniculum vulgare and Calligonum junceum",
        "International journal of advanced biological and biomedical research",
        null,
        "http://www.ijabbr.com/article_12518.html");

    public static readonly Source LeafyVegetables = new(
        "african-leafy-vegetables",
        "African leafy vegetables germination study",
        "copy of a paper",
        null,
        "https://th4.ilovetranslation.com/HiR0kBivPPS=d");

    public static readonly Source WeedThresholds = new(
        "weed-threshold-temperatures",
        "Calculating the threshold temperature of development for weeds",
        "Weed Science",
        null,
        "http://core-cms.prod.aop.cambridge.org/core/journals/weed-science/article/calculating-the-threshold-temperature-of-development-for-weeds/63CCAF5F28B4734A7CFE93AB5F6F6883");

    public static readonly Source WeedEmergence = new(
        "weed-emergence-soil",
        "Soil growing degree-days to 50 % weed emergence, north central United States",
        "USDA Agricultural Research Service, Forcella and others, meeting abstract",
        1997,
        "https://www.ars.usda.gov/research/publications/publications.htm?SEQ_NO_115=80836");

    public static readonly Source WisconsinMaize = new(
        "wisconsin-corn-emergence",
        "Benchmarks for corn development",
        "University of Wisconsin",
        1996,
        "https://corn.agronomy.wisc.edu/WCM/W027.aspx");

    public static readonly Source Cotton = new(
        "cotton-emergence",
        "Monitoring cotton growth",
        "cotton growth guide",
        null,
        "https://www.aganytime.com/cotton/Pages/Article.aspx?name=Monitoring-Cotton-Growth&fields=article&article=1396");

    public static readonly Source Waterhemp = new(
        "waterhemp-emergence",
        "Waterhemp emergence",
        "weather blog, North Dakota",
        null,
        "http://darylritchison.com/water-hemp-emergence/");
}
