namespace HortiCalc.Mixes;

/// <summary>What the amounts of a recipe are printed for.</summary>
public enum DoseBasis
{
    /// <summary>So much in the finished mix.</summary>
    FinishedMix,

    /// <summary>So much added to the water.</summary>
    Water,
}
