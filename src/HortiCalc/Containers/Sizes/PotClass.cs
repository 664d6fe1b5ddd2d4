namespace HortiCalc.Containers;

/// <summary>How high growers' pots are for their diameter.</summary>
public enum PotClass
{
    /// <summary>As high as wide.</summary>
    Standard,

    /// <summary>Three quarters as high as wide: azalea pots.</summary>
    Azalea,

    /// <summary>Half as high as wide: pans, for bulbs.</summary>
    Pan,
}
