using HortiCalc.Units;

namespace HortiCalc.Json;

internal sealed class ThermalTimeConverter() : QuantityConverter<ThermalTime>(
    "degree-days",
    sum => (sum.CelsiusDays, "°C·d"),
    new Dictionary<string, Func<double, ThermalTime>> { ["°C·d"] = ThermalTime.FromCelsiusDays, ["°F·d"] = ThermalTime.FromFahrenheitDays });
