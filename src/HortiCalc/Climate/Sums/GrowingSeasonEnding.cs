namespace HortiCalc.Climate;

/// <summary>How a growing season ends.</summary>
public enum GrowingSeasonEnding
{
    /// <summary>With a run of cold days.</summary>
    ColdRun,

    /// <summary>With the year, because no run of cold days came before: the winter was mild, and the season may go on.</summary>
    EndOfYear,

    /// <summary>It does not, because it never began: no run of warm days came.</summary>
    NeverBegan,
}
