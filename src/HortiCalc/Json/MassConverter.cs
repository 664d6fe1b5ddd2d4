using UnitsNet;
using UnitsNet.Units;

namespace HortiCalc.Json;

internal sealed class MassConverter() : UnitsNetConverter<Mass, MassUnit>(
    "mass",
    quantity => quantity.Unit,
    (quantity, unit) => quantity.As(unit),
    (value, unit) => new Mass(value, unit),
    ("kg", MassUnit.Kilogram),
    ("g", MassUnit.Gram),
    ("mg", MassUnit.Milligram),
    ("t", MassUnit.Tonne),
    ("lb", MassUnit.Pound),
    ("oz", MassUnit.Ounce),
    ("ton (US)", MassUnit.ShortTon));
