using UnitsNet;
using UnitsNet.Units;

namespace HortiCalc.Json;

internal sealed class ReciprocalAreaConverter() : UnitsNetConverter<ReciprocalArea, ReciprocalAreaUnit>(
    "number per area",
    quantity => quantity.Unit,
    (quantity, unit) => quantity.As(unit),
    (value, unit) => new ReciprocalArea(value, unit),
    ("1/m²", ReciprocalAreaUnit.InverseSquareMeter),
    ("1/ft²", ReciprocalAreaUnit.InverseSquareFoot));
