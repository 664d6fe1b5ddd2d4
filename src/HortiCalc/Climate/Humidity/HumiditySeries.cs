namespace HortiCalc.Climate;

/// <summary>What is computed of each member of a series.</summary>
internal enum HumiditySeries
{
    /// <summary>The saturation vapour pressure of a temperature.</summary>
    SaturationVapourPressure,

    /// <summary>The vapour pressure deficit of a temperature and a relative humidity.</summary>
    VapourPressureDeficit,

    /// <summary>The dew point of a temperature and a relative humidity.</summary>
    DewPoint,

    /// <summary>The relative humidity of a temperature and a dew point.</summary>
    RelativeHumidity,
}
