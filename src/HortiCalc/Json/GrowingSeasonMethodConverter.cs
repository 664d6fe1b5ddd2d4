using HortiCalc.Climate;

namespace HortiCalc.Json;

internal sealed class GrowingSeasonMethodConverter()
    : KeyedConverter<GrowingSeasonMethod>("growing season method", "growing-season.etccdi", GrowingSeasonMethod.FromKey, method => method.Evidence.Key);
