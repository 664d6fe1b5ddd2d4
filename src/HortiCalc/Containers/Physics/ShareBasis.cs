namespace HortiCalc.Containers;

/// <summary>What a share of air or water is a share of. The two are mixed up in print: 20 % of pores is 16 % of a volume with 80 % pores.</summary>
public enum ShareBasis
{
    /// <summary>Of the volume of the medium.</summary>
    OfVolume,

    /// <summary>Of the pores.</summary>
    OfPores,
}
