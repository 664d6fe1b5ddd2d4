namespace HortiCalc.Soil;

/// <summary>What a material does to the nitrogen of the soil while it rots.</summary>
public enum NitrogenEffect
{
    /// <summary>It releases nitrogen.</summary>
    Releases,

    /// <summary>It may do either.</summary>
    Either,

    /// <summary>It ties nitrogen up.</summary>
    TiesUp,
}
