namespace HortiCalc.Climate;

/// <summary>How old the roots are that a killing temperature was found for.</summary>
public enum RootAge
{
    /// <summary>Young roots, with white tips: the least hardy.</summary>
    Young,

    /// <summary>Mature roots.</summary>
    Mature,

    /// <summary>The source does not say.</summary>
    NotStated,
}
