using HortiCalc.Soil;

namespace HortiCalc.Json;

internal sealed class DissolvedSolidsMethodConverter() : KeyedConverter<DissolvedSolidsMethod>("factor of dissolved solids", "solids-640", DissolvedSolidsMethod.FromKey, value => value.Method.Key);
