using HortiCalc.Soil;

namespace HortiCalc.Json;

internal sealed class IonConverter() : KeyedConverter<Ion>("ion", "calcium", Ion.FromKey, value => value.Key);
