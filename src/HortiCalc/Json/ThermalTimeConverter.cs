using HortiCalc.Units;

namespace HortiCalc.Json;

internal sealed class ThermalTimeConverter() : QuantityConverter<ThermalTime>(ThermalTime.Notation);
