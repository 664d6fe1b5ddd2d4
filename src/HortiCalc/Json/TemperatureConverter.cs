using UnitsNet;
using UnitsNet.Units;

namespace HortiCalc.Json;

internal sealed class TemperatureConverter() : UnitsNetConverter<Temperature, TemperatureUnit>(
    "temperature",
    quantity => quantity.Unit,
    (quantity, unit) => quantity.As(unit),
    (value, unit) => new Temperature(value, unit),
    ("°C", TemperatureUnit.DegreeCelsius),
    ("°F", TemperatureUnit.DegreeFahrenheit),
    ("K", TemperatureUnit.Kelvin));
