using HortiCalc.Units;

namespace HortiCalc.Json;

internal sealed class DailyLightIntegralConverter() : QuantityConverter<DailyLightIntegral>(DailyLightIntegral.Notation);
