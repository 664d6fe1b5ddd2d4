using HortiCalc.Units;
using UnitsNet;
using UnitsNet.Units;

namespace HortiCalc.Json;

internal sealed class IlluminanceConverter() : UnitsNetConverter<Illuminance, IlluminanceUnit>(
    "illuminance",
    new Dictionary<string, Func<double, Illuminance>> { ["fc"] = Illuminance.FromFootcandles },
    quantity => quantity.Unit,
    (quantity, unit) => quantity.As(unit),
    (value, unit) => new Illuminance(value, unit),
    ("lx", IlluminanceUnit.Lux),
    ("klx", IlluminanceUnit.Kilolux));
