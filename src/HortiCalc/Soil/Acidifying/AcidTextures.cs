namespace HortiCalc.Soil;

/// <summary>Texture classes read into the few headings of sulfur tables; our reading, for no table names the classes.</summary>
internal static class AcidTextures
{
    public const string Sand = "sand";
    public const string Loam = "loam";
    public const string Clay = "clay";

    public static bool IsSand(SoilTexture texture) => texture is SoilTexture.Sand or SoilTexture.LoamySand or SoilTexture.SandyLoam;

    public static bool IsClay(SoilTexture texture) => texture is SoilTexture.SandyClay or SoilTexture.SiltyClay or SoilTexture.Clay;

    public static string SandLoamOrClay(SoilTexture texture) => texture switch
    {
        SoilTexture.Sand or SoilTexture.LoamySand => Sand,
        SoilTexture.SandyLoam or SoilTexture.Loam or SoilTexture.SiltLoam or SoilTexture.Silt or SoilTexture.SandyClayLoam => Loam,
        _ => Clay,
    };
}
