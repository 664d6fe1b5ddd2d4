using HortiCalc.Evidence;

namespace HortiCalc.Soil;

/// <summary>The rules that are applied to a rate after its method.</summary>
internal static class LimeRules
{
    public static Method BetweenRows { get; } = new(
        "lime-between-rows",
        "read in a straight line between printed rows",
        Source.CommonPractice("lime-between-rows", "a straight line between two neighbouring rows of a lime table"),
        new Domain("inside the printed rows; the tables print no rule for values between them"));

    public static Method WithinUnit { get; } = new(
        "lime-share-of-ph-unit",
        "in proportion to the share of the pH unit",
        Source.CommonPractice("lime-share-of-ph-unit", "a lime rate per pH unit taken in proportion within the unit"),
        new Domain("inside the printed pH units"));

    public static Method Depth { get; } = new(
        "lime-depth",
        "scaled in proportion to depth",
        LimeSources.Depth,
        new Domain(
            "printed for working deeper than 15 cm, and half the rate for half the depth (Michigan State University Extension, "
            + "Bulletin E-2567, 1995); to other depths it is custom"));

    public static Method Material { get; } = new(
        "lime-material",
        "corrected for the calcium carbonate equivalent",
        LimeSources.PennStateHomeGarden,
        new Domain(
            "recommended rate times the equivalent it assumes, divided by that of the material; fineness and moisture are separate matters"));

    public static Method ResidualCredit { get; } = new(
        "lime-residual-credit",
        "less what remains of lime applied before",
        LimeSources.NorthCarolina,
        new Domain("lime applied within the last year or so"));

    /// <summary>Which column of a garden table was read. Tables do not say which texture classes they mean, so this is a reading.</summary>
    public static Method Column(SoilTexture texture, string heading) => new(
        "lime-texture-column",
        $"{Words(texture)} read in the column '{heading}'",
        Source.CommonPractice("lime-texture-column", "texture classes matched to the columns of a garden lime table"),
        new Domain(""));

    internal static string Words(SoilTexture texture) => texture switch
    {
        SoilTexture.LoamySand => "loamy sand",
        SoilTexture.SandyLoam => "sandy loam",
        SoilTexture.SiltLoam => "silt loam",
        SoilTexture.SandyClayLoam => "sandy clay loam",
        SoilTexture.ClayLoam => "clay loam",
        SoilTexture.SiltyClayLoam => "silty clay loam",
        SoilTexture.SandyClay => "sandy clay",
        SoilTexture.SiltyClay => "silty clay",
        SoilTexture.Sand => "sand",
        SoilTexture.Loam => "loam",
        SoilTexture.Silt => "silt",
        _ => "clay",
    };
}
