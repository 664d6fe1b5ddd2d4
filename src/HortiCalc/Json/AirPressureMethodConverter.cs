using HortiCalc.Climate;

namespace HortiCalc.Json;

internal sealed class AirPressureMethodConverter()
    : KeyedConverter<AirPressureMethod>("air pressure method", "air-pressure.fao", AirPressureMethod.FromKey, method => method.Evidence.Key);
