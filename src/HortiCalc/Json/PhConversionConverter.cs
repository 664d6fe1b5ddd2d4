using HortiCalc.Soil;

namespace HortiCalc.Json;

internal sealed class PhConversionConverter()
    : KeyedConverter<PhConversion>("pH conversion", "ph-conyers-davey", PhConversion.FromKey, method => method.Method.Key);
