namespace HortiCalc.Climate;

/// <summary>The two ends of soil texture that thermal properties are tabulated for.</summary>
public enum SoilGrain
{
    /// <summary>Coarse: all sand.</summary>
    Sand,

    /// <summary>Fine: all clay.</summary>
    Clay,
}
