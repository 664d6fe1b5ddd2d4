namespace HortiCalc.Climate;

/// <summary>How far a cold of half an hour damages a crop, as far as it is printed.</summary>
public enum FrostDamageLevel
{
    /// <summary>Warmer than the critical temperature; the source prints no shares.</summary>
    WarmerThanCritical,

    /// <summary>At the critical temperature, or within its printed range; the source prints no shares.</summary>
    AtCritical,

    /// <summary>Colder than the critical temperature; the source prints no shares.</summary>
    ColderThanCritical,

    /// <summary>Warmer than what kills 10 % of the buds.</summary>
    LessThanTenPercent,

    /// <summary>Between what kills 10 % and what kills 90 % of the buds.</summary>
    TenToNinetyPercent,

    /// <summary>As cold as what kills 10 % of the buds, or colder; the source prints nothing for 90 %.</summary>
    TenPercentOrMore,

    /// <summary>Colder than what kills 90 % of the buds.</summary>
    MoreThanNinetyPercent,
}
