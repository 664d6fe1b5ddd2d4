namespace HortiCalc.Soil;

/// <summary>The soil groups of the German scheme, by their codes.</summary>
public enum GermanSoilGroup
{
    /// <summary>S: sand. Peat, above 30 % humus, stands here too.</summary>
    Sand,

    /// <summary>lS, sU: loamy sand and sandy silt.</summary>
    LoamySand,

    /// <summary>ssL, lU: very sandy loam and loamy silt.</summary>
    SandyLoam,

    /// <summary>sL, uL, L: sandy, silty and plain loam.</summary>
    Loam,

    /// <summary>utL, tL, T: silty-clayey and clayey loam, clay. Printed for arable land only, in the copy seen.</summary>
    Clay,
}
