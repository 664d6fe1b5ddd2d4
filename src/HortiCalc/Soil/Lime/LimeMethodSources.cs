using HortiCalc.Evidence;

namespace HortiCalc.Soil;

/// <summary>Where the ways to find a lime requirement from buffers, cations and rules per pH unit come from.</summary>
internal static class LimeMethodSources
{
    public static Source OregonSikora { get; } = new(
        "oregon-em-9585",
        "Updated lime requirement recommendations for Oregon (EM 9585), Table 1, Sikora buffer",
        "Oregon State University Extension",
        2025,
        "https://extension.oregonstate.edu/catalog/em-9585-updated-lime-requirement-recommendations-oregon");

    public static Source IowaPm1688 { get; } = new(
        "iowa-pm-1688",
        "Lime recommendation of PM-1688, as reproduced in Liming Terminology and Analysis",
        "Iowa State University Extension, by University of Wisconsin-Madison",
        2002,
        "https://fdocuments.in/amp/document/liming-terminology-and-liming-terminology-and-analysis-carrie-laboski-university.html");

    public static Source Teagasc { get; } = new(
        "teagasc-lime-advice",
        "Calculating Lime Advice",
        "Teagasc",
        2023,
        "https://www.teagasc.ie/about/farm-advisory/advisory-regions/cork-east/farm-advice/calculating-lime-advice/");

    // The lime equation is seen in print (Huluka, modified Adams-Evans buffer, 2007, equation 2); the one from pH to acid saturation is not.
    public static Source AdamsEvans { get; } = new(
        "adams-evans-1962",
        "A rapid method for measuring lime requirement of Red-Yellow Podzolic soils",
        "Soil Science Society of America Proceedings 26",
        1962,
        null,
        SourceKind.FromMemory);

    public static Source AdamsEvansAcidity { get; } = new(
        "uga-adams-evans-buffer",
        "Soil Test Lab methods: Adams-Evans buffer",
        "University of Georgia, Agricultural and Environmental Services Laboratories",
        null,
        "http://aesl.ces.uga.edu/protected/methods/details/stl-soil/6.html");

    public static Source SpectrumAcidity { get; } = new(
        "spectrum-cec-buffer-ph",
        "CEC, BpH and % saturation",
        "Spectrum Analytic",
        2017,
        "https://spectrumanalytic.com/doc/library/articles/cec_bph_and_percent_sat?rev=1489678705&do=diff");

    public static Source MehlichAcidity { get; } = new(
        "ncda-buffer-table-1",
        "Table 1 factors (lime requirement by the Mehlich buffer)",
        "N.C. Department of Agriculture and Consumer Services",
        null,
        "http://www.ncagr.gov/agronomi/bufftab1.htm");

    public static Source BrazilBaseSaturation { get; } = new(
        "gismonti-calagem-2010",
        "Cálculo da calagem pelos métodos",
        "Agronomia com Gismonti",
        2010,
        "http://agronomiacomgismonti.blogspot.com/2010/03/calculo-da-calagem-pelos-metodos.html",
        SourceKind.CommonPractice);

    public static Source BrazilAluminium { get; } = new(
        "resposta-calagem",
        "Calagem",
        "resposta.org, study forum, Brazil",
        null,
        "https://resposta.org/pergunta/28952828",
        SourceKind.CommonPractice);

    public static Source Cochrane { get; } = new(
        "cochrane-salinas-sanchez-1980",
        "An equation for liming acid mineral soils to compensate crop aluminium tolerance",
        "Tropical Agriculture",
        1980,
        "https://journals.sta.uwi.edu/ojs/index.php/ta/article/view/2882");

    public static Source LimeBufferCapacity { get; } = new(
        "uga-lime-buffer-capacity",
        "Circular 874, on lime buffer capacity (described)",
        "University of Georgia Extension",
        null,
        "https://openscholar.uga.edu/record/16037");

    public static Source GardenCalcium { get; } = new(
        "garden-calcium-by-cec",
        "How much Lime do I need? Soil CEC and optimal Ca level",
        "organic-gardening-for-life.com",
        null,
        "http://www.organic-gardening-for-life.com/Lime.html",
        SourceKind.CommonPractice);

    public static Source UkPerPhUnit { get; } = new(
        "uk-lime-factors",
        "Lime application recommendations: lime factors by soil texture",
        "trade page, United Kingdom",
        null,
        "https://limerentadecor.netlify.app/image/lime-application-rates",
        SourceKind.CommonPractice);

    public static Source UsPerPhUnit { get; } = new(
        "us-garden-lime-per-ph-unit",
        "Make The pH Work For You",
        "garden-soil.com",
        null,
        "http://www.garden-soil.com/garden_soil_make_ph_work_4.html",
        SourceKind.CommonPractice);

    public static Source Guarconi { get; } = new(
        "guarconi-sobreira-2017",
        "Algorithms of lime requirement compared (described from its abstract)",
        "Revista Brasileira de Ciência do Solo 41, e0160069",
        2017,
        null);

    public static Source GermanScheme { get; } = new(
        "topagrar-kalkung",
        "Ziel-pH-Wert und Erhaltungskalkung",
        "top agrar",
        null,
        "https://www.topagrar.com/heftplus/hohe-naehrstoffeffizienz-ph-wert-11581429.html");
}
