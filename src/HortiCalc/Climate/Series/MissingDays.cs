namespace HortiCalc.Climate;

/// <summary>What is done about the missing days of a record that is summed. They are counted and reported either way.</summary>
public enum MissingDays
{
    /// <summary>They add nothing, so that the sum is too low by what they had.</summary>
    LeftOut,

    /// <summary>
    /// Their minimum and maximum are taken from the straight line between the last known day before and the first known day
    /// after. Missing days before the first known day, or after the last, are left out.
    /// </summary>
    Interpolated,
}
