using HortiCalc.Evidence;

namespace HortiCalc.Soil;

/// <summary>The sources of soil water.</summary>
internal static class SoilWaterSources
{
    /// <summary>
    /// The equations and table 3 agree with how open programs write them down; the osmotic equation and its 36 kPa rest on memory and are named
    /// as such where they are used.
    /// </summary>
    public static readonly Source SaxtonRawls = new(
        "saxton-rawls-2006",
        "Soil Water Characteristic Estimates by Texture and Organic Matter for Hydrologic Solutions, Soil Science Society of America Journal 70:1569-1578",
        "Saxton and Rawls",
        2006,
        "https://doi.org/10.2136/sssaj2005.0117");

    public static readonly Source SaxtonRawlsSalts = new(
        "saxton-rawls-2006-salts",
        "Soil Water Characteristic Estimates by Texture and Organic Matter, the osmotic tension of 36 kPa a dS/m",
        "Saxton and Rawls",
        2006,
        null,
        SourceKind.FromMemory);

    public static readonly Source Fao56Table19 = new(
        "fao-56-table-19",
        "Crop evapotranspiration, Irrigation and Drainage Paper 56, table 19, typical soil water characteristics",
        "FAO, Rome",
        1998,
        "http://www.fao.org/docrep/X0490E/x0490e00.htm");

    public static readonly Source Fao56Table22 = new(
        "fao-56-table-22",
        "Crop evapotranspiration, Irrigation and Drainage Paper 56, table 22, maximum effective rooting depth and depletion fraction",
        "FAO, Rome",
        1998,
        "http://www.fao.org/docrep/X0490E/x0490e00.htm");

    public static readonly Source NationalAgronomyManual1 = new(
        "usda-nam-504-1",
        "National Agronomy Manual, 4th edition, table 504-1, available water capacity by soil texture",
        "USDA Natural Resources Conservation Service",
        2011,
        "https://directives.nrcs.usda.gov");

    public static readonly Source NationalAgronomyManual3 = new(
        "usda-nam-504-3",
        "National Agronomy Manual, 4th edition, table 504-3, depth of mature crop roots extracting available water",
        "USDA Natural Resources Conservation Service",
        2011,
        "https://directives.nrcs.usda.gov");

    public static readonly Source ArsAverages = new(
        "ars-average-soils",
        "Average hydraulic properties of ARS soil texture classes",
        "University of Washington, hydrology model documentation",
        2000,
        "https://github.com/UW-Hydro/VIC");

    public static readonly Source VictoriaField = new(
        "victoria-readily-available-water",
        "How to determine readily available water",
        "Agriculture Victoria; NSW DPI Primefact 1362",
        2014,
        "https://agriculture.vic.gov.au/farm-management/water/irrigation/irrigation-factsheets-and-resources/how-to-determine-readily-available-water");

    public static readonly Source VictoriaTotal = new(
        "victoria-total-available-water",
        "Estimating vegetable crop water use",
        "Agriculture Victoria",
        null,
        "http://agriculture.vic.gov.au/agriculture/horticulture/vegetables/vegetable-growing-and-management/estimating-vegetable-crop-water-use");

    public static readonly Source ArizonaRoots = new(
        "arizona-feeder-roots",
        "Master Gardener Manual, table 10.7, plant feeder root depths",
        "University of Arizona Cooperative Extension",
        1998,
        "http://ag.arizona.edu/pubs/garden/mg/vegetable/rooting.html");

    public static readonly Source TaylorAshcroft = new(
        "taylor-ashcroft-1972",
        "Critical pressure heads for root water extraction (Taylor and Ashcroft 1972), SWAP manual, appendix G",
        "Wageningen Environmental Research",
        2017,
        "https://www.swap.alterra.nl/manual/G_critical_pressure_head_values.html");

    public static readonly Source GardenBulkDensity = new(
        "garden-bulk-density",
        "Soil bulk density by texture",
        "garden advice page",
        null,
        "http://mysunnylawn.com/a51643.php");

    public static readonly Source IllinoisRoots = new(
        "illinois-root-problems",
        "Bulk densities at which roots begin to have problems, NRES 201 lecture notes",
        "University of Illinois",
        2011,
        "https://www.coursehero.com/file/6307366/RelativeResourceManager8/");

    public static readonly Source NrcsRoots = new(
        "nrcs-bulk-density-roots",
        "General relationship of soil bulk density to root growth",
        "Natural Resources Conservation Service, quoted by Modesto Junior College",
        null,
        "https://info.5y1.org/bulk-density-table_1_58c807.html");

    public static readonly Source ColoradoInfiltration = new(
        "colorado-infiltration",
        "Infiltration rates by texture",
        "Colorado Water Conservation Board",
        null,
        "https://dnrweblink.state.co.us/CWCB/0/doc/52826/Page22.aspx");

    public static readonly Source FaoInfiltration = new(
        "fao-annex-2-infiltration",
        "Basic infiltration rates, annex 2",
        "FAO, quoted by a secondary page",
        null,
        "https://darkskiesfilm.com/which-soils-have-highest-infiltration-rate/");

    public static readonly Source SteadyInfiltration = new(
        "steady-infiltration-extension",
        "Steady infiltration rates",
        "extension list, quoted by a secondary page",
        null,
        "https://solveyourtaxproblemtoday.com/ah9fx/327408631f06e1f255d29970a70a");

    public static readonly Source Rawls1983 = new(
        "rawls-1983-green-ampt",
        "Green-Ampt parameters by soil class (Rawls et al. 1983), Storm Water Management Model Reference Manual, volume I, table 4-7",
        "US EPA",
        2016,
        "https://nepis.epa.gov");

    public static readonly Source Hydrus = new(
        "hydrus-carsel-parrish",
        "van Genuchten parameters of twelve classes (Carsel and Parrish 1988), in the open data of pedon",
        "martinvonk/pedon",
        null,
        "https://github.com/martinvonk/pedon/blob/4f455681d7f71c1dce785a07ab9f9fad8641b5b1/src/pedon/datasets/Genuchten.csv");

    public static readonly Source Staring = new(
        "staring-series",
        "van Genuchten parameters of the Dutch Staring series, in the open data of pedon",
        "martinvonk/pedon",
        null,
        "https://github.com/martinvonk/pedon/blob/4f455681d7f71c1dce785a07ab9f9fad8641b5b1/src/pedon/datasets/Genuchten.csv");

    public static readonly Source VanGenuchten = new(
        "van-genuchten-1980",
        "A closed-form equation for predicting the hydraulic conductivity of unsaturated soils, Soil Science Society of America Journal 44:892-898",
        "van Genuchten",
        1980,
        "https://doi.org/10.2136/sssaj1980.03615995004400050002x",
        SourceKind.FromMemory);

    public static readonly Source GreenAmpt = new(
        "green-ampt-rawls-1983",
        "Green-Ampt infiltration parameters from soils data, Journal of Hydraulic Engineering 109(1)",
        "Rawls, Brakensiek and Miller",
        1983,
        "https://scribd.com/document/563679019/Rawls-Et-Al-1983");

    public static readonly Source MeinLarson = new(
        "mein-larson-1971",
        "Modeling the Infiltration Component of the Rainfall-Runoff Process, WRRC Bulletin 43",
        "University of Minnesota, Mein and Larson",
        1971,
        "https://fdocuments.us/document/modeling-the-infiltration-component-of-the-rainfall-runoff-.html");
}
