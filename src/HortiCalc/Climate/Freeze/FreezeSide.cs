namespace HortiCalc.Climate;

/// <summary>The two ends of a cold season.</summary>
public enum FreezeSide
{
    /// <summary>The end it begins with: its first freeze.</summary>
    Autumn,

    /// <summary>The end it closes with: its last freeze.</summary>
    Spring,
}
