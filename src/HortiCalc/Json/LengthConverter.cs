using UnitsNet;
using UnitsNet.Units;

namespace HortiCalc.Json;

internal sealed class LengthConverter() : UnitsNetConverter<Length, LengthUnit>(
    "length",
    quantity => quantity.Unit,
    (quantity, unit) => quantity.As(unit),
    (value, unit) => new Length(value, unit),
    ("m", LengthUnit.Meter),
    ("cm", LengthUnit.Centimeter),
    ("mm", LengthUnit.Millimeter),
    ("km", LengthUnit.Kilometer),
    ("in", LengthUnit.Inch),
    ("ft", LengthUnit.Foot),
    ("yd", LengthUnit.Yard));
