namespace HortiCalc.Climate;

/// <summary>Lanes that also raise e to a power and take logarithms.</summary>
/// <remarks>
/// These two are not defined to the last bit: they may differ between processors by about two units of the last place, and from plain
/// numbers likewise. NaN in, NaN out.
/// </remarks>
internal interface IExponentialLanes<TSelf> : ILanes<TSelf>
    where TSelf : struct, IExponentialLanes<TSelf>
{
    /// <summary>e to this power.</summary>
    static abstract TSelf Exp(TSelf power);

    /// <summary>The natural logarithm.</summary>
    static abstract TSelf Log(TSelf a);
}
