using HortiCalc.Evidence;

namespace HortiCalc.Soil;

/// <summary>Where the arithmetic of soil pH comes from.</summary>
internal static class ReactionSources
{
    public static Source Conyers1988 { get; } = new(
        "conyers-davey-1988",
        "Observations on some routine methods for soil pH determination, Soil Science 145(1):29-36",
        "Conyers, Davey",
        1988,
        "https://scilit.com/publications/7fd567081c6da318ffe3653425c0a2b9");

    public static Source NewSouthWales { get; } = new(
        "nsw-ac19-glossary",
        "Soil acidity and liming, AC.19, glossary",
        "New South Wales Department of Primary Industries",
        2021,
        "https://www.dpi.nsw.gov.au/agriculture/soils/guides/soil-acidity/soil-acidity-and-liming-2021-ac.19/references-and-glossary");

    public static Source Victoria { get; } = new(
        "victoria-ph-offset", "pH in calcium chloride and in water, south-west Victoria", "Southern Farming Systems", 2016, "http://www.moffittsfarm.com.au/2016/05/17/2496/");

    public static Source Kabala { get; } = new(
        "kabala-2016",
        "Conversion of Soil pH 1:2.5 KCl and 1:2.5 H2O to 1:5 H2O, Polish Journal of Environmental Studies 25(2):647-653",
        "Kabała et al.",
        2016,
        "https://studylib.net/doc/18228632/conversion-of-soil-ph-1-2.5-kcl-and-1-2.5-ho-to-1-5-ho");

    public static Source Nrcs { get; } = new(
        "geoderma-2014-ph", "Soil pH at 1:1 and 1:5 in water, 563 soils of the NRCS archive", "Geoderma", 2014, "https://daneshyari.com/en/article/6409029");

    public static Source Copernicus { get; } = new(
        "poland-calcium-chloride",
        "The perspectives for introduction of the method with 0,01 mol CaCl2 for pH determination in Poland",
        "Copernicus project, Poland",
        null,
        "https://core.ac.uk/works/138642475");

    public static Source Fda { get; } = new(
        "fda-ph-statistics",
        "Laboratory Manual, Volume III, 4.11 Statistics Applied to pH in Canned Foods",
        "U.S. Food and Drug Administration",
        2013,
        "http://www.fda.gov/ScienceResearch/FieldScience/LaboratoryManual/ucm174295.htm");

    public static Source Conyers2026 { get; } = new(
        "conyers-2026-mean-ph", "paper on the mean pH of composite soil samples", "European Journal of Soil Science", 2026, "https://doi.org/10.1111/ejss.70329");

    public static Source Layers { get; } = new(
        "nsw-ph-layers",
        "sour layers hidden in a 0 to 10 cm sample, New South Wales",
        "The Land, with New South Wales Department of Primary Industries",
        null,
        null,
        SourceKind.CommonPractice);

    public static Source WaterProduct { get; } = new(
        "water-ion-product", "ion product of water at 25 °C, 1.0E-14", "textbooks of chemistry", null, null, SourceKind.FromMemory);

    public static Source LinearBuffering { get; } = new(
        "linear-soil-buffering",
        "soil pH moves in a straight line with acid or lime over the middle of its range",
        "textbooks of soil science",
        null,
        null,
        SourceKind.FromMemory);
}
