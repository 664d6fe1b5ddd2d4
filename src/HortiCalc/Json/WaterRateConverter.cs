using HortiCalc.Units;

namespace HortiCalc.Json;

internal sealed class WaterRateConverter() : QuantityConverter<WaterRate>(WaterRate.Notation);
