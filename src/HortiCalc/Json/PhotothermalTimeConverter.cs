using HortiCalc.Units;

namespace HortiCalc.Json;

internal sealed class PhotothermalTimeConverter() : QuantityConverter<PhotothermalTime>(PhotothermalTime.Notation);
