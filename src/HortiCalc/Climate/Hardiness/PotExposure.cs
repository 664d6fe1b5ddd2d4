namespace HortiCalc.Climate;

/// <summary>How much wind reaches a pot.</summary>
public enum PotExposure
{
    /// <summary>Sheltered: among other pots, in a courtyard; a surface resistance of 0.08 m²·K/W.</summary>
    Sheltered,

    /// <summary>Normal: a town garden; 0.06 m²·K/W.</summary>
    Normal,

    /// <summary>Severe: a roof, a balcony high up, the coast; 0.03 m²·K/W.</summary>
    Severe,
}
