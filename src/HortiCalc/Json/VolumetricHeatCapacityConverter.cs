using UnitsNet;
using UnitsNet.Units;

namespace HortiCalc.Json;

internal sealed class VolumetricHeatCapacityConverter() : UnitsNetConverter<VolumetricHeatCapacity, VolumetricHeatCapacityUnit>(
    "heat capacity by volume",
    quantity => quantity.Unit,
    (quantity, unit) => quantity.As(unit),
    (value, unit) => new VolumetricHeatCapacity(value, unit),
    ("J/(m³·K)", VolumetricHeatCapacityUnit.JoulePerCubicMeterKelvin),
    ("MJ/(m³·K)", VolumetricHeatCapacityUnit.MegajoulePerCubicMeterKelvin));
