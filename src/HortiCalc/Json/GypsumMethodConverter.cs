using HortiCalc.Soil;

namespace HortiCalc.Json;

internal sealed class GypsumMethodConverter() : KeyedConverter<GypsumMethod>("gypsum allowance", "gypsum-ali", GypsumMethod.FromKey, value => value.Method.Key);
