using HortiCalc.Plants;

namespace HortiCalc.Json;

internal sealed class GerminationResponseConverter()
    : KeyedConverter<GerminationResponse>("germination response", "germination.segmented", GerminationResponse.FromKey, response => response.Evidence.Key);
