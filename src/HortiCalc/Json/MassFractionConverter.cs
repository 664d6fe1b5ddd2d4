using UnitsNet;
using UnitsNet.Units;

namespace HortiCalc.Json;

internal sealed class MassFractionConverter() : UnitsNetConverter<MassFraction, MassFractionUnit>(
    "mass fraction",
    quantity => quantity.Unit,
    (quantity, unit) => quantity.As(unit),
    (value, unit) => new MassFraction(value, unit),
    ("%", MassFractionUnit.Percent),
    ("g/kg", MassFractionUnit.GramPerKilogram),
    ("mg/kg", MassFractionUnit.MilligramPerKilogram),
    ("kg/kg", MassFractionUnit.DecimalFraction));
