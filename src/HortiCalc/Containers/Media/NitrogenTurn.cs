namespace HortiCalc.Containers;

/// <summary>Which way the nitrogen of a material goes while it rots.</summary>
public enum NitrogenTurn
{
    /// <summary>It becomes free for roots: there is more than the microbes need.</summary>
    Releases,

    /// <summary>It may go either way.</summary>
    Balanced,

    /// <summary>Microbes take it, from fertiliser too: plants can starve.</summary>
    TiesUp,
}
