namespace HortiCalc.Evidence;

/// <summary>How much is at stake.</summary>
public enum CautionLevel
{
    /// <summary>The number may not mean what it seems to mean.</summary>
    Note,

    /// <summary>Plants, soil or money can suffer.</summary>
    Care,

    /// <summary>People can be hurt.</summary>
    Danger,
}
