using HortiCalc.Climate;

namespace HortiCalc.Json;

internal sealed class HardinessSchemeConverter()
    : KeyedConverter<HardinessScheme>("hardiness scheme", "hardiness.usda", HardinessScheme.FromKey, scheme => scheme.Evidence.Key);
