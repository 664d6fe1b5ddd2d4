using HortiCalc.Soil;

namespace HortiCalc.Json;

internal sealed class OxideFactorsConverter() : KeyedConverter<OxideFactors>("oxide factors", "oxides-molar-mass", OxideFactors.FromKey, value => value.Method.Key);
