namespace HortiCalc.Mixes;

/// <summary>The published rules for the spray volume of rows of trees by their size.</summary>
public enum TreeRowRule
{
    /// <summary>Nursery rows: 10 gal/acre for each foot of width times height over the spacing. Zondag, Ohio State. The default for gardens.</summary>
    Nursery,

    /// <summary>Orchard rows sprayed to run-off: 40 gal/acre for each foot of width times height over the spacing.</summary>
    Orchard,
}
