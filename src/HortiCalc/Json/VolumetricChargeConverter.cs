using HortiCalc.Units;

namespace HortiCalc.Json;

internal sealed class VolumetricChargeConverter() : QuantityConverter<VolumetricCharge>(VolumetricCharge.Notation);
