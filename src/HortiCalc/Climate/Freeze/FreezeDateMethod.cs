namespace HortiCalc.Climate;

/// <summary>How the dates of past freezes are turned into chances.</summary>
public enum FreezeDateMethod
{
    /// <summary>
    /// The mixed distribution: the share of seasons with a freeze, and a normal distribution of the dates of those that had one.
    /// The default, because ten to thirty seasons are enough for it and the older national tables are made this way.
    /// </summary>
    MixedNormal,
}
