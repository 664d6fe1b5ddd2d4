using HortiCalc.Evidence;

namespace HortiCalc.Mixes;

/// <summary>The sources of this room. Each key is also the name of a file of published values, where the source prints any.</summary>
internal static class MixSources
{
    /// <summary>
    /// Prints the molar masses of sodium hypochlorite, 74.442 g/mol, and chlorine, 70.906 g/mol, the trade per cent and four
    /// densities.
    /// </summary>
    public static readonly Source HypochloriteDefinitions = new(
        "forum-hypochlorite-15-percent",
        "15% Sodium Hypochlorite",
        "Pool chemistry forum",
        null,
        "http://www.troublefreepool.com/threads/93570-15-Sodium-Hypochlorite");

    /// <summary>Defines the four ways to state the strength of bleach, after the Handbook of Chlorination (1972).</summary>
    public static readonly Source HypochloriteProfile = new(
        "hypochlorite-product-profile",
        "Product Profile: Sodium Hypochlorite, Strengths of Solutions (after Handbook of Chlorination, 1972)",
        "Industrial Literature",
        null,
        "https://user-mjooq7g.cld.bz/Industrial-Literature/57");

    public static readonly Source KansasBleach = new(
        "kdhe-disinfecting-with-bleach",
        "Disinfecting with Clorox",
        "Kansas Department of Health and Environment",
        null,
        "https://www.kdhe.ks.gov/1019/Disinfecting-with-Clorox");

    public static readonly Source PennState = new(
        "penn-state-disinfecting-tools",
        "Disinfecting Tools, Equipment, Pots, Flats and Benches",
        "Penn State Extension",
        null,
        "https://extension.psu.edu/disinfecting-tools-equipment-pots-flats-and-benches");

    public static readonly Source UniversityOfMassachusetts = new(
        "umass-fall-greenhouse",
        "Preparing Your Greenhouse for Fall Crops",
        "University of Massachusetts text on a University of Georgia list",
        2011,
        "https://listserv.uga.edu/cgi-bin/wa?A3=ind1108&L=AGED-SOUTH&E=8bit&P=59109&B=--&T=text%2Fplain;%20charset=ISO-8859-1&header=1");

    public static readonly Source Phytosphere = new(
        "phytosphere-sanitizing-tools",
        "Phytosanitary Procedures for BMPs for Producing Clean Nursery Stock, 2.3 Sanitizing tools and surfaces",
        "Phytosphere Research",
        null,
        "http://phytosphere.com/BMPsnursery/phytosan2_3.htm");

    public static readonly Source WorldHealthOrganization = new(
        "who-annex-g",
        "Infection Prevention and Control of Epidemic- and Pandemic-Prone Acute Respiratory Infections in Health Care, Annex G, Table G.1",
        "World Health Organization",
        2014,
        "http://ncbi.nlm.nih.gov/books/NBK214356/table/annexg.t1/?report=objectonly");

    public static readonly Source ChlorineSolution = new(
        "cdc-chlorine-solution",
        "How to Make 0.1% Chlorine Solution to Disinfect Surfaces in Non-Healthcare Settings",
        "Centers for Disease Control and Prevention",
        2021,
        "https://www.cdc.gov/coronavirus/2019-ncov/global-covid-19/make-chlorine-solution-non-healthcare-settings.html");

    public static readonly Source FacilityCleaning = new(
        "cdc-cleaning-facility",
        "Cleaning And Disinfecting Your Facility (CS316270A)",
        "Centers for Disease Control and Prevention",
        2020,
        "https://records.co.kittitas.wa.us/Weblink/DocView.aspx?id=5253823");

    public static readonly Source AfterAnEmergency = new(
        "cdc-bleach-after-emergency",
        "Cleaning and Sanitizing with Bleach after an Emergency",
        "Centers for Disease Control and Prevention",
        null,
        "http://www.cdc.gov/disasters/bleach.html");

    /// <summary>The ceiling of 200 ppm of free chlorine on surfaces that touch food.</summary>
    public static readonly Source FoodContactCeiling = new(
        "cfr-21-178",
        "Code of Federal Regulations, Title 21, Part 178, as quoted by a food industry association",
        "United States Government",
        null,
        "affi.org");

    public static readonly Source Hygiene = new(
        "cdc-cleaning-with-bleach",
        "Cleaning and Disinfecting with Bleach",
        "Centers for Disease Control and Prevention",
        null,
        "https://cdc.gov/hygiene/about/cleaning-and-disinfecting-with-bleach.html");

    public static readonly Source BleachAndPesticides = new(
        "bleach-and-pesticides",
        "The Dangers of Mixing Bleach",
        "cleaning service",
        null,
        "https://sunsetblvdstudios.com/?p=2301");

    public static readonly Source FireProtection = new(
        "nfpa-mixing-chemicals",
        "D.I.Y. - The Dangers of Mixing Household Chemicals",
        "National Fire Protection Association",
        2020,
        "https://www.nfpa.org/News-and-Research/Publications-and-media/Blogs-Landing-Page/Safety-Source/Blog-Posts/2020/04/13/diy-the-dangers-of-mixing-chemicals");

    public static readonly Source Guelph = new(
        "guelph-hydrogen-peroxide",
        "Hydrogen Peroxide, Controlled Environment Systems",
        "University of Guelph",
        null,
        "https://studylib.net/doc/6792890/hydrogen-peroxide---controlled-environment-systems");

    public static readonly Source LimeSulfur = new(
        "household-products-lime-sulfur",
        "Household Products Database: lime sulfur spray, health effects from the safety data sheet",
        "National Library of Medicine",
        2019,
        "https://hpd.nlm.nih.gov/cgi-bin/household/brands?tbl=brands&id=19022038");

    public static readonly Source CombinedChlorine = new(
        "hortscience-combined-chlorine",
        "Ammonium in Nutrient Solutions Decreases Free Chlorine Concentration from Sodium Hypochlorite",
        "HortScience 48:1304",
        2013,
        "https://journals.ashs.org/hortsci/view/journals/hortsci/48/10/article-p1304.xml");

    public static readonly Source GreenhouseCleaning = new(
        "umass-cleaning-greenhouse",
        "Cleaning and Disinfecting the Greenhouse",
        "University of Massachusetts Extension",
        null,
        "https://ag.umass.edu/fact-sheets/cleaning-disinfecting-greenhouse");

    public static readonly Source CaliforniaOilAndSulfur = new(
        "uc-ipm-powdery-mildew",
        "Fungicides: Powdery mildew on fruits & berries",
        "University of California Statewide IPM Program",
        null,
        "https://ipm.ucanr.edu/m/pn7494-3.html");

    public static readonly Source LabelIsLaw = new(
        "mid-atlantic-vegetables-label",
        "Mid-Atlantic Commercial Vegetable Production Recommendations",
        "Rutgers New Jersey Agricultural Experiment Station",
        2018,
        "http://njaes.rutgers.edu/pubs/publication.asp?pid=E001");

    public static readonly Source TestFirst = new(
        "leon-county-cornell-formula",
        "Mildew - Cornell fungicide formula (after Organic Gardening, April 1994)",
        "Leon County Public Library",
        2001,
        "https://www.leoncountyfl.gov/libraryapps/stumpers/view.asp?trivianumber=742");

    public static readonly Source PollinatorGardens = new(
        "cornell-low-impact-pesticides",
        "Pollinator-friendly gardens: low impact pesticides",
        "Cornell Cooperative Extension of Monroe County",
        null,
        "https://monroe.cce.cornell.edu/master-gardeners/pollinator-friendly-gardens/low-impact-pesticides");

    public static readonly Source OilInCold = new(
        "light-horticultural-oil",
        "Using light horticultural oil",
        "Garden advice page",
        null,
        "https://gardening.yardener.com/Using-Light-Hort-Oil",
        SourceKind.CommonPractice);

    public static readonly Source DryChlorine = new(
        "calcium-hypochlorite-label",
        "Calcium hypochlorite of 65 % available chlorine, directions for use",
        "label of a pool product",
        null,
        "https://proseriespool.com/calcium-hypochlorite/");

    public static readonly Source IsopropylAlcohol = new(
        "new-jersey-isopropyl-alcohol",
        "Right to Know Hazardous Substance Fact Sheet: Isopropyl alcohol",
        "New Jersey Department of Health",
        2016,
        "https://online.documentine.com/common-uses-for-rubbing-alcohol/1/right-to-know-hazardous-substance-fact-sheet-new-jersey.html");

    public static readonly Source ChlorinePowder = new(
        "cdc-appendix-e",
        "Best Practices for Environmental Cleaning in Global Healthcare Facilities, Appendix E",
        "Centers for Disease Control and Prevention",
        null,
        "https://www.cdc.gov/healthcare-associated-infections/hcp/cleaning-global/appendix-e.html");

    public static readonly Source ColoradoSoap = new(
        "colorado-state-soaps",
        "Insect Control: Soaps and Detergents (5.547)",
        "Colorado State University Extension",
        null,
        "http://extension.colostate.edu/topic-areas/insects/insect-control-soaps-and-detergents-5-547");

    public static readonly Source LeeCountySoap = new(
        "lee-county-soap",
        "Topic: Making insecticidal soap",
        "Lee County, Florida, extension horticulture agent",
        2013,
        "https://growagardener.blogspot.com/2013/11/topic-making-insecticidal-soap.html");

    public static readonly Source RutgersOil = new(
        "rutgers-dormant-oil",
        "Don't Burn Baby Burn",
        "Rutgers Plant & Pest Advisory",
        null,
        "https://plant-pest-advisory.rutgers.edu/dont-burn-baby-burn");

    public static readonly Source FruitGrowersOil = new(
        "fruit-growers-spray-amounts",
        "Spray amounts guide",
        "Fruit growers' forum",
        null,
        "https://growingfruit.org/t/spray-amounts-guide/3643",
        SourceKind.CommonPractice);

    public static readonly Source BakingSoda = new(
        "attra-baking-soda",
        "Use of Baking Soda as a Fungicide",
        "NCAT/ATTRA",
        2001,
        "https://abcdocz.com/doc/120489/u--b-s");

    public static readonly Source StockCompatibility = new(
        "haifa-fertilizer-compatibility",
        "Compatibility of fertilisers in stock solutions",
        "Haifa Group",
        null,
        "https://www.haifa-group.com");

    public static readonly Source AcidIntoWater = new(
        "alabama-anr-652",
        "Chemical injection: acid (ANR-652)",
        "Alabama Cooperative Extension System",
        null,
        "https://ssl.acesag.auburn.edu/anr/irrigation/pubs/ANR-0652.php?WT.ac=addThisGoogle");

    public static readonly Source FertiliserMixing = new(
        "which-fertilizers-not-mixed",
        "Which fertilizers should not be mixed",
        "biology web page",
        null,
        "https://biologyinsights.com/which-fertilizers-should-not-be-mixed");

    public static readonly Source Custom = Source.CommonPractice(
        "mixes-common-practice", "household mixes of the garden by the spoon");
}
