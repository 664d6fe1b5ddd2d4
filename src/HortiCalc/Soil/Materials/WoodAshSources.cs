using HortiCalc.Evidence;

namespace HortiCalc.Soil;

/// <summary>Where the limits of wood ash come from.</summary>
internal static class WoodAshSources
{
    public static Source ExtensionNote { get; } = new(
        "wood-ashes-1991", "Wood Ashes as a Fertilizer/Lime Material", "extension note of May 1991 (kept at sunsite.unc.edu)", 1991,
        "http://sunsite.unc.edu/london/agriculture/general/1/msg00108.html");
}
