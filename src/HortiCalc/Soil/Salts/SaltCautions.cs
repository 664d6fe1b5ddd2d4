using HortiCalc.Evidence;

namespace HortiCalc.Soil;

/// <summary>What to take care of with salts, sodium and boron.</summary>
internal static class SaltCautions
{
    public static Caution Laboratory { get; } = new(
        "salt.laboratory",
        CautionLevel.Note,
        "A laboratory that knows the soils of the region goes before any general table; ask which extract it measured.",
        Source.CommonPractice("salt-laboratory", "the laboratory's own interpretation goes before a general table"));

    public static Caution Converted { get; } = new(
        "salt.extract-converted",
        CautionLevel.Note,
        "Published lines from one extract to another differ up to twofold with texture and kind of salt; a saturated extract is the sure way.",
        SaltSources.ExtractEquations);

    public static Caution TwoScales { get; } = new(
        "salt.medium-reading",
        CautionLevel.Note,
        "The reading was carried over between the bounds of one class of salt level; the source prints the classes, not a line.",
        SaltSources.MediumLevels);

    public static Caution SodiumRegression { get; } = new(
        "salt.sodium-regression",
        CautionLevel.Note,
        "The line between SAR and exchangeable sodium holds for soils like those it was measured on, and grows uncertain above SAR 20.",
        SaltSources.ExchangeableSodium);

    public static Caution Yield { get; } = new(
        "salt.yield-relative",
        CautionLevel.Note,
        "Tolerance is relative: climate, cultivar, watering and stage of growth move it, and seedlings are more sensitive than the table.",
        SaltSources.Fao56Tolerance);

    public static Caution Remembered { get; } = new(
        "salt.not-seen-in-print",
        CautionLevel.Note,
        "This row was not seen in print; confirm it before relying on it.",
        Source.CommonPractice("confirm-what-was-remembered", "a figure that was not seen in print is to be confirmed"));

    public static Caution LeachAway { get; } = new(
        "salt.leaching-loses-nitrate",
        CautionLevel.Care,
        "Water that leaches salt leaches nitrate too: leach before feeding, keep to the local rules for water protection, and make sure the soil drains.",
        Source.CommonPractice("leach-before-feeding", "leach salts before feeding and where the soil drains"));

    public static Caution TooSalty { get; } = new(
        "salt.heavy-leaching",
        CautionLevel.Care,
        "More than a third of the water would have to run through: choose a more tolerant crop or better water.",
        Source.CommonPractice("leaching-limit", "a leaching fraction above a third is seldom worth while"));

    public static Caution GypsumNeedsDrainage { get; } = new(
        "salt.gypsum-drainage",
        CautionLevel.Note,
        "Gypsum helps only where water then carries the sodium below the roots; large amounts are best split, with a new test between.",
        SaltSources.Gypsum);

    public static Caution NoGypsum { get; } = new(
        "salt.gypsum-not-needed",
        CautionLevel.Note,
        "The soil is at or below the target already; no gypsum is needed.",
        Source.CommonPractice("gypsum-only-above-target", "gypsum only a soil above its target of sodium"));

    public static Caution Boron { get; } = new(
        "salt.boron-narrow",
        CautionLevel.Care,
        "Between too little boron and too much there is little room: never add boron without a test that asks for it.",
        SaltSources.Boron);

    public static Caution BoronListsDiffer { get; } = new(
        "salt.boron-lists-differ",
        CautionLevel.Note,
        "Lists of boron tolerance differ; later work puts onion and garlic among the tolerant crops.",
        SaltSources.BoronFromMemory);
}
