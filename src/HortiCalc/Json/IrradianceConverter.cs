using UnitsNet;
using UnitsNet.Units;

namespace HortiCalc.Json;

internal sealed class IrradianceConverter() : UnitsNetConverter<Irradiance, IrradianceUnit>(
    "power of radiation on an area",
    quantity => quantity.Unit,
    (quantity, unit) => quantity.As(unit),
    (value, unit) => new Irradiance(value, unit),
    ("W/m²", IrradianceUnit.WattPerSquareMeter),
    ("kW/m²", IrradianceUnit.KilowattPerSquareMeter));
