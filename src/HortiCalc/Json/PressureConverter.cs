using UnitsNet;
using UnitsNet.Units;

namespace HortiCalc.Json;

internal sealed class PressureConverter() : UnitsNetConverter<Pressure, PressureUnit>(
    "pressure",
    quantity => quantity.Unit,
    (quantity, unit) => quantity.As(unit),
    (value, unit) => new Pressure(value, unit),
    ("kPa", PressureUnit.Kilopascal),
    ("hPa", PressureUnit.Hectopascal),
    ("Pa", PressureUnit.Pascal),
    ("mbar", PressureUnit.Millibar),
    ("bar", PressureUnit.Bar),
    ("inHg", PressureUnit.InchOfMercury),
    ("mmHg", PressureUnit.MillimeterOfMercury),
    ("psi", PressureUnit.PoundForcePerSquareInch));
