using HortiCalc.Evidence;

namespace HortiCalc.Climate;

/// <summary>Where the formulas of humidity come from.</summary>
internal static class HumiditySources
{
    public static Source Fao56 { get; } = new(
        "fao-56",
        "Crop evapotranspiration, FAO Irrigation and Drainage Paper 56",
        "FAO, Rome",
        1998,
        "http://www.fao.org/docrep/X0490E/x0490e00.htm");

    public static Source Wmo8 { get; } = new(
        "wmo-8",
        "Guide to Meteorological Instruments and Methods of Observation, WMO-No. 8, Annex 4.B",
        "World Meteorological Organization, Geneva",
        2008,
        "https://hydro-wiki.de/en/hydro/saturated-vapour-pressure");

    public static Source Buck1996 { get; } = new(
        "buck-1996",
        "Buck Research CR-1A User's Manual, Appendix 1",
        "Buck Research Instruments",
        1996,
        "https://en.wikipedia.org/wiki/Arden_Buck_equation");

    public static Source HylandWexler1983 { get; } = new(
        "hyland-wexler-1983",
        "Formulations for the thermodynamic properties of the saturated phases of H2O from 173.15 K to 473.15 K, ASHRAE Transactions 89 (2A)",
        "ASHRAE",
        1983,
        "http://ddbonline.ddbst.com/OnlinePropertyEstimation/HylandWexlerPsatOfLiquidWaterOverIceCGI.exe");

    public static Source Ashrae2017 { get; } = new(
        "ashrae-2017",
        "ASHRAE Handbook Fundamentals, chapter 1, Psychrometrics",
        "ASHRAE, as quoted by the tests of PsychroLib",
        2017,
        "https://github.com/psychrometrics/psychrolib");

    // The coefficient was seen in a copy without its title; that it is this publication's is from memory.
    public static Source Asce2005 { get; } = new(
        "asce-2005",
        "The ASCE Standardized Reference Evapotranspiration Equation",
        "American Society of Civil Engineers",
        2005,
        "https://doi.org/10.1061/9780784408056",
        SourceKind.FromMemory);

    public static Source AmsGlossary { get; } = new(
        "ams-psychrometric-formula",
        "Glossary of Meteorology: psychrometric formula",
        "American Meteorological Society",
        null,
        "https://glossary.ametsoc.org/wiki/Psychrometric_formula");

    public static Source WeatherBureau1071 { get; } = new(
        "weather-bureau-1071",
        "Relative humidity from air temperature and wet-bulb depression, condensed from Bulletin No. 1071",
        "U.S. Weather Bureau",
        null,
        "http://novalynx.com/store/pc/Relative-Humidity-Table-d44.htm");

    public static Source Stull2011 { get; } = new(
        "stull-2011",
        "Wet-Bulb Temperature from Relative Humidity and Air Temperature, Journal of Applied Meteorology and Climatology 50",
        "American Meteorological Society",
        2011,
        "https://journals.ametsoc.org/jamc/article/50/11/2267/13533/Wet-Bulb-Temperature-from-Relative-Humidity-and");
}
