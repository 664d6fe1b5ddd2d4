using HortiCalc.Evidence;

namespace HortiCalc.Climate;

/// <summary>What to take care of in a frost night.</summary>
internal static class FrostNightCautions
{
    public static readonly Caution ForecastFirst = new(
        "frost-night.forecast-first",
        CautionLevel.Care,
        "Follow the local frost forecast first: cloud, wind or drier air that comes in the night makes any estimate of the evening wrong.",
        Source.CommonPractice("frost-night-forecast", "the forecast knows what is on its way"));

    public static readonly Caution SensorHeight = new(
        "frost-night.sensor-height",
        CautionLevel.Care,
        "Measure at the height of the buds or plants: on a clear calm night the air near the ground is several degrees colder than at 1.5 m.",
        FreezeEvidence.SensorHeight);

    public static readonly Caution SensorCalibration = new(
        "frost-night.sensor-calibration",
        CautionLevel.Care,
        "Check the thermometer in melting ice, where it must read 0 °C, and shield it from the open sky: a degree decides between no damage and half the crop.",
        Source.CommonPractice("frost-night-calibration", "thermometers are checked in ice before the season"));

    public static readonly Caution RadiationNightsOnly = new(
        "frost-night.radiation-only",
        CautionLevel.Care,
        "The regression holds for nights with wind below 2 m/s and without cloud, fog or rain; it says nothing of cold air that blows in.",
        FrostNightSources.Fao);

    public static readonly Caution OwnNights = new(
        "frost-night.own-nights",
        CautionLevel.Note,
        "The regression belongs to the place whose nights it was fitted to: a hollow next door has another.",
        FrostNightSources.Fao);

    public static readonly Caution OutsideFittedNights = new(
        "frost-night.outside-fit",
        CautionLevel.Care,
        "The evening lies outside the fitted nights: the line is drawn on beyond them, and its error may be larger than stated.",
        Source.CommonPractice("frost-night-outside-fit", "a regression is known where it was fitted"));

    public static readonly Caution NoCooling = new(
        "frost-night.no-cooling",
        CautionLevel.Note,
        "The regression gave more than the evening's temperature; no night is warmer than that at its coldest, so the evening's stands.",
        Source.CommonPractice("frost-night-no-cooling", "the minimum is at most any reading of the night"));

    public static readonly Caution RuleOfThumb = new(
        "frost-night.rule-of-thumb",
        CautionLevel.Care,
        "A rule made for another place, without a stated error: compare it with your own thermometer for some nights before trusting it.",
        FrostNightSources.Linacre);

    public static readonly Caution GrassNotAir = new(
        "frost-night.grass-minimum",
        CautionLevel.Note,
        "This is the minimum at the tips of short grass, which is lower than that of the air in a screen.",
        FrostNightSources.Smith);

    public static readonly Caution UncorrectedForWind = new(
        "frost-night.uncorrected",
        CautionLevel.Note,
        "The rule takes off a further correction for wind and cloud that the source does not print.",
        FrostNightSources.Linacre);

    public static readonly Caution CurveEndsAtSunrise = new(
        "frost-night.curve-ends",
        CautionLevel.Note,
        "The cooling curve runs from two hours after sunset to sunrise; the cold lasts a while longer, until the sun has warmed the air.",
        FrostNightSources.Davis);

    public static readonly Caution BudKillIsNotCropLoss = new(
        "frost-night.bud-kill",
        CautionLevel.Note,
        "The share is of buds killed after half an hour at that temperature, not of the crop lost: apples, pears and peaches may crop fully on one or two buds in ten.",
        FrostNightSources.UtahFactSheet);

    public static readonly Caution SourcesDiffer = new(
        "frost-night.sources-differ",
        CautionLevel.Care,
        "Published critical temperatures of one stage differ by a degree or two, and variety, weather before and wetness move them further.",
        FrostNightSources.Purdue);

    public static readonly Caution StartInTime = new(
        "frost-night.start-in-time",
        CautionLevel.Care,
        "Water that starts too late or in dry wind cools by evaporation and does more harm than none: start at or above the temperature given.",
        FrostNightSources.OntarioFactsheet);

    public static readonly Caution DoNotStopEarly = new(
        "frost-night.do-not-stop",
        CautionLevel.Care,
        "Never stop the water in the night: run it without a break until the air is above the stopping temperature and the ice melts off.",
        FrostNightSources.NorthCarolinaStrawberry);

    public static readonly Caution NotInWind = new(
        "frost-night.not-in-wind",
        CautionLevel.Care,
        "In wind, ice forms poorly and evaporation takes the warmth away: do not sprinkle when cold dry air blows in.",
        FrostNightSources.GeorgiaFreeze);

    public static readonly Caution IceLoad = new(
        "frost-night.ice-load",
        CautionLevel.Danger,
        "Ice breaks branches, covers and frames, and paths turn to ice: prop what it can break, and keep people from under it.",
        Source.CommonPractice("frost-night-ice-load", "a centimetre of ice over a square metre weighs 9 kg"));

    public static readonly Caution Electricity = new(
        "frost-night.electricity",
        CautionLevel.Danger,
        "Keep pumps, cables and heaters dry, raised and on a residual-current device: water, ice, darkness and mains electricity kill.",
        Source.CommonPractice("frost-night-electricity", "outdoor circuits near water have a residual-current device"));

    public static readonly Caution Fire = new(
        "frost-night.fire",
        CautionLevel.Danger,
        "Never burn anything under covers or in a closed greenhouse: carbon monoxide kills, fleece and plastic catch fire; open fires need local permission.",
        Source.CommonPractice("frost-night-fire", "no open flame under cover"));

    public static readonly Caution CoverBeforeDark = new(
        "frost-night.cover-early",
        CautionLevel.Care,
        "Cover before the ground has cooled, down to the soil and off the leaves, and uncover in the morning.",
        Source.CommonPractice("frost-night-cover", "a cover keeps the warmth of the soil"));

    /// <summary>What every answer about tonight carries.</summary>
    public static readonly IReadOnlyList<Caution> Night = [ForecastFirst, SensorHeight, SensorCalibration];

    /// <summary>What everyone who sprinkles must know.</summary>
    public static readonly IReadOnlyList<Caution> Water = [StartInTime, DoNotStopEarly, NotInWind, IceLoad, Electricity];
}
