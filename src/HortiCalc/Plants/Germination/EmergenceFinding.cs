namespace HortiCalc.Plants;

/// <summary>What a table of emergence says about a temperature.</summary>
public enum EmergenceFinding
{
    /// <summary>Seedlings come up, in a printed number of days or one between two printed ones.</summary>
    Emerges,

    /// <summary>Little or no seed germinates.</summary>
    NoGermination,

    /// <summary>The table has no figure there, or none on one side of it: it was not tested, or is not given.</summary>
    NotTested,

    /// <summary>Between a temperature at which seedlings came up and one at which none did: the table does not say where the limit is.</summary>
    Uncertain,
}
