using HortiCalc.Climate;

namespace HortiCalc.Json;

/// <summary>Reads and writes a method by its key: <c>"physiological-days.fahrenheit"</c>.</summary>
internal sealed class PhysiologicalDayMethodConverter() : KeyedConverter<PhysiologicalDayMethod>("physiological day method", method => method.Evidence.Key, PhysiologicalDayMethod.FromKey);
