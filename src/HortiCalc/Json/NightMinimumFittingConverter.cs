using HortiCalc.Climate;

namespace HortiCalc.Json;

internal sealed class NightMinimumFittingConverter()
    : KeyedConverter<NightMinimumFitting>("fitting of the night minimum", "night-minimum.two-step", NightMinimumFitting.FromKey, one => one.Evidence.Key);
