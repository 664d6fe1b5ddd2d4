namespace HortiCalc.Climate;

/// <summary>What an afternoon's dew point tells of frost in the night.</summary>
public enum FrostOutlook
{
    /// <summary>The rule does not point to frost. It does not promise that there is none.</summary>
    NotIndicated,

    /// <summary>Frost is possible.</summary>
    Possible,

    /// <summary>Frost is probable.</summary>
    Probable,
}
