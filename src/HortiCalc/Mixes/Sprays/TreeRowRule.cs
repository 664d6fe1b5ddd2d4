namespace HortiCalc.Mixes;

/// <summary>The published rules for the spray volume of rows of trees by their size.</summary>
public enum TreeRowRule
{
    /// <summary>Nursery rows: 10 gal/acre for each foot of width times height over the spacing. Zondag, Ohio State. The default for gardens.</summary>
    Nursery,

    /// <summary>Orchard rows sprayed to run-off: 40 gal/acre for each foot of width times height over the spacing. Zondag, Ohio State.</summary>
    Orchard,

    /// <summary>Well-pruned orchard rows, dilute: 0.7 gal on each 1,000 cubic feet of foliage. Landers, Cornell.</summary>
    WellPrunedOrchard,

    /// <summary>Unpruned orchard rows with a thick canopy, dilute: 1 gal on each 1,000 cubic feet of foliage. Landers, Cornell.</summary>
    DenseOrchard,
}
