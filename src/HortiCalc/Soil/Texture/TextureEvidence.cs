using HortiCalc.Evidence;

namespace HortiCalc.Soil;

/// <summary>The methods, sources and cautions of texture.</summary>
internal static class TextureEvidence
{
    // The glossary of the Soil Science Society of America words the same bounds and says that sand shall not exceed 15: the two differ at 15 alone.
    public static readonly Method Usda = new(
        "texture.usda",
        "USDA texture class by bounds of sand, silt and clay",
        new Source(
            "usda-texture-boundaries",
            "Soil texture class boundaries as a rule set",
            "Ontario soil survey, open source; boundaries of the US Department of Agriculture",
            null,
            "https://github.com/newdale/onsoilsurvey/blob/master/R/oss.texture.R"),
        new Domain("mineral part below 2 mm, silt from 2 to 50 µm; not for peat and other organic soils"));

    public static readonly Method Uk = new(
        "texture.england-and-wales",
        "texture class of England and Wales by bounds of sand, silt and clay",
        new Source(
            "england-wales-texture-triangle",
            "Corner points of the texture triangle of the Soil Survey of England and Wales",
            "open table of texture triangles (J. Moeys)",
            null,
            "https://github.com/julienmoeys/soiltexture/blob/8f3df3525eb5d971f21e820f5088f9eb89655647/pkg/soiltexture/R/soiltexture.R"),
        new Domain("mineral part below 2 mm, silt from 2 to 60 µm; not for peat and other organic soils"));

    public static readonly Caution UkSilt = new(
        "texture.silt-limit",
        CautionLevel.Note,
        "The class holds where silt was counted up to 60 µm; a report that counts it up to 50 or 20 µm shows less silt and more sand.",
        Uk.Source);

    public static readonly Source AustralianGrades = new(
        "australian-field-texture-grades",
        "Field Soil Texture Grades",
        "Delta Environmental (Australia)",
        2003,
        "http://www.deltaenvironmental.com.au/management/Lab_methods/soil%20texture.htm");
}
