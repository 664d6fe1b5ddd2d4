using HortiCalc.Soil;

namespace HortiCalc.Json;

internal sealed class AvailableWaterMethodConverter()
    : KeyedConverter<AvailableWaterMethod>("available water method", "available-water-fao-56", AvailableWaterMethod.FromKey, method => method.Method.Key);
