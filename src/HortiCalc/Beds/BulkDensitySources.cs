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
}
