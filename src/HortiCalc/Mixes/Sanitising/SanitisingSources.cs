using HortiCalc.Evidence;

namespace HortiCalc.Mixes;

/// <summary>The sources of what is said about chlorine in water and contact times.</summary>
internal static class SanitisingSources
{
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
}
