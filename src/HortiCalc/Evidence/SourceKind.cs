namespace HortiCalc.Evidence;

/// <summary>How well a source stands behind a number.</summary>
public enum SourceKind
{
    /// <summary>Seen in print: a bulletin, standard, handbook, paper or open data set.</summary>
    Published,

    /// <summary>Custom of the trade without a publication behind it.</summary>
    CommonPractice,

    /// <summary>Remembered and not yet confirmed in print.</summary>
    FromMemory,

    /// <summary>The caller's own figures, taken as they are given.</summary>
    Given,
}
