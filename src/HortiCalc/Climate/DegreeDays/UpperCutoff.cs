namespace HortiCalc.Climate;

/// <summary>What happens to development above the upper threshold.</summary>
public enum UpperCutoff
{
    /// <summary>Nothing: development keeps rising with temperature. An upper threshold, where there is one, is not used.</summary>
    None,

    /// <summary>Development goes on at the rate it has at the upper threshold.</summary>
    Horizontal,

    /// <summary>
    /// Above the upper threshold the rate falls as fast as it rose below. A day so hot that it would count less than nothing counts nothing.
    /// </summary>
    Intermediate,

    /// <summary>
    /// As <see cref="Intermediate"/>, but a day so hot that it counts less than nothing takes from the sum, as the formula does
    /// where nobody stops it at zero.
    /// </summary>
    IntermediateBelowZero,

    /// <summary>There is no development above the upper threshold. At exactly that temperature there still is.</summary>
    Vertical,
}
