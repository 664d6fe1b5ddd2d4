namespace HortiCalc.Soil;

/// <summary>How crops bear boron.</summary>
public enum BoronClass
{
    /// <summary>Very sensitive: below 0.5 mg/L in the soil water.</summary>
    VerySensitive,

    /// <summary>Sensitive: 0.5 to 1 mg/L.</summary>
    Sensitive,

    /// <summary>Moderately sensitive: 1 to 2 mg/L.</summary>
    ModeratelySensitive,

    /// <summary>Moderately tolerant: 2 to 4 mg/L.</summary>
    ModeratelyTolerant,

    /// <summary>Tolerant: 4 to 6 mg/L.</summary>
    Tolerant,

    /// <summary>Very tolerant: 6 to 15 mg/L.</summary>
    VeryTolerant,
}
