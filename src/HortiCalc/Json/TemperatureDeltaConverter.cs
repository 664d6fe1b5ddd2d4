using UnitsNet;
using UnitsNet.Units;

namespace HortiCalc.Json;

internal sealed class TemperatureDeltaConverter() : UnitsNetConverter<TemperatureDelta, TemperatureDeltaUnit>(
    "temperature difference",
    quantity => quantity.Unit,
    (quantity, unit) => quantity.As(unit),
    (value, unit) => new TemperatureDelta(value, unit),
    ("°C", TemperatureDeltaUnit.DegreeCelsius),
    ("°F", TemperatureDeltaUnit.DegreeFahrenheit),
    ("K", TemperatureDeltaUnit.Kelvin));
