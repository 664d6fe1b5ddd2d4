namespace HortiCalc.Mixes;

/// <summary>The published rules for the spray volume of rows of trees by their size.</summary>
public enum TreeRowRule
{
    /// <summary>Nursery rows: 10 gal/acre for each foot of width times height over the spacing. Zondag, Ohio State. The default for gardens.</summary>
    Nursery,

    /// <summary>Orchard rows sprayed to run-off: 40 gal/acre for each foot of width times height over the spacing.</summary>
    Orchard,

    /// <summary>Orchard rows that are well pruned: 0.7 US gallons for each 1,000 cubic feet of canopy. Landers, Cornell University.</summary>
    OrchardWellPruned,

    /// <summary>Orchard rows unpruned and dense: 1 US gallon for each 1,000 cubic feet of canopy. Landers, Cornell University.</summary>
    OrchardDense,
}
