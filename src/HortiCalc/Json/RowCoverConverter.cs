using HortiCalc.Climate;

namespace HortiCalc.Json;

internal sealed class RowCoverConverter()
    : KeyedConverter<RowCover>("row cover", "row-cover.light", RowCover.FromKey, one => one.Evidence.Key);
