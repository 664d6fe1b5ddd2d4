using UnitsNet;
using UnitsNet.Units;

namespace HortiCalc.Json;

internal sealed class VolumeConcentrationConverter() : UnitsNetConverter<VolumeConcentration, VolumeConcentrationUnit>(
    "volume concentration",
    quantity => quantity.Unit,
    (quantity, unit) => quantity.As(unit),
    (value, unit) => new VolumeConcentration(value, unit),
    ("%", VolumeConcentrationUnit.Percent),
    ("mL/L", VolumeConcentrationUnit.MillilitersPerLiter),
    ("L/L", VolumeConcentrationUnit.DecimalFraction));
