namespace HortiCalc.Climate;

/// <summary>A class of the heat of a grape-growing place, coolest first.</summary>
public enum WinklerRegion
{
    /// <summary>Below region Ia.</summary>
    TooCool,

    /// <summary>Region Ia: only very early varieties, mostly hybrids.</summary>
    Ia,

    /// <summary>Region Ib: early varieties.</summary>
    Ib,

    /// <summary>Region II: early and mid-season varieties.</summary>
    II,

    /// <summary>Region III.</summary>
    III,

    /// <summary>Region IV.</summary>
    IV,

    /// <summary>Region V: the hottest that is classed.</summary>
    V,

    /// <summary>Above region V.</summary>
    TooHot,
}
