using UnitsNet;
using UnitsNet.Units;

namespace HortiCalc.Json;

internal sealed class AreaDensityConverter() : UnitsNetConverter<AreaDensity, AreaDensityUnit>(
    "mass per area",
    quantity => quantity.Unit,
    (quantity, unit) => quantity.As(unit),
    (value, unit) => new AreaDensity(value, unit),
    ("g/m²", AreaDensityUnit.GramPerSquareMeter),
    ("kg/m²", AreaDensityUnit.KilogramPerSquareMeter),
    ("mg/m²", AreaDensityUnit.MilligramPerSquareMeter));
