using HortiCalc.Climate;

namespace HortiCalc.Json;

internal sealed class HuglinMethodConverter()
    : KeyedConverter<HuglinMethod>("Huglin method", "huglin.printed", HuglinMethod.FromKey, method => method.Evidence.Key);
