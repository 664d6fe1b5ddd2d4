using UnitsNet;
using UnitsNet.Units;

namespace HortiCalc.Json;

internal sealed class AreaConverter() : UnitsNetConverter<Area, AreaUnit>(
    "area",
    quantity => quantity.Unit,
    (quantity, unit) => quantity.As(unit),
    (value, unit) => new Area(value, unit),
    ("m²", AreaUnit.SquareMeter),
    ("cm²", AreaUnit.SquareCentimeter),
    ("ha", AreaUnit.Hectare),
    ("ft²", AreaUnit.SquareFoot),
    ("yd²", AreaUnit.SquareYard),
    ("ac", AreaUnit.Acre));
