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

    public static readonly Source AustralianGrades = new(
        "australian-field-texture-grades",
        "Field Soil Texture Grades",
        "Delta Environmental (Australia)",
        2003,
        "http://www.deltaenvironmental.com.au/management/Lab_methods/soil%20texture.htm");
}
