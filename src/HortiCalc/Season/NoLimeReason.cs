namespace HortiCalc.Season;

/// <summary>Why no lime is planned for a bed.</summary>
public enum NoLimeReason
{
    /// <summary>The soil's pH is in the range that suits the crop.</summary>
    SoilSuits,

    /// <summary>The soil's pH is above the range that suits the crop.</summary>
    SoilAboveRange,

    /// <summary>The soil was not tested.</summary>
    NotTested,

    /// <summary>The soil is more acid than suits the crop, but no published method here takes it to the target.</summary>
    NoMethod,
}
