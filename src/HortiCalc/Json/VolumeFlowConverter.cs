using UnitsNet;
using UnitsNet.Units;

namespace HortiCalc.Json;

internal sealed class VolumeFlowConverter() : UnitsNetConverter<VolumeFlow, VolumeFlowUnit>(
    "volume flow",
    quantity => quantity.Unit,
    (quantity, unit) => quantity.As(unit),
    (value, unit) => new VolumeFlow(value, unit),
    ("L/min", VolumeFlowUnit.LiterPerMinute),
    ("L/h", VolumeFlowUnit.LiterPerHour),
    ("m³/h", VolumeFlowUnit.CubicMeterPerHour),
    ("gal/min", VolumeFlowUnit.UsGallonPerMinute),
    ("gal/h", VolumeFlowUnit.UsGallonPerHour));
