using HortiCalc.Mixes;

namespace HortiCalc.Json;

internal sealed class FertiliserSolubilityConverter() : KeyedConverter<FertiliserSolubility>(
    "fertiliser solubility", "potassium-nitrate", FertiliserSolubilities.FromKey, one => one.Key);
