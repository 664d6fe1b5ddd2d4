using HortiCalc.Units;

namespace HortiCalc.Json;

internal sealed class VolumetricChargeConverter() : QuantityConverter<VolumetricCharge>(
    "charge per volume",
    charge => (charge.CentimolesPerLitre, "cmol(c)/L"),
    new Dictionary<string, Func<double, VolumetricCharge>> { ["cmol(c)/L"] = VolumetricCharge.FromCentimolesPerLitre, ["meq/100 cm³"] = VolumetricCharge.FromMilliequivalentsPer100CubicCentimetres });
