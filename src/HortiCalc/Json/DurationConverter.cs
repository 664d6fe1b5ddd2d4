using UnitsNet;
using UnitsNet.Units;

namespace HortiCalc.Json;

internal sealed class DurationConverter() : UnitsNetConverter<Duration, DurationUnit>(
    "duration",
    quantity => quantity.Unit,
    (quantity, unit) => quantity.As(unit),
    (value, unit) => new Duration(value, unit),
    ("d", DurationUnit.Day),
    ("h", DurationUnit.Hour),
    ("min", DurationUnit.Minute),
    ("s", DurationUnit.Second),
    ("wk", DurationUnit.Week));
