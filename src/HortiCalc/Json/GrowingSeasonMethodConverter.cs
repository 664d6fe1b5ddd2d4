using HortiCalc.Climate;

namespace HortiCalc.Json;

/// <summary>Reads and writes a method by its key: <c>"growing-season.etccdi"</c>.</summary>
internal sealed class GrowingSeasonMethodConverter() : KeyedConverter<GrowingSeasonMethod>("growing season method", method => method.Evidence.Key, GrowingSeasonMethod.FromKey);
