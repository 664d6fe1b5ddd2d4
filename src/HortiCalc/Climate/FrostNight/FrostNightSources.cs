using HortiCalc.Evidence;

namespace HortiCalc.Climate;

/// <summary>Where the rules and tables about a frost night come from.</summary>
internal static class FrostNightSources
{
    public static readonly Source Fao = new(
        "fao-frost-protection",
        "Frost Protection: fundamentals, practice and economics, volume 1, chapter 5: Frost forecasting and monitoring",
        "R. L. Snyder and J. P. de Melo-Abreu, Food and Agriculture Organization of the United Nations",
        2005,
        "http://www.fao.org/3/y7223e/y7223e0b.htm");

    public static readonly Source Davis = new(
        "uc-davis-frost-principles",
        "Principles of Frost Protection, FP005 Quick Answer",
        "R. L. Snyder, University of California, Davis",
        2001,
        "http://biomet.ucdavis.edu/frostprotection/Principles");

    public static readonly Source Smith = new(
        "smith-1973-canterbury",
        "Frost: the scheme of Smith (1973) for Canterbury, quoted",
        "Crowe, New Zealand",
        null,
        "http://wiki.crowe.co.nz/Frost.ashx");

    public static readonly Source Linacre = new(
        "linacre-forecasting-frost",
        "Forecasting frost",
        "E. Linacre, notes at the University of Wyoming",
        null,
        "http://www-das.uwyo.edu/~geerts/cwx/notes/chap03/forecast_frost.html");

    public static readonly Source Knox = new(
        "knox-2017-wet-bulb",
        "Two Simple and Accurate Approximations for Wet-Bulb Temperature in Moist Conditions, with Forecasting Applications",
        "J. A. Knox, D. S. Nevius and P. N. Knox, Bulletin of the American Meteorological Society 98",
        2017,
        "https://doi.org/10.1175/BAMS-D-16-0246.1");

    public static readonly Source FrostTypes = new(
        "orange-gardener-frost-types",
        "Frost vs. freeze: features of radiation frost and advective freeze",
        "The Orange Gardener",
        null,
        "https://theorangegardener.org/topics/frost/types");

    public static readonly Source OntarioStart = new(
        "ontario-sprinkler-start",
        "Suggested starting temperatures for irrigation, based on dew point",
        "Ontario Ministry of Agriculture, Food and Rural Affairs",
        2024,
        "https://onfruit.ca/frost-protection-options-for-strawberry-growers/");

    public static readonly Source OntarioFactsheet = new(
        "ontario-strawberry-irrigation",
        "Irrigation for frost protection of strawberries",
        "Ontario Ministry of Agriculture, Food and Rural Affairs",
        2022,
        "https://www.ontario.ca/page/irrigation-frost-protection-strawberries");

    public static readonly Source GrowerArticleStart = new(
        "grower-article-sprinkler-start",
        "Strawberry frost protection",
        "a grower advisory article in the United States",
        2024,
        "https://www.keystonebioag.com/article/strawberry-frost-protection/");

    public static readonly Source MaineStrawberry = new(
        "maine-strawberry-frost",
        "Frost protection tips for strawberries",
        "University of Maine Cooperative Extension",
        2023,
        "https://extension.umaine.edu/highmoor/2023/05/16/frost-protection-tips-for-strawberries/");

    public static readonly Source MichiganTreeFruit = new(
        "msu-wsu-tree-fruit",
        "Critical spring temperatures for tree fruit bud development stages",
        "Michigan State University Extension, numbers from Washington State University",
        2021,
        "https://slidelegend.com/spring-freeze-damage-thresholds-for-tree-fruit-msu-extension_59bb346e1723dd2da9b6182f.html");

    public static readonly Source MichiganBlueberry = new(
        "msu-blueberry-critical",
        "Critical spring temperatures, highbush blueberry",
        "Michigan State University Extension",
        null,
        "http://www.canr.msu.edu/blueberries/weather/critical-spring-temperatures");

    public static readonly Source Purdue = new(
        "purdue-frost-damage",
        "Frost and freeze damage update, Facts for Fancy Fruit",
        "Purdue University",
        null,
        "https://fff.hort.purdue.edu/article/frost-and-freeze-damage-update");

    public static readonly Source MaineCranberry = new(
        "maine-cranberry-frost",
        "Cranberry frost tolerances",
        "University of Maine Cooperative Extension, after C. J. DeMoranville",
        2019,
        "https://extension.umaine.edu/cranberries/growing-cranberries/frost-tolerances/");

    public static readonly Source UtahFactSheet = new(
        "utah-ipm-012-11",
        "Critical Temperatures for Frost Damage on Fruit Trees, IPM-012-11",
        "Utah State University Extension",
        2011,
        "https://vdocuments.net/critical-temperatures-for-frost-damage-on-fruit-trees.html");

    public static readonly Source IntermountainCherry = new(
        "intermountain-cherry-stages",
        "Cherry growth stages and critical temperatures",
        "Intermountain Fruit, Utah State University Extension",
        null,
        "https://intermountainfruit.org/cold-effects/cherry-stages");

    public static readonly Source NorthCarolinaStrawberry = new(
        "nc-state-strawberry-sprinkling",
        "Grower question on using sprinkling on top of covers",
        "North Carolina State University Extension",
        2013,
        "https://strawberries.ces.ncsu.edu/2013/02/calculating-wet-bulb-with-13-rule/");

    public static readonly Source GeorgiaFreeze = new(
        "uga-b1479",
        "Commercial Freeze Protection for Fruits and Vegetables, Bulletin 1479",
        "University of Georgia Extension",
        null,
        "https://extension.uga.edu/publications/detail.html?number=B1479&title=Commercial+Freeze+Protection+for+Fruits+and+Vegetables");

    public static readonly Source Almanac = new(
        "almanac-freeze-classes",
        "Freeze and frost dates: classes of freezes, reprinted",
        "an almanac",
        null,
        "http://yesitsme2.tripod.com/frostdates.html");

    public static readonly Source NorthDakota = new(
        "north-dakota-frost-season",
        "Frost season",
        "D. Ritchison, state climatologist of North Dakota",
        null,
        "http://darylritchison.com/frost-season/");

    public static readonly Source Jackson = new(
        "nws-jackson-frost-freeze",
        "Frost and freeze information",
        "National Weather Service, Jackson, Mississippi",
        null,
        "http://www.weather.gov/jan/frostfreeze");

    public static readonly Source GardenHandout = new(
        "garden-handout-frost",
        "Light frost and hard frost, vegetable handout",
        "Olney's Gardens",
        null,
        "http://olneysgardens.com/16.html");

    public static readonly Source MetOfficeGlossary = new(
        "met-office-glossary-1991",
        "Meteorological Glossary (1991), quoted in: frost severity definition",
        "Met Office, United Kingdom",
        1991,
        "https://weatherdiary.uk/2024/01/15/frost-severity-definition");

    public static readonly Source AmsFrostDay = new(
        "ams-frost-day",
        "Glossary of Meteorology: frost day",
        "American Meteorological Society",
        null,
        "https://glossary.ametsoc.org/wiki/Frost_day");

    public static readonly Source MetOfficeStatistics = new(
        "met-office-ground-frost",
        "Ground frost, practice of the Met Office, quoted in an encyclopedia",
        "Met Office, United Kingdom",
        null,
        "http://the-uncensored-wiki.com:20121/2012-wikipedia_en_all_nopic_01_2012/A/Ground%20frost.html");
}
