using HortiCalc.Climate;

namespace HortiCalc.Json;

/// <summary>Reads and writes a method by its key: <c>"huglin.printed"</c>.</summary>
internal sealed class HuglinMethodConverter() : KeyedConverter<HuglinMethod>("Huglin method", method => method.Evidence.Key, HuglinMethod.FromKey);
