using HortiCalc.Climate;

namespace HortiCalc.Json;

internal sealed class DegreeDayMethodConverter()
    : KeyedConverter<DegreeDayMethod>("degree-day method", "single-sine", DegreeDayMethod.FromKey, method => method.Evidence.Key);
