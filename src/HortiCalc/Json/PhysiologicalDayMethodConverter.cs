using HortiCalc.Climate;

namespace HortiCalc.Json;

internal sealed class PhysiologicalDayMethodConverter()
    : KeyedConverter<PhysiologicalDayMethod>("physiological day method", "physiological-days.fahrenheit", PhysiologicalDayMethod.FromKey, method => method.Evidence.Key);
