using HortiCalc.Climate;

namespace HortiCalc.Json;

internal sealed class SprinklerStartMethodConverter()
    : KeyedConverter<SprinklerStartMethod>("sprinkler start method", "sprinkler-start.psychrometric", SprinklerStartMethod.FromKey, one => one.Evidence.Key);
