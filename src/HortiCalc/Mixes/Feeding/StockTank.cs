namespace HortiCalc.Mixes;

/// <summary>Which of two stock tanks a salt goes into, so that calcium never meets sulfate or phosphate undiluted.</summary>
public enum StockTank
{
    /// <summary>The tank of calcium, and of chelated iron.</summary>
    A,

    /// <summary>The tank of sulfate, phosphate, acid and all the rest.</summary>
    B,
}
