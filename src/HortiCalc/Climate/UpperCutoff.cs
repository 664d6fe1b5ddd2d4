namespace HortiCalc.Climate;

/// <summary>What happens to development above the upper threshold.</summary>
public enum UpperCutoff
{
    /// <summary>Nothing: development keeps rising with temperature. An upper threshold, where there is one, is not used.</summary>
    None,

    /// <summary>Development goes on at the rate it has at the upper threshold.</summary>
    Horizontal,
}
