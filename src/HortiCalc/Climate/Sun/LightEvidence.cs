using HortiCalc.Evidence;

namespace HortiCalc.Climate;

/// <summary>The sources and cautions that answers about light for plants carry.</summary>
internal static class LightEvidence
{
    public static readonly Source ThimijanHeins = new(
        "thimijan-heins-1983",
        "Photometric, radiometric, and quantum light units of measure: a review of procedures for interconversion",
        "HortScience 18:818-822",
        1983,
        "http://www.bio.net/bionet/mm/plant-ed/2001-October/007207.html");

    public static readonly Source Apogee = new(
        "apogee-ppfd-conversion",
        "Conversion of photosynthetic photon flux to lux and to foot-candles",
        "Apogee Instruments",
        null,
        "https://www.apogeeinstruments.com/conversion-ppf-to-lux/");

    public static readonly Source Runkle = new(
        "gpn-supplemental-lighting",
        "How much supplemental lighting do you need?",
        "Greenhouse Product News",
        null,
        "https://gpnmag.com/article/how-much-supplemental-lighting-do-you-need/");

    public static readonly Caution Spectrum = new(
        "light.spectrum",
        CautionLevel.Note,
        "The factor holds for this spectrum alone: light under leaves or coloured cloth, and every make of LED, has another; a quantum meter measures it.",
        ThimijanHeins);

    public static readonly Caution Electricity = new(
        "light.electricity",
        CautionLevel.Danger,
        "Lamps, ballasts and plugs near water can kill: use fixtures made for damp places behind a residual-current breaker, never touch them wet, and follow local rules.",
        Source.CommonPractice("light-electricity", "electrical fixtures for damp places are used behind a residual-current breaker"));

    public static readonly Caution Eyes = new(
        "light.eyes",
        CautionLevel.Danger,
        "Do not look into strong or ultraviolet lamps, and shield eyes and skin as their maker says.",
        Source.CommonPractice("light-eyes", "strong and ultraviolet lamps are shielded from eyes and skin"));

    public static readonly Caution LongDay = new(
        "light.long-day",
        CautionLevel.Care,
        "Growers light for up to 18 to 20 hours a day: beyond that some plants suffer, and the length of the day itself decides when many flower.",
        Runkle);
}
