namespace HortiCalc.Climate;

/// <summary>The arithmetic of one saturation curve, over water or over ice, written once for lanes of any width.</summary>
internal interface ISaturationFormula
{
    /// <summary>The saturation vapour pressure at a temperature.</summary>
    TLanes Kilopascals<TLanes>(TLanes celsius)
        where TLanes : struct, IExponentialLanes<TLanes>;

    /// <summary>The temperature at which a vapour pressure saturates: the inverse of the other.</summary>
    TLanes Celsius<TLanes>(TLanes kilopascals)
        where TLanes : struct, IExponentialLanes<TLanes>;

    /// <summary>How steep the curve is.</summary>
    double SlopeKilopascalsPerCelsius(double celsius);
}
