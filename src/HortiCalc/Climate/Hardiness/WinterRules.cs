using HortiCalc.Evidence;
using UnitsNet;

namespace HortiCalc.Climate;

/// <summary>Published rules for mulching, for bringing plants indoors and for hardening them off.</summary>
/// <remarks>
/// Rules of thumb of extension leaflets and garden pages: the forecast and the plant itself decide. A day at the threshold counts.
/// </remarks>
public static class WinterRules
{
    private static readonly Source Strawberries = new(
        "umn-strawberry-mulch",
        "Snow and Cold Weather Complicate Fall Mulching for Strawberries",
        "University of Minnesota Extension, Fruit and Vegetable News",
        2020,
        "https://blog-fruit-vegetable-ipm.extension.umn.edu/2020/10/snow-and-cold-weather-complicate-fall.html");

    private static readonly Source Indoors = new(
        "bring-in-temperatures",
        "Temperatures for bringing in tender plants",
        "a garden page",
        null,
        "http://epicsite.org/index-1073.html");

    private static readonly Source Hardening = new(
        "growing-gardens-hardening-off",
        "Hardening off plant starts",
        "Growing Gardens",
        2014,
        "https://www.growinggardens.org/hardening-off-plant-starts");

    private static readonly Source HardeningWarm = new(
        "hennepin-hardening-off",
        "Start hardening off your vegetables now",
        "Hennepin County Master Gardeners, University of Minnesota Extension",
        2014,
        "https://hennepinmastergardeners.org/2014/05/start-hardening-off-your-vegetables-now/");

    /// <summary>Strawberries get their straw once the soil at 4 in has stayed at or below 40 °F (4.4 °C) for three days.</summary>
    public static WinterRule MulchStrawberriesBySoil { get; } = new(
        "strawberry", "cover with straw", WinterReading.SoilAllDay, Fahrenheit(40), 3, Strawberries);

    /// <summary>Strawberries get their straw at the latest when a night goes down to 20 °F (-6.7 °C): crowns are hurt at 15 to 20 °F.</summary>
    public static WinterRule MulchStrawberriesByNight { get; } = new(
        "strawberry", "cover with straw", WinterReading.NightMinimum, Fahrenheit(20), 1, Strawberries);

    /// <summary>Begonias come indoors at 45 °F (7.2 °C).</summary>
    public static WinterRule MoveBegoniaIndoors { get; } = new(
        "begonia", "move indoors", WinterReading.NightMinimum, Fahrenheit(45), 1, Indoors);

    /// <summary>Cacti come indoors at about 40 °F (4.4 °C).</summary>
    public static WinterRule MoveCactusIndoors { get; } = new(
        "cactus", "move indoors", WinterReading.NightMinimum, Fahrenheit(40), 1, Indoors);

    /// <summary>Hardy plants being hardened off come in for a night at 40 °F (4.4 °C).</summary>
    public static WinterRule HardeningOffHardy { get; } = new(
        "hardy plants being hardened off", "bring in for the night", WinterReading.NightMinimum, Fahrenheit(40), 1, Hardening);

    /// <summary>Half-hardy plants being hardened off come in for a night at 45 °F (7.2 °C).</summary>
    public static WinterRule HardeningOffHalfHardy { get; } = new(
        "half-hardy plants being hardened off", "bring in for the night", WinterReading.NightMinimum, Fahrenheit(45), 1, Hardening);

    /// <summary>Eggplant, melon and cucumber being hardened off come in for nights below 60 °F (15.6 °C).</summary>
    public static WinterRule HardeningOffWarmthLoving { get; } = new(
        "eggplant, melon and cucumber being hardened off", "bring in for the night", WinterReading.NightMinimum, Fahrenheit(60), 1, Hardening);

    /// <summary>Tomatoes and peppers being hardened off come in for nights at 45 °F (7.2 °C).</summary>
    public static WinterRule HardeningOffTomato { get; } = new(
        "tomato and pepper being hardened off", "bring in for the night", WinterReading.NightMinimum, Fahrenheit(45), 1, HardeningWarm);

    /// <summary>Every rule there is.</summary>
    public static IReadOnlyList<WinterRule> All { get; } = ValueList<WinterRule>.Of(
    [
        MulchStrawberriesBySoil,
        MulchStrawberriesByNight,
        MoveBegoniaIndoors,
        MoveCactusIndoors,
        HardeningOffHardy,
        HardeningOffHalfHardy,
        HardeningOffWarmthLoving,
        HardeningOffTomato,
    ]);

    private static Temperature Fahrenheit(double value) => Temperature.FromDegreesFahrenheit(value);
}
