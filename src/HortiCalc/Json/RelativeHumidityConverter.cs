using UnitsNet;
using UnitsNet.Units;

namespace HortiCalc.Json;

internal sealed class RelativeHumidityConverter() : UnitsNetConverter<RelativeHumidity, RelativeHumidityUnit>(
    "relative humidity",
    quantity => quantity.Unit,
    (quantity, unit) => quantity.As(unit),
    (value, unit) => new RelativeHumidity(value, unit),
    ("%", RelativeHumidityUnit.Percent));
