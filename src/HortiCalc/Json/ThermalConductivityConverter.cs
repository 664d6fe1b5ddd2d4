using UnitsNet;
using UnitsNet.Units;

namespace HortiCalc.Json;

internal sealed class ThermalConductivityConverter() : UnitsNetConverter<ThermalConductivity, ThermalConductivityUnit>(
    "thermal conductivity",
    quantity => quantity.Unit,
    (quantity, unit) => quantity.As(unit),
    (value, unit) => new ThermalConductivity(value, unit),
    ("W/(m·K)", ThermalConductivityUnit.WattPerMeterKelvin),
    ("BTU/(h·ft·°F)", ThermalConductivityUnit.BtuPerHourFootFahrenheit));
