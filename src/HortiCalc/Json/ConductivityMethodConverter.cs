using HortiCalc.Mixes;

namespace HortiCalc.Json;

internal sealed class ConductivityMethodConverter() : KeyedConverter<ConductivityMethod>(
    "conductivity method", "conductivity.cation-sum", ConductivityMethod.FromKey, method => method.Evidence.Key);
