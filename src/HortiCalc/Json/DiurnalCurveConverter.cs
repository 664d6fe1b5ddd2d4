using HortiCalc.Climate;

namespace HortiCalc.Json;

internal sealed class DiurnalCurveConverter() : KeyedConverter<DiurnalCurve>("diurnal curve", "sine-logarithm", DiurnalCurve.FromKey, method => method.Evidence.Key);
