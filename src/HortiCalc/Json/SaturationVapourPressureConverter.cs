using HortiCalc.Climate;

namespace HortiCalc.Json;

internal sealed class SaturationVapourPressureConverter()
    : KeyedConverter<SaturationVapourPressure>("saturation formula", "saturation.wmo", SaturationVapourPressure.FromKey, method => method.Evidence.Key);
