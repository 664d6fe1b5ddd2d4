using UnitsNet;
using UnitsNet.Units;

namespace HortiCalc.Json;

internal sealed class AngleConverter() : UnitsNetConverter<Angle, AngleUnit>(
    "angle",
    quantity => quantity.Unit,
    (quantity, unit) => quantity.As(unit),
    (value, unit) => new Angle(value, unit),
    ("°", AngleUnit.Degree),
    ("rad", AngleUnit.Radian));
