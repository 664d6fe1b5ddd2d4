using HortiCalc.Mixes;

namespace HortiCalc.Json;

/// <summary>Writes a ratio as parts of diluent to one part of concentrate; reads it in either of its meanings, by name.</summary>
internal sealed class MixRatioConverter() : QuantityConverter<MixRatio>(
    "mix ratio",
    ratio => (ratio.PartsOfDiluent, "parts to 1"),
    new Dictionary<string, Func<double, MixRatio>>
    {
        ["parts to 1"] = value => MixRatio.PartsToParts(1, value),
        ["one in"] = MixRatio.OneIn,
    });
