using UnitsNet;
using UnitsNet.Units;

namespace HortiCalc.Json;

internal sealed class DensityConverter() : UnitsNetConverter<Density, DensityUnit>(
    "density",
    quantity => quantity.Unit,
    (quantity, unit) => quantity.As(unit),
    (value, unit) => new Density(value, unit),
    ("kg/m³", DensityUnit.KilogramPerCubicMeter),
    ("g/L", DensityUnit.GramPerLiter),
    ("g/cm³", DensityUnit.GramPerCubicCentimeter),
    ("kg/L", DensityUnit.KilogramPerLiter),
    ("lb/ft³", DensityUnit.PoundPerCubicFoot),
    ("lb/yd³", DensityUnit.PoundPerCubicYard));
