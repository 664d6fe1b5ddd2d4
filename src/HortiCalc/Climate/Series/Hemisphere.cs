namespace HortiCalc.Climate;

/// <summary>Which half of the earth a place lies on: it decides when the cold season is.</summary>
public enum Hemisphere
{
    /// <summary>North of the equator: the coldest months are around January.</summary>
    Northern,

    /// <summary>South of the equator: the coldest months are around July.</summary>
    Southern,
}
