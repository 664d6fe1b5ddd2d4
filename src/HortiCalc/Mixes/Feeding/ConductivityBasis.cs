namespace HortiCalc.Mixes;

/// <summary>In what a conductivity is measured. The two are not to be compared: an extract is the weaker, for the same salts.</summary>
public enum ConductivityBasis
{
    /// <summary>The feed itself, or what drains from a substrate without soil.</summary>
    Solution,

    /// <summary>The extract of a growing medium that was just saturated with water.</summary>
    SaturatedMediaExtract,
}
