namespace HortiCalc.Soil;

/// <summary>How a crop bears salt.</summary>
public enum SaltRating
{
    /// <summary>Sensitive.</summary>
    Sensitive,

    /// <summary>Moderately sensitive.</summary>
    ModeratelySensitive,

    /// <summary>Moderately tolerant.</summary>
    ModeratelyTolerant,

    /// <summary>Tolerant.</summary>
    Tolerant,
}
