using HortiCalc.Evidence;

namespace HortiCalc.Soil;

/// <summary>The rules that are applied to a rate after its method.</summary>
internal static class AcidRules
{
    public static Method BetweenRows { get; } = new(
        "acid-between-rows",
        "read in a straight line between printed rows",
        Source.CommonPractice("acid-between-rows", "a straight line between two neighbouring rows of a sulfur table"),
        new Domain("inside the printed rows and from the first row to the target; the table prints no rule for values between them"));

    public static Method WithinUnit { get; } = new(
        "acid-share-of-ph-unit",
        "in proportion to the share of the pH unit",
        Source.CommonPractice("acid-share-of-ph-unit", "a rate per pH unit taken in proportion to the units"),
        new Domain("inside the printed pH values"));

    public static Method Depth { get; } = new(
        "acid-depth",
        "scaled in proportion to depth",
        Source.CommonPractice("acid-depth", "as much acid a volume of soil: twice the depth takes twice the material"),
        new Domain("soil that is the same to that depth"));

    public static Method ByMolarMass { get; } = new(
        "acid-molar-mass",
        "by molar masses",
        LimeSources.AtomicWeights,
        new Domain(
            "sulfur all oxidised to sulfuric acid, aluminium and iron all hydrolysed, iron first oxidised; ammonium fertilisers by their published acidity"));

    /// <summary>Which column of a table was read. Tables do not say which texture classes they mean, so this is a reading.</summary>
    public static Method Column(SoilTexture texture, string heading) => new(
        "acid-texture-column",
        $"{LimeRules.Words(texture)} read in the column '{heading}'",
        Source.CommonPractice("acid-texture-column", "texture classes matched to the columns of a sulfur table"),
        new Domain(""));
}
