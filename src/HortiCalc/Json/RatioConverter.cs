using UnitsNet;
using UnitsNet.Units;

namespace HortiCalc.Json;

internal sealed class RatioConverter() : UnitsNetConverter<Ratio, RatioUnit>(
    "ratio",
    quantity => quantity.Unit,
    (quantity, unit) => quantity.As(unit),
    (value, unit) => new Ratio(value, unit),
    ("%", RatioUnit.Percent),
    ("1", RatioUnit.DecimalFraction));
