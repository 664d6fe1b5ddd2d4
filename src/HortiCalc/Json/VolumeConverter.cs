using UnitsNet;
using UnitsNet.Units;

namespace HortiCalc.Json;

internal sealed class VolumeConverter() : UnitsNetConverter<Volume, VolumeUnit>(
    "volume",
    quantity => quantity.Unit,
    (quantity, unit) => quantity.As(unit),
    (value, unit) => new Volume(value, unit),
    ("L", VolumeUnit.Liter),
    ("mL", VolumeUnit.Milliliter),
    ("m³", VolumeUnit.CubicMeter),
    ("ft³", VolumeUnit.CubicFoot),
    ("yd³", VolumeUnit.CubicYard),
    ("in³", VolumeUnit.CubicInch),
    ("gal (US)", VolumeUnit.UsGallon),
    ("qt (US)", VolumeUnit.UsQuart),
    ("pt (US)", VolumeUnit.UsPint),
    ("fl oz (US)", VolumeUnit.UsOunce),
    ("tbsp (US)", VolumeUnit.UsTablespoon),
    ("tsp (US)", VolumeUnit.UsTeaspoon),
    ("gal (imp.)", VolumeUnit.ImperialGallon),
    ("pt (imp.)", VolumeUnit.ImperialPint),
    ("fl oz (imp.)", VolumeUnit.ImperialOunce));
