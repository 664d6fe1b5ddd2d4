using UnitsNet;
using UnitsNet.Units;

namespace HortiCalc.Json;

internal sealed class ReciprocalLengthConverter() : UnitsNetConverter<ReciprocalLength, ReciprocalLengthUnit>(
    "number per length",
    quantity => quantity.Unit,
    (quantity, unit) => quantity.As(unit),
    (value, unit) => new ReciprocalLength(value, unit),
    ("1/m", ReciprocalLengthUnit.InverseMeter),
    ("1/cm", ReciprocalLengthUnit.InverseCentimeter),
    ("1/ft", ReciprocalLengthUnit.InverseFoot));
