using HortiCalc.Units;

namespace HortiCalc.Json;

internal sealed class VolumeRateConverter() : QuantityConverter<VolumeRate>(VolumeRate.Notation);
