using HortiCalc.Climate;

namespace HortiCalc.Json;

internal sealed class SolarPhotonMethodConverter() : KeyedConverter<SolarPhotonMethod>(
    "solar photon method", "solar-photons.light-maps", SolarPhotonMethod.FromKey, method => method.Evidence.Key);
