using HortiCalc.Units;

namespace HortiCalc.Json;

internal sealed class ThermalDiffusivityConverter() : QuantityConverter<ThermalDiffusivity>(ThermalDiffusivity.Notation);
