using HortiCalc.Climate;

namespace HortiCalc.Json;

internal sealed class ChillModelConverter() : KeyedConverter<ChillModel>("chill model", "dynamic", ChillModel.FromKey, method => method.Evidence.Key);
