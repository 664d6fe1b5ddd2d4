namespace HortiCalc.Soil;

/// <summary>What a rate for a potting medium is for.</summary>
public enum MediumRatePurpose
{
    /// <summary>Part of a recipe, or what such a medium usually takes.</summary>
    Recipe,

    /// <summary>To raise the pH by about one unit; a second unit takes more than as much again.</summary>
    RaiseOneUnit,

    /// <summary>The most that the source advises.</summary>
    UpperLimit,

    /// <summary>Tried in an experiment, to keep the pH low.</summary>
    TriedToLower,
}
