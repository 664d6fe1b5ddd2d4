using UnitsNet;
using UnitsNet.Units;

namespace HortiCalc.Json;

internal sealed class SpeedConverter() : UnitsNetConverter<Speed, SpeedUnit>(
    "speed",
    quantity => quantity.Unit,
    (quantity, unit) => quantity.As(unit),
    (value, unit) => new Speed(value, unit),
    ("m/s", SpeedUnit.MeterPerSecond),
    ("km/h", SpeedUnit.KilometerPerHour),
    ("mph", SpeedUnit.MilePerHour),
    ("kn", SpeedUnit.Knot));
