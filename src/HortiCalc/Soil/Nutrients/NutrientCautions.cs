using HortiCalc.Evidence;

namespace HortiCalc.Soil;

/// <summary>What to take care of when feeding a soil.</summary>
internal static class NutrientCautions
{
    public static Caution Burn { get; } = new(
        "nutrient.fertilizer-burn",
        CautionLevel.Care,
        "Soluble fertiliser is salt and burns roots and leaves: keep it off seed, seedlings and wet leaves, split large amounts and water in.",
        NutrientSources.SaltIndex);

    public static Caution Chloride { get; } = new(
        "nutrient.chloride",
        CautionLevel.Care,
        "A product here brings chloride: soft fruit, beans, potatoes, lettuce and other sensitive crops do better with sulfate of potash.",
        Source.CommonPractice("chloride-sensitive-crops", "chloride-free potash for chloride-sensitive crops"));

    public static Caution Leaching { get; } = new(
        "nutrient.nitrate-leaching",
        CautionLevel.Care,
        "Nitrogen that plants do not take up is washed to ground water: feed when plants grow, and keep to the rules for water protection and manure where you are.",
        Source.CommonPractice("nitrate-rules", "nitrogen is given when plants grow, within the local rules"));

    public static Caution Micronutrient { get; } = new(
        "nutrient.micronutrient-toxic",
        CautionLevel.Care,
        "Boron, copper, manganese, molybdenum and zinc turn toxic soon above what is needed and stay in the soil: give them only on a test, evenly and once.",
        SaltSources.Boron);

    public static Caution Laboratory { get; } = new(
        "nutrient.laboratory",
        CautionLevel.Note,
        "The laboratory's recommendation for the crop and the region goes before arithmetic; test again after a season.",
        Source.CommonPractice("nutrient-laboratory", "the laboratory's recommendation goes before general arithmetic"));

    public static Caution Convention { get; } = new(
        "nutrient.organic-varies",
        CautionLevel.Note,
        "Organic materials vary widely: figures of different sources differ up to threefold; use the label or a test of the batch.",
        NutrientSources.TexasOrganics);

    public static Caution TiesUp { get; } = new(
        "nutrient.nitrogen-tied-up",
        CautionLevel.Care,
        "The material takes nitrogen from the soil while it rots: give nitrogen with it, or let it rot first.",
        NutrientSources.CarbonToNitrogen);

    public static Caution Manure { get; } = new(
        "nutrient.fresh-manure",
        CautionLevel.Danger,
        "Manure carries germs: keep raw manure off crops eaten raw for the time the local rules ask, and do not lime with it at once.",
        Source.CommonPractice("manure-and-raw-crops", "raw manure is kept off crops that are eaten raw"));

    public static Caution Shortfall { get; } = new(
        "nutrient.shortfall",
        CautionLevel.Note,
        "The products do not meet every need within its bounds; what is missing is shown.",
        Source.CommonPractice("closest-mix", "the closest mix need not meet every need"));
}
