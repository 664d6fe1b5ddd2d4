using HortiCalc.Units;
using UnitsNet;
using UnitsNet.Units;

namespace HortiCalc.Json;

internal sealed class VolumeConverter() : UnitsNetConverter<Volume, VolumeUnit>(
    "volume",
    new Dictionary<string, Func<double, Volume>>
    {
        ["bu (US)"] = Volume.FromUsBushels,
        ["bu (imp.)"] = Volume.FromImperialBushels,
        ["dry qt (US)"] = Volume.FromUsDryQuarts,
        ["tbsp (metric)"] = Volume.FromMetricTablespoons,
    },
    quantity => quantity.Unit,
    (quantity, unit) => quantity.As(unit),
    (value, unit) => new Volume(value, unit),
    ("L", VolumeUnit.Liter),
    ("mL", VolumeUnit.Milliliter),
    ("m³", VolumeUnit.CubicMeter),
    ("cm³", VolumeUnit.CubicCentimeter),
    ("ft³", VolumeUnit.CubicFoot),
    ("yd³", VolumeUnit.CubicYard),
    ("in³", VolumeUnit.CubicInch),
    ("gal (US)", VolumeUnit.UsGallon),
    ("qt (US)", VolumeUnit.UsQuart),
    ("pt (US)", VolumeUnit.UsPint),
    ("cup (US)", VolumeUnit.UsCustomaryCup),
    ("fl oz (US)", VolumeUnit.UsOunce),
    ("tbsp (US)", VolumeUnit.UsTablespoon),
    ("tsp (US)", VolumeUnit.UsTeaspoon),
    ("cup (metric)", VolumeUnit.MetricCup),
    ("tsp (metric)", VolumeUnit.MetricTeaspoon),
    ("gal (imp.)", VolumeUnit.ImperialGallon),
    ("qt (imp.)", VolumeUnit.ImperialQuart),
    ("pt (imp.)", VolumeUnit.ImperialPint),
    ("fl oz (imp.)", VolumeUnit.ImperialOunce));
