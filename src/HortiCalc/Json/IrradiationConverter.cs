using HortiCalc.Units;
using UnitsNet;
using UnitsNet.Units;

namespace HortiCalc.Json;

internal sealed class IrradiationConverter() : UnitsNetConverter<Irradiation, IrradiationUnit>(
    "radiation on an area",
    new Dictionary<string, Func<double, Irradiation>> { ["MJ/m²"] = Irradiation.FromMegajoulesPerSquareMeter },
    quantity => quantity.Unit,
    (quantity, unit) => quantity.As(unit),
    (value, unit) => new Irradiation(value, unit),
    ("kJ/m²", IrradiationUnit.KilojoulePerSquareMeter),
    ("J/m²", IrradiationUnit.JoulePerSquareMeter),
    ("J/cm²", IrradiationUnit.JoulePerSquareCentimeter),
    ("Wh/m²", IrradiationUnit.WattHourPerSquareMeter),
    ("kWh/m²", IrradiationUnit.KilowattHourPerSquareMeter));
