namespace HortiCalc.Climate;

/// <summary>A class of the Huglin index, coolest first.</summary>
public enum HuglinClass
{
    /// <summary>Up to 1500 °C·d.</summary>
    VeryCool,

    /// <summary>Above 1500, up to 1800 °C·d.</summary>
    Cool,

    /// <summary>Above 1800, up to 2100 °C·d.</summary>
    Temperate,

    /// <summary>Above 2100, up to 2400 °C·d.</summary>
    TemperateWarm,

    /// <summary>Above 2400, up to 3000 °C·d.</summary>
    Warm,

    /// <summary>Above 3000 °C·d.</summary>
    VeryWarm,
}
