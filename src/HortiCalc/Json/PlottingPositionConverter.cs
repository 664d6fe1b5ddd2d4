using HortiCalc.Climate;

namespace HortiCalc.Json;

internal sealed class PlottingPositionConverter()
    : KeyedConverter<PlottingPosition>("plotting position", "plotting-position.weibull", PlottingPosition.FromKey, position => position.Evidence.Key);
