namespace HortiCalc.Mixes;

/// <summary>What the source of a recipe says about rinsing afterwards.</summary>
public enum RinseAdvice
{
    /// <summary>The source says nothing about it.</summary>
    NotStated,

    /// <summary>Rinse with clean water.</summary>
    Rinse,

    /// <summary>Rinse metal, against corrosion.</summary>
    RinseMetal,

    /// <summary>Let it dry; do not rinse.</summary>
    DoNotRinse,
}
