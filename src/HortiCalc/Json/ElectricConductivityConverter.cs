using UnitsNet;
using UnitsNet.Units;

namespace HortiCalc.Json;

internal sealed class ElectricConductivityConverter() : UnitsNetConverter<ElectricConductivity, ElectricConductivityUnit>(
    "electric conductivity",
    quantity => quantity.Unit,
    (quantity, unit) => quantity.As(unit),
    (value, unit) => new ElectricConductivity(value, unit),
    ("mS/cm", ElectricConductivityUnit.MillisiemensPerCentimeter),
    ("µS/cm", ElectricConductivityUnit.MicrosiemensPerCentimeter),
    ("S/m", ElectricConductivityUnit.SiemensPerMeter));
