using HortiCalc.Soil;

namespace HortiCalc.Json;

internal sealed class FinenessSchemeConverter()
    : KeyedConverter<FinenessScheme>("fineness scheme", "fineness-iowa", FinenessScheme.FromKey, scheme => scheme.Evidence.Key);
