using HortiCalc.Units;

namespace HortiCalc.Json;

internal sealed class ExchangeableChargeConverter() : QuantityConverter<ExchangeableCharge>(ExchangeableCharge.Notation);
