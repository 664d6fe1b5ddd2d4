using HortiCalc.Climate;

namespace HortiCalc.Json;

/// <summary>Reads and writes a method by its key: <c>"corn-heat-units.canada"</c>.</summary>
internal sealed class CornHeatUnitMethodConverter() : KeyedConverter<CornHeatUnitMethod>("corn heat unit method", method => method.Evidence.Key, CornHeatUnitMethod.FromKey);
