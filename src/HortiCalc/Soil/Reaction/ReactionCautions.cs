using HortiCalc.Evidence;

namespace HortiCalc.Soil;

/// <summary>What to take care of with a pH.</summary>
internal static class ReactionCautions
{
    public static Caution NameTheSolution { get; } = new(
        "ph.name-the-solution",
        CautionLevel.Note,
        "A table made for pH in water gives a wrong dose with pH in calcium chloride; say with each pH how it was read.",
        ReactionSources.NewSouthWales);

    public static Caution Alkalinity { get; } = new(
        "ph.alkalinity",
        CautionLevel.Care,
        "Only waters without alkalinity mix like this: bicarbonate and fertiliser hold a pH against acid, so measure the blend.",
        Source.CommonPractice("ph-alkalinity", "the pH of a blend of buffered waters is measured, not reckoned"));

    public static Caution LayersHide { get; } = new(
        "ph.layers-hide",
        CautionLevel.Care,
        "A mixed sample hides a sour layer: look at the sourest layer, not only at the mean.",
        ReactionSources.Layers);

    public static Caution MixAndTest { get; } = new(
        "ph.mix-and-test",
        CautionLevel.Note,
        "Mix a small batch, keep it moist for some weeks and test it before mixing the whole.",
        Source.CommonPractice("ph-mix-and-test", "a mix of media is tested as a small batch first"));
}
