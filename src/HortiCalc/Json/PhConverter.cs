using HortiCalc.Units;

namespace HortiCalc.Json;

internal sealed class PhConverter() : QuantityConverter<Ph>(
    "pH",
    ph => (ph.Value, "pH"),
    new Dictionary<string, Func<double, Ph>> { ["pH"] = value => new Ph(value) });
