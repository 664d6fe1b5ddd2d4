using UnitsNet;
using UnitsNet.Units;

namespace HortiCalc.Json;

internal sealed class MassConcentrationConverter() : UnitsNetConverter<MassConcentration, MassConcentrationUnit>(
    "mass concentration",
    quantity => quantity.Unit,
    (quantity, unit) => quantity.As(unit),
    (value, unit) => new MassConcentration(value, unit),
    ("mg/L", MassConcentrationUnit.MilligramPerLiter),
    ("g/L", MassConcentrationUnit.GramPerLiter),
    ("kg/m³", MassConcentrationUnit.KilogramPerCubicMeter),
    ("oz/gal (US)", MassConcentrationUnit.OuncePerUSGallon),
    ("lb/gal (US)", MassConcentrationUnit.PoundPerUSGallon));
