using HortiCalc.Soil;

namespace HortiCalc.Json;

internal sealed class AcidifyingMethodConverter()
    : KeyedConverter<AcidifyingMethod>("acidifying method", "acid-rhs", AcidifyingMethod.FromKey, method => method.Method.Key);
