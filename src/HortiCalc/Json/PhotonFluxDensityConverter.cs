using HortiCalc.Units;

namespace HortiCalc.Json;

internal sealed class PhotonFluxDensityConverter() : QuantityConverter<PhotonFluxDensity>(PhotonFluxDensity.Notation);
