using HortiCalc.Evidence;

namespace HortiCalc.Climate;

/// <summary>The methods, sources and cautions that answers about soil temperature carry.</summary>
internal static class SoilTemperatureEvidence
{
    public const double DeepestMetres = 30;

    // From the slowest material of the table (dry clay 0.1 mm²/s) and half of it, to the fastest soils of the others (0.14 m²/d) and thrice that.
    public const double SlowestSquareMillimetresPerSecond = 0.05;
    public const double FastestSquareMillimetresPerSecond = 5;

    public static readonly Source RainOrShine = new(
        "okstate-rain-or-shine",
        "Rain or Shine, 13.4 Sub-surface soil temperatures",
        "Oklahoma State University Libraries",
        null,
        "https://open.library.okstate.edu/rainorshine/chapter/13-4-sub-surface-soil-temperatures");

    public static readonly Source Toolkit = new(
        "okstate-soil-temperature",
        "Soil temperature: model and exercises",
        "Oklahoma State University, soil physics",
        null,
        "http://soilphysics.okstate.edu/software/SoilTemperature/exercises.html");

    public static readonly Method AnnualWave = new(
        "soil-temperature.annual-wave",
        "annual sine wave damped and delayed with depth",
        Toolkit,
        DomainOf("daily means over a year"));

    public static readonly Method DailyWave = new(
        "soil-temperature.daily-wave",
        "daily sine wave damped and delayed with depth",
        RainOrShine,
        DomainOf("the course of one clear day"));

    public static readonly Method AmplitudeRatio = new(
        "soil-temperature.amplitude-ratio",
        "diffusivity from the amplitudes at two depths",
        RainOrShine,
        new Domain("uniform soil, conduction only, both depths under the same wave"));

    public static readonly Method FittedWave = new(
        "soil-temperature.fitted-wave",
        "one sine wave a year fitted by least squares",
        Toolkit,
        new Domain("a year of days or more, in all seasons"));

    public static readonly Caution AirIsNotSurface = new(
        "soil-temperature.surface",
        CautionLevel.Care,
        "A wave of the air stands for that of the ground's surface only roughly: bare soil in sun is warmer, under grass, mulch or snow it varies less.",
        Source.CommonPractice("soil-surface", "the surface of the ground is not the air in a screen"));

    public static readonly Caution MeasureBeforeSowing = new(
        "soil-temperature.measure",
        CautionLevel.Note,
        "A season can be weeks early or late: before sowing measure at sowing depth.",
        Source.CommonPractice("soil-measure", "soil temperature is measured at sowing depth in the morning"));

    public static readonly Caution FreezingNotModelled = new(
        "soil-temperature.freezing",
        CautionLevel.Care,
        "The wave goes below 0 °C: water that freezes and thaws holds real soil near 0 °C for long, which this does not reckon with.",
        Source.CommonPractice("soil-freezing", "freezing water gives off heat"));

    private static Domain DomainOf(string conditions) => new(
        $"{conditions}; uniform soil of one diffusivity, conduction only, no freezing, the surface follows one sine wave",
        new DomainLimit("depth", 0, DeepestMetres, "m"),
        new DomainLimit("diffusivity", SlowestSquareMillimetresPerSecond, FastestSquareMillimetresPerSecond, "mm²/s"));
}
