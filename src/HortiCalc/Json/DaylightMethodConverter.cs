using HortiCalc.Climate;

namespace HortiCalc.Json;

internal sealed class DaylightMethodConverter() : KeyedConverter<DaylightMethod>("daylight method", "geometric", DaylightMethod.FromKey, method => method.Evidence.Key);
