using HortiCalc.Units;
using UnitsNet;
using UnitsNet.Units;

namespace HortiCalc.Json;

internal sealed class AreaDensityConverter() : UnitsNetConverter<AreaDensity, AreaDensityUnit>(
    "mass per area",
    new Dictionary<string, Func<double, AreaDensity>>
    {
        ["kg/ha"] = AreaDensity.FromKilogramsPerHectare,
        ["t/ha"] = AreaDensity.FromTonnesPerHectare,
        ["lb/100 ft²"] = AreaDensity.FromPoundsPerHundredSquareFeet,
        ["lb/1000 ft²"] = AreaDensity.FromPoundsPerThousandSquareFeet,
        ["lb/ac"] = AreaDensity.FromPoundsPerAcre,
        ["ton (US)/ac"] = AreaDensity.FromShortTonsPerAcre,
        ["oz/yd²"] = AreaDensity.FromOuncesPerSquareYard,
    },
    quantity => quantity.Unit,
    (quantity, unit) => quantity.As(unit),
    (value, unit) => new AreaDensity(value, unit),
    ("g/m²", AreaDensityUnit.GramPerSquareMeter),
    ("kg/m²", AreaDensityUnit.KilogramPerSquareMeter),
    ("mg/m²", AreaDensityUnit.MilligramPerSquareMeter));
