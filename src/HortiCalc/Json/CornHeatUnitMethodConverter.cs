using HortiCalc.Climate;

namespace HortiCalc.Json;

internal sealed class CornHeatUnitMethodConverter()
    : KeyedConverter<CornHeatUnitMethod>("corn heat unit method", "corn-heat-units.canada", CornHeatUnitMethod.FromKey, method => method.Evidence.Key);
