using HortiCalc.Soil;

namespace HortiCalc.Json;

internal sealed class LeachingMethodConverter() : KeyedConverter<LeachingMethod>("leaching form", "leaching-rhoades", LeachingMethod.FromKey, value => value.Method.Key);
