using HortiCalc.Soil;

namespace HortiCalc.Json;

internal sealed class PhMeanMethodConverter()
    : KeyedConverter<PhMeanMethod>("pH mean method", "ph-mean-solutions", PhMeanMethod.FromKey, method => method.Method.Key);
