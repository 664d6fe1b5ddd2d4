using HortiCalc.Units;

namespace HortiCalc.Json;

internal sealed class ExchangeableChargeConverter() : QuantityConverter<ExchangeableCharge>(
    "exchangeable charge",
    charge => (charge.CentimolesPerKilogram, "cmol(c)/kg"),
    new Dictionary<string, Func<double, ExchangeableCharge>> { ["cmol(c)/kg"] = ExchangeableCharge.FromCentimolesPerKilogram, ["meq/100 g"] = ExchangeableCharge.FromMilliequivalentsPer100Grams });
