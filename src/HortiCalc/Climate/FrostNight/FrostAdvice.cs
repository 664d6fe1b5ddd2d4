namespace HortiCalc.Climate;

/// <summary>What to do about a night.</summary>
public enum FrostAdvice
{
    /// <summary>Neither the minimum to expect nor the cold end of its range harms the crop: watch the thermometer.</summary>
    Watch,

    /// <summary>The cold end of the range harms the crop: cover what can be covered, and have water ready.</summary>
    BeReady,

    /// <summary>The minimum to expect harms the crop: protect it.</summary>
    Protect,
}
