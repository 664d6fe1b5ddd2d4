using HortiCalc.Evidence;

namespace HortiCalc.Mixes;

/// <summary>The sources of what is said about chlorine in water and contact times.</summary>
internal static class SanitisingSources
{
    public static readonly Source ChlorometricDegrees = new(
        "chlorometric-degrees",
        "Le degré chlorométrique",
        "Union des professeurs de physique et de chimie",
        null,
        "http://national.udppc.asso.fr/index.php/espace-labo-sp-1127088026/preparation-tp-chimie/186-degre-chlorometrique");

    public static readonly Source UsgsConstants = new(
        "usgs-phreeqc-hypochlorous",
        "PHREEQC, database llnl.dat: log K of hypochlorous acid at 25 °C",
        "US Geological Survey",
        2025,
        "https://github.com/usgs-coupled/phreeqc");

    public static readonly Source Textbook = new(
        "free-chlorine-problem",
        "Free residual chlorine concentration in water: examination problem",
        "examination collection",
        null,
        "https://questions.collegedunia.com/exams/questions/free-residual-chlorine-concentration-in-water-was-67ee09ac8e8ea38e832e03e3");

    public static readonly Source Morris = new(
        "morris-1966",
        "The acid ionization constant of HOCl from 5 to 35°, Journal of Physical Chemistry 70:3798",
        "J. C. Morris",
        1966,
        null,
        SourceKind.FromMemory);

    public static readonly Source MicroIrrigationTable = new(
        "micro-irrigation-chlorination",
        "Management, Performance, and Applications of Micro Irrigation Systems, Table 3",
        "book excerpt",
        null,
        "http://what-when-how.com/Tutorial/topic-1494s6gp/Management-Performance-and-Applications-of-Micro-Irrigation-Systems-128.html");

    public static readonly Source StorageModel = new(
        "bleach-breakdown-in-storage",
        "Breakdown of bleach over time by storage temperature (computed by its author with a rate model)",
        "pool chemistry wiki",
        null,
        "https://www.troublefreepool.com/wiki/index.php?title=Breakdown_of_Bleach_Over_Time_by_Storage_Temp");

    public static readonly Source HazardousSubstances = new(
        "hsdb-sodium-hypochlorite",
        "Hazardous Substances Data Bank: sodium hypochlorite",
        "National Library of Medicine",
        null,
        "https://webwiser.nlm.nih.gov");

    public static readonly Source YearlyLoss = new(
        "bleach-loss-a-year",
        "How long bleach keeps",
        "biology web page",
        null,
        "https://biologyinsights.com",
        SourceKind.CommonPractice);

    public static readonly Source WithinADay = new(
        "medical-bleach-dilution",
        "Diluted bleach as a disinfectant: time of use",
        "medicalalgorithms.com",
        null,
        "https://www.medicalalgorithms.com");

    public static readonly Source FivePathogens = new(
        "cayanan-2009",
        "Efficacy of chlorine in controlling five common plant pathogens, HortScience 44(1):157-163",
        "D. F. Cayanan, P. Zhang, W. Liu, M. Dixon, Y. Zheng",
        2009,
        "https://doi.org/10.21273/hortsci.44.1.157");

    public static readonly Source Phytophthora = new(
        "hong-2003",
        "Efficacy of Chlorine on Multiple Species of Phytophthora in Recycled Nursery Irrigation Water, Plant Disease 87(10):1183-1189",
        "C. X. Hong, P. A. Richardson, P. Kong, E. A. Bush",
        2003,
        "https://bvbvf1.bib-bvb.de/vufind/PrimoRecord/cdi_proquest_miscellaneous_2187025878");

    public static readonly Source AustralianNurseries = new(
        "niasa-chlorination",
        "Nursery Industry Accreditation Scheme, Australia: chlorination of irrigation water",
        "Nursery and Garden Industry Queensland",
        null,
        "http://www.ngiq.asn.au");

    public static readonly Source VermontSanitisers = new(
        "vermont-produce-sanitizers",
        "How to Use Sanitizers on a Produce Farm",
        "University of Vermont Extension",
        2023,
        "https://foodsafetyclearinghouse.org/es/node/1250");

    public static readonly Source Alaska = new(
        "alaska-sanitizing",
        "Sanitizing",
        "State of Alaska Division of Environmental Health",
        null,
        "https://info.5y1.org/chlorine-test-strips-for-sanitizing_1_a0c062.html");

    public static readonly Source BulbSeed = new(
        "pacific-bulb-society-seed",
        "Cleaning seed with bleach",
        "Pacific Bulb Society list",
        2003,
        null,
        SourceKind.CommonPractice);

    public static readonly Source HotWater = new(
        "hot-water-seed-treatment",
        "What to do to get rid of dangerous bacteria: hot-water treatment of seed",
        "newspaper garden column",
        2010,
        "http://www.denpubs.com/news/2010/jan/07/what-to-do-to-get-rid-of-dangerous-bacteria/");

    public static readonly Source HotWaterConnecticut = new(
        "hot-water-seed-connecticut",
        "Hot-water treatment of tomato and pepper seed, citing the University of Connecticut",
        "garden advice page",
        null,
        "https://www.gardenguides.com/121417",
        SourceKind.CommonPractice);

    public static readonly Source PathogensInside = new(
        "ohio-state-hyg-5818",
        "Hot water and chlorine treatment of vegetable seeds (HYG-5818)",
        "Ohio State University Extension",
        null,
        null,
        SourceKind.FromMemory);

    public static readonly Source CaliforniaFoodLaw = new(
        "california-health-and-safety-114099-6",
        "Health and Safety Code, section 114099.6: manual sanitization",
        "State of California",
        null,
        "https://california.public.law/codes/ca_health_and_safety_code_section_114099.6");

    public static readonly Source MaineFoodCode = new(
        "maine-food-code-4-703-11",
        "Maine Food Code, chapter 200, section 4-703.11: hot water and chemical",
        "State of Maine",
        null,
        "https://casetext.com/regulation/maine-administrative-code/department-10-department-of-health-and-human-services/division-144-department-of-health-and-human-services-general/chapter-200-maine-food-code-chapter-200-is-a-joint-chapter-with-01-001-the-department-of-agriculture-food-and-rural-resources-ch-331/chapter-4-equipment-utensils-andlinens/section-144-200-4-7-sanitization-of-equipment-and-utensils");

    public static readonly Source PeraceticConidia = new(
        "smilanick-2016",
        "Quantification of the mortality of conidia of Botrytis cinerea and Penicillium digitatum in peracetic acid",
        "American Phytopathological Society, J. Smilanick and L. Grant",
        2016,
        "http://www.apsnet.org/meetings/Documents/2016_meeting_abstracts/aps2016_303.htm");

    public static readonly Source PeroxideInWater = new(
        "pcs-peroxides-in-water",
        "The use of peroxides for water disinfection in horticulture",
        "Research Centre for Ornamental Plants (PCS), Belgium, for FERTINNOWA",
        null,
        "https://www.fertinnowa.com/technologies/use-peroxides-water-disinfection-horticulture/");

    public static readonly Source PeroxideOnBenches = new(
        "iowa-peroxide-and-peracids",
        "Hydrogen peroxide and peracids, 8.2.5",
        "University of Iowa, Environmental Health and Safety",
        null,
        "https://ehs.research.uiowa.edu/825-hydrogen-peroxide-and-peracids");

    public static readonly Source QuaternaryLabel = new(
        "quaternary-ammonium-label-1677-43",
        "Label of a quaternary ammonium sanitizer of 10 %, EPA registration 1677-43",
        "label archive of Washington State University",
        2010,
        "https://vdocument.in/deodorizing-questar-qac-net-contents-55-us-cru66cahewsuedupicolpdfwa39946pdfquestar.html");

    public static readonly Source PeroxideInKitchen = new(
        "ohio-peroxide-kitchen",
        "Using hydrogen peroxide to clean and sanitize your kitchen",
        "Ohio State University Extension",
        null,
        "https://livesmartohio.osu.edu/food/treber-1osu-edu/using-hydrogen-peroxide-to-clean-and-sanitize-your-kitchen");

    public static readonly Source PeroxideOnFirSeed = new(
        "forest-nursery-peroxide-seed",
        "Disinfecting seeds with hydrogen peroxide, Forest Nursery Notes",
        "USDA Forest Service",
        1998,
        "https://www.scribd.com/document/355045835/Disinfecting-Seeds-With-Hydrogen-Peroxide-1");

    public static readonly Source PeroxideOnSproutSeed = new(
        "beuchat-1997",
        "Comparison of chemical treatments to kill Salmonella on alfalfa seeds destined for sprout production, International Journal of Food Microbiology 34(3):329",
        "L. R. Beuchat, University of Georgia",
        1997,
        "https://sproutnet.com/comparison-of-chemical-treatments-to-kill/");

    public static readonly Source PeraceticOnSeed = new(
        "hopkins-2003",
        "Wet seed treatment of watermelon with peroxyacetic acid, Plant Disease 87(12):1495",
        "D. L. Hopkins and others",
        2003,
        "https://apsnet.org/publications/plantdisease/2003/December/Pages/87_12_1495.aspx");

    public static readonly Source QuaternaryOnFusarium = new(
        "quaternary-fusarium-2023",
        "Behavior and use of quaternary ammonium-based disinfectants in biosafety protocols, Plant Disease, doi 10.1094/PDIS-06-23-1138-RE",
        "American Phytopathological Society",
        2023,
        "https://bohrium.dp.tech/paper/arxiv/37877994");

    public static readonly Source QuaternaryIowa = new(
        "scott-county-sanitizers",
        "Sanitizer requirements",
        "Scott County, Iowa",
        null,
        "https://scottcountyiowa.gov/node/78456");

    public static readonly Source AlcoholSoak = new(
        "arizona-pruning-tools-2018",
        "Sanitizing pruning tools",
        "University of Arizona Cooperative Extension",
        2018,
        "https://cals.arizona.edu/yavapai/anr/hort/byg/archive/sanitizingpruningtools2018.html");

    public static readonly Source PeroxideHurtsPlants = new(
        "peroxide-phytotoxicity-review",
        "Hydrogen peroxide for cleaning irrigation system in pathogen control in soilless cultures (review quoted)",
        "ResearchGate",
        null,
        "https://www.researchgate.net/publication/285730689_Hydrogen_peroxide_for_cleaning_irrigation_system_in_pathogen_control_in_soilless_cultures");
}
