using HortiCalc.Evidence;

namespace HortiCalc.Beds;

/// <summary>Where the published bulk densities come from.</summary>
internal static class BulkDensitySources
{
    public static readonly Source CalRecycle = new(
        "calrecycle-debris-weights",
        "Approximate pounds per cubic yard (debris and site materials)",
        "CalRecycle (California)",
        null,
        "http://www.calrecycle.ca.gov/SWFacilities/CDI/Tools/Calculations.htm");

    public static readonly Source Massachusetts = new(
        "massdep-recycling-weights",
        "Weight conversions, Massachusetts municipal recycling regulations (quoted)",
        "Massachusetts (quoted on a trade forum)",
        2011,
        "http://www.lawnsite.com/archive/index.php/t-359023.html");

    public static readonly Source Oregon = new(
        "oregon-material-densities",
        "Material density for the Oregon Material Recovery Survey",
        "Oregon Department of Environmental Quality",
        2005,
        "https://greenyes.grrn.org/2005/04/msg00009.html");

    public static readonly Source Nofa = new(
        "nofa-bulk-weights",
        "Weight of organic materials per bushel and per cubic yard",
        "Northeast Organic Farming Association",
        null,
        "http://www.nofa.org/soil/html/appendix1.php");

    public static readonly Source SaturatedBlends = new(
        "texas-yard-saturated",
        "Bulk densities of landscape soils at saturation, compacted",
        "soil and mulch yard (US, Texas)",
        null,
        "http://woodmaterialsyard.com/our-soil-bulk-densities/");

    public static readonly Source WetMulch = new(
        "wet-mulch-weights",
        "How much does wet mulch weigh",
        "general advice page",
        null,
        "https://interesting-information.com/how-much-does-wet-mulch-weigh/");

    public static readonly Source OregonYard = new(
        "oregon-compost-yard",
        "Using compost",
        "county compost yard (Oregon)",
        null,
        "https://deschutesrecycling.com/composting/");

    public static readonly Source UkSupplier = new(
        "uk-landscape-supplier",
        "How much to order",
        "landscape supplier (UK)",
        null,
        "http://www.gardenclever.com/need-to-work-out-how-much-to-order-253-c.asp");

    public static readonly Source Antipodes = new(
        "antipodean-bulk-weights",
        "Compost weight per cubic metre",
        "general advice page (Australian and New Zealand figures)",
        null,
        "http://parsdaramad.com/0cf91a/ca4a2d-compost-weight-per-cubic-metre");

    public static readonly Source Arkansas = new(
        "arkansas-substrates",
        "Greenhouse management, unit 7: physical properties of substrates",
        "University of Arkansas",
        null,
        "https://greenhouse.hosted.uark.edu/Unit07/Section02.html");

    public static readonly Source Illinois = new(
        "illinois-nres201",
        "NRES 201 lecture notes: bulk density",
        "University of Illinois",
        2011,
        "https://www.coursehero.com/file/6307366/RelativeResourceManager8/");

    public static readonly Source Perlite = new(
        "korean-perlite",
        "Properties of expanded perlite",
        "Korean Journal of Soil Science and Fertilizer",
        null,
        "https://www.kjssf.org/articles/xml/kq00/");

    public static readonly Source Cocopeat = new(
        "sains-cocopeat-perlite",
        "Cocopeat and perlite mixture",
        "Sains Malaysiana 46(6)",
        2017,
        "http://dx.doi.org/10.17576/jsm-2017-4606-17");

    public static readonly Source ByTexture = new(
        "soil-density-by-texture",
        "Soil bulk density by texture",
        "garden advice page",
        null,
        "http://mysunnylawn.com/a51643.php");

    public static readonly Source BuildersTips = new(
        "builders-tips-densities",
        "Coverage of materials",
        "builder's advice page (UK)",
        2010,
        "http://builderstips.blogspot.com/2010/05/coverage-of-materials-graph.html");

    public static readonly Source EarthHaulers = new(
        "soil-haulier-texas",
        "Frequently asked questions: how much does a cubic yard weigh",
        "soil haulier (US)",
        null,
        "http://www.earthhaulers.com/faqs.html");

    public static readonly Source WeightPage = new(
        "topsoil-weight-page",
        "How much does a yard of topsoil weigh",
        "general advice page",
        null,
        "https://weightdatabase.com/how-much-does-a-yard-of-topsoil-weigh/");

    public static readonly Source CompostCouncil = new(
        "composting-council-quoted",
        "Soil bulk densities: guidelines of the US Composting Council (quoted)",
        "soil and mulch yard (US, Texas)",
        null,
        "https://woodmaterialsyard.com/wood-materials-soil-bulk-densities/");

    public static readonly Source EarthSystems = new(
        "compost-producer-montana",
        "Application guidelines and analysis of compost",
        "compost producer (US, Montana)",
        null,
        "https://earthsystemscompost.com/Application_Guidelines.php");

    public static readonly Source CompostWeights = new(
        "compost-weight-page",
        "How much does a cubic yard of compost weigh",
        "general advice page",
        null,
        "https://springportalblog.com/how-much-does-a-cubic-yard-of-compost-weigh/");

    public static readonly Source CompostChart = new(
        "compost-weight-chart",
        "How much does one yard of compost weigh",
        "general advice page",
        null,
        "https://plant4harvest.com/how-much-does-1-yard-of-compost-weigh/");

    public static readonly Source PeatWeight = new(
        "peat-moss-weight",
        "What does peat moss weigh",
        "general advice page",
        null,
        "https://howto.org/what-does-peat-moss-weigh-86102/");

    public static readonly Source CoirPith = new(
        "coir-pith-notes",
        "Coir pith (lecture notes)",
        "teaching notes",
        null,
        "https://it.scribd.com/document/159108111/10");

    public static readonly Source PotSoil = new(
        "soil-bio-amendments",
        "Water retention characteristics of soil bio-amendments used as growing media in pot culture",
        "Journal of Applied Horticulture 14(2)",
        2012,
        "https://studylib.net/doc/25598098/water-retention-characteristics-of-soil-bio-amendments");

    public static readonly Source ArkansasPeat = new(
        "arkansas-peat",
        "Greenhouse management, unit 7: sphagnum peat",
        "University of Arkansas",
        null,
        "https://greenhouse.hosted.uark.edu/Unit07/Section05.html");

    public static readonly Source Roof = new(
        "roof-planter-question",
        "Calculating weight of soil for rooftop planters",
        "gardening forum (UK)",
        2016,
        "https://www.gardenweb.com/discussions/4102228/calculating-weight-of-soil-for-rooftop-planters");
}
