using UnitsNet;
using UnitsNet.Units;

namespace HortiCalc.Json;

internal sealed class MolarityConverter() : UnitsNetConverter<Molarity, MolarityUnit>(
    "molarity",
    quantity => quantity.Unit,
    (quantity, unit) => quantity.As(unit),
    (value, unit) => new Molarity(value, unit),
    ("mol/L", MolarityUnit.MolePerLiter),
    ("mmol/L", MolarityUnit.MillimolePerLiter),
    ("µmol/L", MolarityUnit.MicromolePerLiter));
