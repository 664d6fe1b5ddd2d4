using HortiCalc.Evidence;

namespace HortiCalc.Soil;

/// <summary>The methods, sources and cautions of texture.</summary>
internal static class TextureEvidence
{
    // The manual's rules, as open programs transcribe them from its page 122. It says of sand, beyond the bound that decides, that there is more than 85 %
    // of it, and of loamy sand 70 to 90 %: both follow from the bounds. The glossary of the Soil Science Society of America says that silt plus 1.5 times
    // clay shall not exceed 15 in sand, the manual that it is less than 15: the two differ at 15 alone.
    public static readonly Method Usda = new(
        "texture.usda",
        "USDA texture class by bounds of sand, silt and clay",
        new Source(
            "usda-soil-survey-manual",
            "Soil Survey Manual, Agriculture Handbook 18, chapter 3, texture classes, page 122",
            "US Department of Agriculture",
            2017,
            "https://www.nrcs.usda.gov/sites/default/files/2022-09/The-Soil-Survey-Manual.pdf"),
        new Domain("mineral part below 2 mm, silt from 2 to 50 µm; not for peat and other organic soils"));

    public static readonly Source AustralianGrades = new(
        "australian-field-texture-grades",
        "Field Soil Texture Grades",
        "Delta Environmental (Australia)",
        2003,
        "http://www.deltaenvironmental.com.au/management/Lab_methods/soil%20texture.htm");
}
