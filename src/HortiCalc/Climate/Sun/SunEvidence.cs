using HortiCalc.Evidence;

namespace HortiCalc.Climate;

/// <summary>The methods, sources and cautions that answers about the sun carry.</summary>
internal static class SunEvidence
{
    public static readonly Source Fao56 = new(
        "fao-56",
        "Crop evapotranspiration, FAO Irrigation and Drainage Paper 56",
        "FAO, Rome",
        1998,
        "http://www.fao.org/docrep/X0490E/x0490e00.htm");

    public static readonly Source Noaa = new(
        "noaa-solar-calculations",
        "Solar calculation details",
        "National Oceanic and Atmospheric Administration, Global Monitoring Laboratory",
        null,
        "https://gml.noaa.gov/grad/solcalc/calcdetails.html");

    public static readonly Method Position = new(
        "sun.position",
        "position of the sun, low-precision theory",
        Noaa,
        new Domain("centre of the sun, no refraction", new DomainLimit("date", 1900, 2100, "year"), new DomainLimit("time", 1900, 2100, "year")));

    public static readonly Method ExtraterrestrialOfDay = new(
        "sun.extraterrestrial-day",
        "radiation above the atmosphere, a day",
        Fao56,
        new Domain("a level surface; beyond 55° in winter the equations are of limited validity"));

    public static readonly Method ExtraterrestrialOfPeriod = new(
        "sun.extraterrestrial-period",
        "radiation above the atmosphere, an hour or less",
        Fao56,
        new Domain("a level surface; beyond 55° in winter the equations are of limited validity", new DomainLimit("period", 0, 1, "h")));

    public static readonly Method ClearSkyByAltitude = new(
        "sun.clear-sky-altitude", "clear-sky radiation by altitude", Fao56, new Domain("no calibrated Angstrom coefficients at hand"));

    public static readonly Method FromSunshine = new(
        "sun.from-sunshine", "radiation from hours of sunshine, Angstrom", Fao56, new Domain("daily values"));

    public static readonly Method FromTemperature = new(
        "sun.from-temperature",
        "radiation from the range of temperature, Hargreaves and Samani",
        Fao56,
        new Domain("daily values, not on small islands, where the sea evens out the temperature"));

    public static readonly Caution HighLatitude = new(
        "sun.high-latitude",
        CautionLevel.Note,
        "Beyond 55° the equations are of limited validity in winter, when the sun is low.",
        Fao56);

    public static readonly Caution BrighterThanClear = new(
        "sun.brighter-than-clear",
        CautionLevel.Note,
        "This is more than a clear sky lets through at sea level: the range of temperature came from a change of air, not from the sun.",
        Fao56);
}
